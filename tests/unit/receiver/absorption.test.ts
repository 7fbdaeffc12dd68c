import { describe, expect, it } from "vitest";
import { receiverAbsorptance, transmittanceAbsorptance } from "../../../src/receiver/absorption.ts";
import type { Receiver } from "../../../src/receiver/receiver.ts";
import { cavity, glazedCoil, measured, openCoil } from "./receivers.ts";

const RIM = Math.PI / 4;

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
		expect(receiverAbsorptance(cavity, RIM)).toBeGreaterThan(cavity.absorptance);
		expect(receiverAbsorptance(cavity, RIM)).toBeLessThan(1);
		expect(receiverAbsorptance(openCoil, RIM)).toBeLessThan(openCoil.absorptance);
		expect(receiverAbsorptance(openCoil, RIM)).toBeGreaterThan(0.98 * openCoil.absorptance);
		expect(receiverAbsorptance(glazedCoil, RIM)).toBeLessThan(
			receiverAbsorptance(openCoil, RIM) * glazedCoil.coverTransmittance * 1.01,
		);
		expect(receiverAbsorptance(measured, RIM)).toBe(1);
	});

	it("flat coils lose more of a deeper dish's light, behind a pane most; a hollow catches most of it again, and a measured line does not heed it", () => {
		const ratio = (receiver: Receiver, degrees: number) =>
			receiverAbsorptance(receiver, (degrees * Math.PI) / 180) / receiverAbsorptance(receiver, RIM);
		expect(ratio(openCoil, 90)).toBeLessThan(0.9);
		expect(ratio(glazedCoil, 90)).toBeLessThan(0.65);
		expect(ratio(openCoil, 20)).toBeGreaterThan(1.004);
		expect(ratio(cavity, 90)).toBeLessThan(0.993);
		expect(ratio(cavity, 90)).toBeGreaterThan(0.98);
		expect(ratio(measured, 90)).toBe(1);
	});
});
