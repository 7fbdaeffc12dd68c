import { expect, it } from "vitest";
import { normalScore } from "../../../src/numeric/normal-score.ts";

it.each([
	[0.5, 0],
	[0.9, 1.281552],
	[0.95, 1.644854],
	[0.975, 1.959964],
	[0.999, 3.090232],
])("meets the normal table at %f within its stated error", (probability, score) => {
	expect(Math.abs(normalScore(probability) - score)).toBeLessThan(4.5e-4); // any table of the normal distribution
	expect(Math.abs(normalScore(1 - probability) + score)).toBeLessThan(4.5e-4);
});

it.each([0, 1, -0.1, Number.NaN])("refuses %f", (probability) => {
	expect(() => normalScore(probability)).toThrow(/probability/);
});
