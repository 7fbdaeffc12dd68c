import { describe, expect, it } from "vitest";
import { fluidById } from "../../../src/fluids/catalogue.ts";
import {
	receiverFilmConductance,
	receiverFilmOutsideRange,
	receiverHeldHeatCapacity,
	woundDiameter,
} from "../../../src/receiver/film.ts";
import { cavity, measured, openCoil } from "./receivers.ts";

const oil = fluidById("mineralOilVg32");
const water = fluidById("water");

describe("film in the receiver's tube", () => {
	it("at rest is conduction alone: π·k·L·3.66", () => {
		expect(receiverFilmConductance(cavity, oil, 373.15, 0)).toBeCloseTo(
			Math.PI * oil.conductivity(373.15) * 6 * 3.66,
			9,
		);
	});

	it("rises with flow and with temperature, as the oil thins", () => {
		const byFlow = [0, 1e-5, 5e-5, 1e-4, 3e-4].map((flow) =>
			receiverFilmConductance(cavity, oil, 373.15, flow),
		);
		for (let i = 1; i < byFlow.length; i++) expect(byFlow[i]!).toBeGreaterThan(byFlow[i - 1]!);
		expect(receiverFilmConductance(openCoil, oil, 423.15, 1e-4)).toBeGreaterThan(
			receiverFilmConductance(openCoil, oil, 323.15, 1e-4),
		);
	});

	it("is far better with water than with oil", () => {
		expect(receiverFilmConductance(cavity, water, 333.15, 1e-4)).toBeGreaterThan(
			5 * receiverFilmConductance(cavity, oil, 333.15, 1e-4),
		);
	});

	it("says where it is stretched: cold oil hardly moves", () => {
		expect(receiverFilmOutsideRange(cavity, oil, 283.15, 1e-5)).toBe(true);
		expect(receiverFilmOutsideRange(cavity, oil, 373.15, 5e-5)).toBe(false);
	});

	it("a flat spiral's mean turn, weighted by length, is two thirds of the outer one", () => {
		let length = 0;
		let weighted = 0;
		for (let turn = 1; turn <= 10_000; turn++) {
			length += turn;
			weighted += turn * turn;
		}
		expect(woundDiameter(openCoil)).toBeCloseTo((0.2 * weighted) / length / 10_000, 4);
	});
});

describe("heat held in the receiver", () => {
	it("is that of the trade's 15 × 1 copper tube, 0.391 kg/m, and of the water in it", () => {
		// EN 1057:2006, mass per metre of 15 × 1 mm copper tube (value from memory)
		const metal = 6 * 0.391 * 385;
		const content = 6 * (Math.PI / 4) * 0.013 ** 2 * 983.2 * 4185;
		expect(receiverHeldHeatCapacity(cavity, water, 333.15) / (metal + content)).toBeCloseTo(1, 2);
	});

	it("is stated by an efficiency line itself", () => {
		expect(receiverHeldHeatCapacity(measured, water, 333.15)).toBe(2000);
	});
});
