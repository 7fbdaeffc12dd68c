import { describe, expect, it } from "vitest";
import { receiverAbsorptance, transmittanceAbsorptance } from "../../../src/receiver/absorption.ts";
import { cavity, glazedCoil, measured, openCoil } from "./receivers.ts";

describe("absorptance", () => {
	it("a black absorber behind a pane takes all that the pane lets through", () => {
		expect(transmittanceAbsorptance(0.9, 1)).toBeCloseTo(0.9, 15);
		expect(transmittanceAbsorptance(1, 0)).toBe(0);
	});

	it("agrees with the rule of 1.01 τα within 1 % for the absorbers of the trade", () => {
		// Duffie & Beckman, Solar Engineering of Thermal Processes, eq. 5.5.2 (value from memory)
		for (const absorptance of [0.9, 0.95])
			expect(
				Math.abs(transmittanceAbsorptance(0.9, absorptance) / (1.01 * 0.9 * absorptance) - 1),
			).toBeLessThan(0.01);
	});

	it("a cavity takes up more than its paint, an open coil a little less for the slant of the light, a glazed one less still", () => {
		expect(receiverAbsorptance(cavity)).toBeGreaterThan(cavity.absorptance);
		expect(receiverAbsorptance(cavity)).toBeLessThan(1);
		expect(receiverAbsorptance(openCoil)).toBeLessThan(openCoil.absorptance);
		expect(receiverAbsorptance(openCoil)).toBeGreaterThan(0.98 * openCoil.absorptance);
		expect(receiverAbsorptance(glazedCoil)).toBeLessThan(
			receiverAbsorptance(openCoil) * glazedCoil.coverTransmittance * 1.01,
		);
		expect(receiverAbsorptance(measured)).toBe(1);
	});
});
