import { describe, it } from "vitest";
import { expectOffAxisTraced, expectTwoAxisTraced, OFF_AXIS, TWO_AXIS } from "./traced-gap.ts";

// The whole sweep behind the range that the intercept factor claims: slope errors to 20 mrad, f/D from 0.3 to 1, small and large
// receivers, and the off-axis mirror.
const cases = [2e-3, 5e-3, 10e-3, 20e-3].flatMap((slopeError) =>
	[0.3, 0.4, 0.6, 1.0].flatMap((ratio) => [0.8, 1.6, 2.6].map((spreads) => ({ slopeError, ratio, spreads }))),
);

describe("intercept factor against traced rays", () => {
	it.each(cases)(TWO_AXIS, expectTwoAxisTraced);

	it.each([
		[8, 3, 3e-3, 0.03],
		[8, 3, 10e-3, 0.1],
		[2.7, 2, 5e-3, 0.03],
		[10, 2.2, 5e-3, 0.05],
		[10, 2.2, 20e-3, 0.1],
	])(OFF_AXIS, expectOffAxisTraced);
});
