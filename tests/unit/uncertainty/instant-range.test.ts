import { describe, expect, it } from "vitest";
import { heaterOf } from "../../../src/instant/heater.ts";
import { flowOf } from "../../../src/instant/steady.ts";
import { steadyFlow } from "../../../src/instant/task.ts";
import { latinHypercube } from "../../../src/numeric/latin-hypercube.ts";
import type { Receiver } from "../../../src/receiver/receiver.ts";
import { type InstantCase, instantValues } from "../../../src/uncertainty/instant-case.ts";
import { instantInputs } from "../../../src/uncertainty/instant-inputs.ts";
import { rangedInstant } from "../../../src/uncertainty/instant-range.ts";
import { duty, outletPipe, sun, vessel } from "../instant/heaters.ts";
import { cavity, measuredDish, openCoil, plant } from "../plant/plants.ts";
import { spreads as daySpreads } from "./day-cases.ts";

const spreads = { ...daySpreads, coilTransfer: 0.2 };

const heaterCase = (receiver: Receiver, behindVessel: boolean): InstantCase => ({
	dish: plant.dish,
	receiver,
	latitude: 0.5,
	declination: 0,
	convection: 1,
	arrangement: behindVessel
		? { kind: "vessel", vessel, start: 293.15 }
		: { kind: "direct", outlet: outletPipe(3, 0.025) },
	duty,
	wantedFlow: 3 / 60,
	largestAperture: 113,
	conditions: sun(800),
	beam: { kind: "clear", turbidity: 3, elevation: 2350 },
});

const cases: readonly (readonly [string, InstantCase])[] = [
	["water through a cavity", heaterCase(cavity, false)],
	["water through an open coil", heaterCase(openCoil, false)],
	["water through a measured dish", heaterCase(measuredDish, false)],
	["a vessel of oil over a cavity", heaterCase(cavity, true)],
];

describe.each(cases)("%s", (_name, stated) => {
	const report = rangedInstant(stated, spreads);
	const inputs = instantInputs(stated, spreads);
	const made = latinHypercube(23, 500, inputs.length).map((scores) =>
		instantValues(inputs.reduce((of, input, i) => input.at(of, scores[i]!), stated)),
	);

	it.each(["flow", "power", "neededAperture"])(
		"has its %s within a seventh of the width of 500 drawn",
		(name) => {
			const sorted = made.map((values) => values[name]!).sort((a, b) => a - b);
			const [low, high] = [sorted[25]!, sorted[474]!];
			const range = report.ranges.find((one) => one.name === name)!;
			expect(range.low).toBeGreaterThan(low - (high - low) / 7);
			expect(range.low).toBeLessThan(low + (high - low) / 7);
			expect(range.high).toBeGreaterThan(high - (high - low) / 7);
			expect(range.high).toBeLessThan(high + (high - low) / 7);
		},
	);

	it("costs at most 40 steady states", () => {
		expect(report.cases).toBeLessThanOrEqual(40);
	});

	it("has effects with the signs of physics", () => {
		const flow = Object.fromEntries(report.effects.map(({ input, effects }) => [input, effects.flow!]));
		const area = Object.fromEntries(
			report.effects.map(({ input, effects }) => [input, effects.neededAperture!]),
		);
		for (const input of [
			"reflectance",
			"cleanliness",
			"absorptance",
			"opticalEfficiency",
			"ambient",
			"coldWater",
			"coilTransfer",
		])
			if (input in flow) {
				expect(flow[input], input).toBeGreaterThan(0);
				expect(area[input], input).toBeLessThan(0);
			}
		for (const input of ["turbidity", "slopeError", "receiverConvection", "lossCoefficient", "tankLoss"])
			if (input in flow) {
				expect(flow[input], input).toBeLessThan(0);
				expect(area[input], input).toBeGreaterThan(0);
			}
	});
});

it("has the case's own answer in the middle", () => {
	const stated = heaterCase(cavity, false);
	const heater = heaterOf(stated.dish, stated.receiver, stated.latitude, stated.declination);
	const own = flowOf(steadyFlow(stated.arrangement, heater, stated.duty, stated.conditions));
	expect(rangedInstant(stated, spreads).ranges[0]!.central).toBe(own);
});

it("knows a stated beam exactly", () => {
	const report = rangedInstant({ ...heaterCase(cavity, false), beam: { kind: "stated" } }, spreads);
	expect(report.effects.map(({ input }) => input)).not.toContain("turbidity");
	expect(report.effects.map(({ input }) => input)).not.toContain("measuredBeam");
});

it("asks for no aperture where no flow is wanted", () => {
	const report = rangedInstant({ ...heaterCase(cavity, false), wantedFlow: undefined }, spreads);
	expect(report.ranges.map(({ name }) => name)).toEqual(["flow", "power"]);
});

describe("where water just flows or not", () => {
	// A bare coil in cold wind, under so weak a sun that its losses take nearly all the light.
	const weak = { ...sun(800), beam: 8, ambient: 273.15, wind: 6 };
	const stated: InstantCase = { ...heaterCase(openCoil, false), conditions: weak };

	it("is sampled, no flow counting as none", () => {
		const [flow] = rangedInstant(stated, spreads).ranges;
		expect(flow!.method).toBe("sample");
		expect(flow!.low).toBe(0);
	});

	it("is none at all in the dark", () => {
		const dark = rangedInstant({ ...stated, conditions: { ...sun(800), beam: 0 } }, spreads);
		expect(dark.ranges[0]).toMatchObject({ low: 0, central: 0, high: 0 });
		expect(dark.ranges[2]).toMatchObject({ answered: 0 });
	});
});
