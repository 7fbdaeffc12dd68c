import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { apertureArea } from "../../../src/dish/optics.ts";
import { fluidById } from "../../../src/fluids/catalogue.ts";
import {
	type ReceiverOperation,
	receiverBalance,
	stagnationTemperature,
} from "../../../src/receiver/balance.ts";
import { totalReceiverLoss } from "../../../src/receiver/loss-paths.ts";
import { receiverLosses } from "../../../src/receiver/losses.ts";
import { perfectDish } from "../dish/mirror.ts";
import { all, measured, tubes } from "./receivers.ts";

const sunny: ReceiverOperation = {
	fluid: fluidById("mineralOilVg32"),
	fluidTemperature: 383.15,
	flow: 5e-5,
	absorbed: 1200,
	ambient: 298.15,
	wind: 2,
	pressure: 101_325,
	altitude: 0.8,
};

describe.each(all.map((receiver) => [receiver.kind, receiver] as const))("balance of %s", (_, receiver) => {
	it("closes to a nanowatt per watt in any weather, day and night", () => {
		fc.assert(
			fc.property(
				fc.double({ min: 280, max: 480, noNaN: true }),
				fc.double({ min: 250, max: 320, noNaN: true }),
				fc.double({ min: 0, max: 4000, noNaN: true }),
				fc.double({ min: 0, max: 3e-4, noNaN: true }),
				fc.double({ min: 0, max: 15, noNaN: true }),
				(fluidTemperature, ambient, absorbed, flow, wind) => {
					const { useful, losses } = receiverBalance(receiver, {
						...sunny,
						fluidTemperature,
						ambient,
						absorbed,
						flow,
						wind,
					});
					expect(Math.abs(useful + totalReceiverLoss(losses) - absorbed)).toBeLessThan(
						1e-9 * (absorbed + 100),
					);
				},
			),
			{ seed: 1, numRuns: 60 },
		);
	});

	it("has no efficiency without light, and cools the fluid then", () => {
		const night = receiverBalance(receiver, { ...sunny, absorbed: 0 });
		expect(night.efficiency).toBeUndefined();
		expect(night.useful).toBeLessThan(0);
	});

	it("is at rest where fluid and air are alike and nothing is absorbed", () => {
		const rest = receiverBalance(receiver, { ...sunny, absorbed: 0, fluidTemperature: 298.15 });
		expect(Math.abs(rest.useful)).toBeLessThan(1e-9);
		expect(rest.wallTemperature).toBe(298.15);
	});

	it("gives less in wind, from hotter fluid and with less light", () => {
		const useful = (change: Partial<ReceiverOperation>) =>
			receiverBalance(receiver, { ...sunny, ...change }).useful;
		if (receiver.kind !== "efficiencyLine") expect(useful({ wind: 8 })).toBeLessThan(useful({ wind: 1 }));
		expect(useful({ fluidTemperature: 423.15 })).toBeLessThan(useful({}));
		expect(useful({ absorbed: 800 })).toBeLessThan(useful({}));
	});

	it("stagnates hotter than it ever works, where the losses eat up the light", () => {
		for (const absorbed of [200, 1200, 3000]) {
			const hot = stagnationTemperature(receiver, absorbed, sunny);
			expect(totalReceiverLoss(receiverLosses(receiver, { ...sunny, wallTemperature: hot }))).toBeCloseTo(
				absorbed,
				6,
			);
			for (const fluidTemperature of [300, 340, Math.min(hot - 1, 420)]) {
				const working = receiverBalance(receiver, { ...sunny, absorbed, fluidTemperature });
				if (working.useful > 0) expect(working.wallTemperature).toBeLessThan(hot);
			}
		}
		expect(stagnationTemperature(receiver, 0, sunny)).toBe(298.15);
		expect(stagnationTemperature(receiver, 1e9, sunny)).toBe(6000); // no hotter than the sun
	});
});

describe.each(tubes.map((receiver) => [receiver.kind, receiver] as const))("%s", (_, receiver) => {
	it("has its wall hotter than the fluid it heats, less so the faster that flows", () => {
		const superheat = [2e-5, 5e-5, 2e-4].map(
			(flow) => receiverBalance(receiver, { ...sunny, flow }).wallTemperature - sunny.fluidTemperature,
		);
		for (let i = 1; i < superheat.length; i++) expect(superheat[i]!).toBeLessThan(superheat[i - 1]!);
		expect(superheat.at(-1)!).toBeGreaterThan(0);
	});

	it("stagnates cooler in wind", () => {
		expect(stagnationTemperature(receiver, 1000, { ...sunny, wind: 5 })).toBeLessThan(
			stagnationTemperature(receiver, 1000, { ...sunny, wind: 0 }),
		);
	});
});

it("stagnates as hot as the sun where nothing is lost, and at the air's temperature without light", () => {
	const lossless = { ...measured, lossCoefficient: 0 };
	expect(stagnationTemperature(lossless, 500, sunny)).toBe(6000);
	expect(stagnationTemperature(lossless, 0, sunny)).toBe(sunny.ambient);
});

it("refuses more light than any wall could carry off", () => {
	for (const receiver of tubes)
		expect(() => receiverBalance(receiver, { ...sunny, absorbed: 1e8 })).toThrow(
			"cannot remove this much absorbed light",
		);
});

describe("a measured small dish", () => {
	// Mawire & Taole, Energy for Sustainable Development 19 (2014) 162–169: optical efficiency about 0.52, loss 4.6 W/K;
	// the dish's diameter of 1.4 m from memory
	const area = apertureArea({ ...perfectDish, diameter: 1.4 }, 0, 0);

	it("gives about 260 W at 900 W/m² and 100 K above the air, and stagnates near 157 K above it", () => {
		const absorbed = measured.opticalEfficiency * area * 900;
		const { useful } = receiverBalance(measured, { ...sunny, absorbed, fluidTemperature: 398.15 });
		expect(Math.abs(useful / 260 - 1)).toBeLessThan(0.15);
		const rise = stagnationTemperature(measured, absorbed, sunny) - sunny.ambient;
		expect(Math.abs(rise / 157 - 1)).toBeLessThan(0.15);
	});
});
