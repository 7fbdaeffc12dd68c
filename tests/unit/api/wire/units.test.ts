import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { celsius, fromSi, ratio, toSi } from "../../../../api/wire/units.ts";

type Unit = keyof typeof toSi;

/** One value of each unit and what it is in SI, by the unit's definition (BIPM, The International System of Units, 9th ed., 2019). */
const DEFINITIONS: Readonly<Record<Unit, readonly [working: number, si: number]>> = {
	celsius: [100, 373.15],
	degrees: [180, Math.PI],
	milliradians: [1000, 1],
	millimetres: [12, 0.012],
	litres: [1000, 1],
	litresPerMinute: [60, 0.001],
	kilopascals: [101.325, 101_325],
	kilowatts: [1.5, 1500],
	kilowattHours: [1, 3_600_000],
	kilojoules: [4.2, 4200],
	minutes: [90, 5400],
	hours: [1.5, 5400],
	squareMillimetresPerSecond: [32, 3.2e-5],
};

describe("each unit", () => {
	it.each(Object.entries(DEFINITIONS))("%s is its definition", (unit, [working, si]) => {
		expect(toSi[unit as Unit](working)).toBeCloseTo(si, 12);
	});

	it.each(Object.keys(toSi) as Unit[])("%s comes back as it went in", (unit) => {
		fc.assert(
			fc.property(fc.double({ min: -1e6, max: 1e6, noNaN: true }), (value) => {
				const back = fromSi[unit](toSi[unit](value));
				expect(Math.abs(back - value)).toBeLessThanOrEqual(1e-12 * Math.max(Math.abs(value), 300));
			}),
			{ seed: 1, numRuns: 200 },
		);
	});
});

describe("a field", () => {
	it("holds its bounds and refuses what is no number", () => {
		const field = celsius("Air.", -50, 60);
		for (const good of [-50, 0, 60]) expect(field.safeParse(good).success).toBe(true);
		for (const bad of [-50.01, 60.01, Number.NaN, Number.POSITIVE_INFINITY, "20", null, undefined])
			expect(field.safeParse(bad).success).toBe(false);
	});

	it("without bounds takes any finite number", () => {
		const field = ratio("Efficiency.");
		expect(field.safeParse(-1e9).success).toBe(true);
		expect(field.safeParse(Number.NaN).success).toBe(false);
	});

	it("says its unit and meaning", () => {
		expect(celsius("Air.", -50, 60).meta()).toMatchObject({ description: "Air.", "x-unit": "°C" });
	});
});
