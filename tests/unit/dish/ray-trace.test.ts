import { describe, it } from "vitest";
import { expectOffAxisTraced, expectTwoAxisTraced, OFF_AXIS, TWO_AXIS } from "./traced-gap.ts";

// The corners of the sweep in ray-trace.slow.test.ts.
const cases = [2e-3, 20e-3].flatMap((slopeError) =>
	[0.3, 1.0].map((ratio) => ({ slopeError, ratio, spreads: 1.6 })),
);

describe("intercept factor against traced rays", () => {
	it.each(cases)(TWO_AXIS, expectTwoAxisTraced);

	it.each([
		[2.7, 2, 5e-3, 0.03],
		[10, 2.2, 20e-3, 0.1],
	])(OFF_AXIS, expectOffAxisTraced);
});
