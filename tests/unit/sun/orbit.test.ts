import { describe, expect, it } from "vitest";
import { SOLAR_CONSTANT } from "../../../src/constants.ts";
import { distanceFactor, extraterrestrialNormal } from "../../../src/sun/orbit.ts";
import { independentSun } from "./meeus.ts";

const day = (i: number) => Date.UTC(1990, 0, 1, 15) / 1000 + i * 86_400;

describe("distanceFactor", () => {
	it("lies within 0.0012 of the true distance, 1990 to 2050", () => {
		for (let i = 0; i < 21_900; i += 3)
			expect(Math.abs(distanceFactor(day(i)) - independentSun(day(i), 0, 0).distance ** -2)).toBeLessThan(
				0.0012,
			);
	});

	it("averages to one over a year", () => {
		let sum = 0;
		for (let i = 0; i < 365; i++) sum += distanceFactor(day(i));
		expect(sum / 365).toBeCloseTo(1, 3);
	});

	it("jumps by no more than 0.005 % at New Year, after a common year or a leap year", () => {
		for (const year of [2023, 2024]) {
			const newYear = Date.UTC(year + 1, 0, 1) / 1000;
			expect(Math.abs(distanceFactor(newYear) - distanceFactor(newYear - 1))).toBeLessThan(5e-5);
		}
	});

	it("refuses NaN", () => {
		expect(() => distanceFactor(Number.NaN)).toThrow("time");
	});
});

describe("extraterrestrialNormal", () => {
	it("is strongest in early January, 7 % above early July", () => {
		const january = extraterrestrialNormal(Date.UTC(2025, 0, 4) / 1000);
		const july = extraterrestrialNormal(Date.UTC(2025, 6, 4) / 1000);
		expect(january / july).toBeCloseTo(1.069, 2);
		expect(january).toBeGreaterThan(SOLAR_CONSTANT);
	});
});
