import { describe, it } from "vitest";
import { expectTraced, HOLLOW_NAMES } from "./hollows.ts";

// Every shape of hollow under every rim angle, against traced rays: the error that cavity-light.ts states holds for all of them.

describe("light in a painted hollow", () => {
	const cases = HOLLOW_NAMES.flatMap((name) => [20, 45, 60, 75, 90].map((rim) => [name, rim] as const));

	it.each(cases)("%s: agrees with traced rays at a rim angle of %f°", expectTraced);
});
