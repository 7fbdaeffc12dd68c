import { describe, expect, it } from "vitest";
import { DomainError } from "../../../src/errors.ts";
import { boilingPoint, elevationAtPressure, standardPressure } from "../../../src/sky/atmosphere.ts";

describe("standard atmosphere", () => {
	it("is 101 325 Pa at the sea and more at the Dead Sea", () => {
		expect(standardPressure(0)).toBe(101_325);
		expect(standardPressure(-430)).toBeGreaterThan(101_325);
	});

	it("falls with elevation at the hydrostatic rate", () => {
		for (const h of [-400, 0, 1500, 3000, 8000]) {
			const slope = (standardPressure(h + 1) - standardPressure(h - 1)) / 2;
			const density = standardPressure(h) / (287.05287 * (288.15 - 0.0065 * h));
			expect(slope / (-density * 9.80665)).toBeCloseTo(1, 6);
		}
	});

	it("goes there and back within a millimetre", () => {
		for (let h = -430; h <= 11_000; h += 127)
			expect(elevationAtPressure(standardPressure(h))).toBeCloseTo(h, 6);
		expect(elevationAtPressure(standardPressure(-430))).toBeCloseTo(-430, 6);
		expect(elevationAtPressure(standardPressure(11_000))).toBeCloseTo(11_000, 6);
	});

	it.each([-431, 11_001, Number.NaN, Number.POSITIVE_INFINITY])("refuses %d m", (h) => {
		expect(() => standardPressure(h)).toThrow(DomainError);
	});

	it.each([22_000, 107_000, 0, -1, Number.NaN])("refuses %d Pa", (p) => {
		expect(() => elevationAtPressure(p)).toThrow(DomainError);
	});
});

describe("boiling point", () => {
	it("falls with elevation", () => {
		for (let h = 0; h <= 5000; h += 100)
			expect(boilingPoint(standardPressure(h + 100))).toBeLessThan(boilingPoint(standardPressure(h)));
	});

	it("moves by about 0.0375 K for 1 hPa at 3000 m", () => {
		const p = standardPressure(3000);
		expect(boilingPoint(p + 100) - boilingPoint(p)).toBeCloseTo(0.0375, 3);
	});

	it("refuses a vacuum", () => {
		expect(() => boilingPoint(100)).toThrow(DomainError);
		expect(() => boilingPoint(Number.NaN)).toThrow(DomainError);
	});
});
