import { expect, it } from "vitest";
import { contradictory, refuseFaults } from "../../../../api/validation/rule.ts";

it("a detail that begins with must gets its field as the subject", () => {
	const { pointer, detail } = contradictory("/draw/draws/1/temperatureC", "must be above 20 °C");
	expect(pointer).toBe("/draw/draws/1/temperatureC");
	expect(detail).toBe("draw.draws[1].temperatureC must be above 20 °C");
});

it("any other detail stays as it is", () => {
	expect(contradictory("/dish", "dish has no size").detail).toBe("dish has no size");
});

it("a refusal names its first fault and counts the others", () => {
	const faults = [contradictory("/dish", "dish has no size"), contradictory("/coil/turns", "must be less")];
	expect(() => refuseFaults(faults)).toThrow("dish has no size; and 1 more, see errors");
	expect(() => refuseFaults([])).not.toThrow();
});
