import { expect, it } from "vitest";
import { boilingPoint, standardPressure } from "../../../src/sky/atmosphere.ts";
import { measuredBoiling } from "../../../src/sky/measured-boiling.ts";

it("finds the elevation that a boiling point came from", () => {
	for (const elevation of [-400, 0, 1234, 3000, 8000]) {
		const { elevation: found } = measuredBoiling(boilingPoint(standardPressure(elevation)), 0.1);
		expect(found).toBeCloseTo(elevation, 3);
	}
});

it("the thermometer's ± is the half-width between the elevations of either end", () => {
	for (const elevation of [0, 2000, 4000]) {
		const at = boilingPoint(standardPressure(elevation));
		const low = measuredBoiling(at + 0.5, 0).elevation;
		const high = measuredBoiling(at - 0.5, 0).elevation;
		expect(Math.abs(measuredBoiling(at, 0.5).fromThermometer / ((high - low) / 2) - 1)).toBeLessThan(0.005);
	}
});

it("half a kelvin is about 150 m, and weather about as much again", () => {
	const { fromThermometer, fromWeather, elevationUncertainty } = measuredBoiling(363.12, 0.5);
	expect(fromThermometer).toBeGreaterThan(140);
	expect(fromThermometer).toBeLessThan(160);
	expect(fromWeather).toBeGreaterThan(120);
	expect(elevationUncertainty).toBeCloseTo(Math.hypot(fromThermometer, fromWeather), 9);
});

it("a perfect thermometer leaves the weather", () => {
	const { fromThermometer, elevationUncertainty, fromWeather } = measuredBoiling(365, 0);
	expect(fromThermometer).toBe(0);
	expect(elevationUncertainty).toBe(fromWeather);
});

it("refuses what is no reading", () => {
	expect(() => measuredBoiling(300, 0.5)).toThrow(/pressure/);
	expect(() => measuredBoiling(365, -0.1)).toThrow(/thermometer/);
	expect(() => measuredBoiling(365, Number.NaN)).toThrow(/thermometer/);
	expect(() => measuredBoiling(Number.NaN, 0.5)).toThrow();
});
