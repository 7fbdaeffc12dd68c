import { describe, expect, it } from "vitest";
import { DomainError } from "../../../src/errors.ts";
import { saturationPressure, saturationTemperature } from "../../../src/fluids/saturation.ts";

describe("saturation line", () => {
	it("goes there and back", () => {
		for (let t = 273.15; t <= 647; t += 1.7)
			expect(Math.abs(saturationTemperature(saturationPressure(t)) - t)).toBeLessThan(1e-6);
		expect(saturationTemperature(saturationPressure(273.15))).toBeCloseTo(273.15, 6);
		expect(saturationTemperature(saturationPressure(647.096))).toBeCloseTo(647.096, 4);
	});

	it("ends at the critical pressure, 22.064 MPa", () => {
		expect(saturationPressure(647.096)).toBeCloseTo(22.064e6, -2);
	});

	it("rises all the way", () => {
		for (let t = 274.15; t <= 647; t += 1)
			expect(saturationPressure(t)).toBeGreaterThan(saturationPressure(t - 1));
	});

	it.each([273.14, 647.1, Number.NaN, -1, Number.POSITIVE_INFINITY])("refuses %d K", (t) => {
		expect(() => saturationPressure(t)).toThrow(DomainError);
	});

	it.each([611, 22.07e6, Number.NaN, 0, -5])("refuses %d Pa", (p) => {
		expect(() => saturationTemperature(p)).toThrow(DomainError);
	});
});
