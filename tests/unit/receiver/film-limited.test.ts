import { describe, expect, it } from "vitest";
import { mineralOil } from "../../../src/fluids/mineral-oil.ts";
import { receiverBalance } from "../../../src/receiver/balance.ts";
import { filmLimitedReceiver } from "../../../src/receiver/film-limited.ts";
import { proportionedReceiver } from "../../../src/receiver/proportions.ts";
import type { CavityReceiver, OpenCoilReceiver } from "../../../src/receiver/receiver.ts";

const insulation = { material: "mineralWool", thickness: 0.05, moisture: 0, surfaceEmittance: 0.9 };
const tube = { innerDiameter: 0.013, outerDiameter: 0.015, length: 1 };
const surface = { apertureDiameter: 1, absorptance: 0.94, emittance: 0.9, tube, insulation };
const cavity: CavityReceiver = { kind: "cavity", ...surface, innerDiameter: 1, depth: 1 };
const disc: OpenCoilReceiver = { kind: "openCoil", ...surface };
const LIMIT = 463.15; // [K] 190 °C

const restInSun = {
	fluid: mineralOil(32),
	fluidTemperature: 333.15,
	flow: 0,
	absorbed: 2000,
	ambient: 293.15,
	wind: 0,
	pressure: 101_325,
	altitude: Math.PI / 4,
};

describe("a receiver limited by its film", () => {
	it.each([
		["cavity", proportionedReceiver(cavity, 0.08)],
		["flat spiral", proportionedReceiver(disc, 0.08)],
	])("%s grows until the film meets the limit", (_, small) => {
		expect(receiverBalance(small, restInSun).filmTemperature).toBeGreaterThan(LIMIT);
		const grown = filmLimitedReceiver(small, restInSun, LIMIT);
		expect(receiverBalance(grown, restInSun).filmTemperature).toBeCloseTo(LIMIT, 0); // 0.1 mm of size is some 0.1 K
		expect(grown.tube.length).toBeGreaterThan(small.tube.length);
	});

	it("of a cavity keeps the opening", () => {
		const grown = filmLimitedReceiver(proportionedReceiver(cavity, 0.08), restInSun, LIMIT);
		expect(grown.apertureDiameter).toBe(0.08);
		expect(grown.depth).toBe(grown.innerDiameter);
	});

	it("stays as it is where the film keeps below the limit already", () => {
		const roomy = proportionedReceiver(cavity, 0.3);
		expect(filmLimitedReceiver(roomy, restInSun, LIMIT)).toBe(roomy);
	});

	it("needs more tube for more light", () => {
		const small = proportionedReceiver(cavity, 0.08);
		const lengths = [1000, 2000, 4000].map(
			(absorbed) => filmLimitedReceiver(small, { ...restInSun, absorbed }, LIMIT).tube.length,
		);
		expect(lengths[1]!).toBeGreaterThan(1.5 * lengths[0]!);
		expect(lengths[2]!).toBeGreaterThan(1.5 * lengths[1]!);
	});

	it("is refused where no size is enough", () => {
		const small = proportionedReceiver(cavity, 0.05);
		expect(() => filmLimitedReceiver(small, restInSun, restInSun.fluidTemperature - 1)).toThrow(
			expect.objectContaining({ code: "impossible" }),
		);
	});
});
