import { describe, expect, it } from "vitest";
import { latinHypercube } from "../../../src/numeric/latin-hypercube.ts";
import { normalStream } from "../../../src/numeric/random.ts";
import { type DayAnswer, type DayAnswers, dayAnswers } from "../../../src/uncertainty/day-answers.ts";
import { type DayCase, dayOf } from "../../../src/uncertainty/day-case.ts";
import { dayInputs } from "../../../src/uncertainty/day-inputs.ts";
import { rangedDay } from "../../../src/uncertainty/day-range.ts";
import { cavity, glazedCoil, measuredDish, openCoil } from "../plant/plants.ts";
import { dayCase, hoursOf, reduced, spreads } from "./day-cases.ts";

const ROWS = 500;

const ranged = (stated: DayCase, by = spreads) => rangedDay(stated, dayOf(stated), by);

/** Days of plants whose every input is off by the scores given: the full model, one march each. */
function trueDays(stated: DayCase, rows: readonly ArrayLike<number>[]): readonly DayAnswers[] {
	const inputs = dayInputs(stated, spreads);
	return rows.map((scores) => {
		const of = inputs.reduce((made, input, i) => input.at(made, scores[i]!), stated);
		return dayAnswers(dayOf(of), of.task);
	});
}

function quantileOf(days: readonly DayAnswers[], name: DayAnswer, probability: number): number {
	const sorted = days.map((day) => day[name]).sort((a, b) => a - b);
	return sorted[Math.round(probability * days.length - 0.5)]!;
}

const smooth: readonly (readonly [string, DayCase, readonly DayAnswer[]])[] = [
	["a cavity that reaches its target", hoursOf(dayCase(cavity, 0.2, 323.15), 7), ["timeToTarget"]],
	["a cavity under a large tank", hoursOf(dayCase(cavity, 0.3, 360), 4), ["endTemperature", "toWater"]],
	["a measured dish", hoursOf(dayCase(measuredDish, 0.3, 360), 4), ["endTemperature", "toWater"]],
];

describe.each(smooth)("%s", (_name, stated, names) => {
	const { range } = ranged(stated);
	const days = trueDays(stated, latinHypercube(11, ROWS, dayInputs(stated, spreads).length));

	it.each(names)(
		"has its %s propagated within a seventh of the width of a Latin hypercube of 500",
		(name) => {
			const answer = range.ranges.find((candidate) => candidate.name === name)!;
			const low = quantileOf(days, name, 0.05);
			const high = quantileOf(days, name, 0.95);
			expect(answer.method).toBe("propagation");
			expect(Math.abs(answer.low - low)).toBeLessThan((high - low) / 7);
			expect(Math.abs(answer.high - high)).toBeLessThan((high - low) / 7);
			expect(answer.central).toBeGreaterThan(low);
			expect(answer.central).toBeLessThan(high);
		},
	);
});

it("covers plants drawn from the full model as often as it claims", () => {
	// A quick look: three seeds of a thousand plants each are drawn by tests/load/coverage.ts.
	const stated = hoursOf(dayCase(cavity, 0.3, 360), 4);
	const { range } = ranged(stated);
	const normal = normalStream(5);
	const count = 300;
	const inputs = dayInputs(stated, spreads).length;
	const days = trueDays(
		stated,
		Array.from({ length: count }, () => Array.from({ length: inputs }, normal)),
	);
	const { low, high } = range.ranges.find(({ name }) => name === "endTemperature")!;
	const inside = days.filter((day) => day.endTemperature >= low && day.endTemperature <= high).length / count;
	expect(Math.abs(inside - range.coverage)).toBeLessThan(0.05);
});

describe("what it costs in marches", () => {
	it.each([
		["propagated", dayCase(cavity, 0.3, 308.15), 13],
		["sampled, the target just reached or not", dayCase(cavity, 0.3, 333.15), 40],
		["sampled, the tank just boils or not", reduced(dayCase(openCoil, 0.15, 333.15)), 40],
		["behind glass", reduced(dayCase(glazedCoil, 0.3, 360)), 40],
		["a measured dish", dayCase(measuredDish, 0.3, 360), 40],
	] as const)("%s", (_name, stated, most) => {
		const { range, study } = ranged(stated);
		expect(range.cases).toBe(study.found.computed.length + study.rows.length);
		expect(range.cases).toBeLessThanOrEqual(most);
	});

	it("is one where nothing is uncertain", () => {
		const certain = Object.fromEntries(
			Object.keys(spreads).map((name) => [name, 0]),
		) as unknown as typeof spreads;
		const { range } = ranged(dayCase(cavity, 0.2, 323.15), certain);
		expect(range.cases).toBe(1);
		for (const { low, central, high } of range.ranges) expect([low, high]).toEqual([central, central]);
	});
});

describe("a target that is just reached or not", () => {
	const { range } = ranged(dayCase(cavity, 0.3, 333.15));
	const time = range.ranges.find(({ name }) => name === "timeToTarget")!;

	it("is answered by the sample, with the share that reaches it", () => {
		expect(time.method).toBe("sample");
		expect(time.answered).toBeGreaterThan(0.1);
		expect(time.answered).toBeLessThan(1);
		expect(time.high).toBeNaN();
		expect(time.low).toBeLessThan(time.central);
	});
});

describe("the effects of the inputs", () => {
	const { range } = ranged(dayCase(cavity, 0.3, 360));
	const heat = Object.fromEntries(range.effects.map(({ input, effects }) => [input, effects.toWater!]));

	it("have the signs of physics", () => {
		for (const input of ["reflectance", "cleanliness", "absorptance", "coilFilm", "pumpFlow", "ambient"])
			expect(heat[input], input).toBeGreaterThan(0);
		for (const input of ["turbidity", "slopeError", "receiverConvection", "laggingLoss", "wind"])
			expect(heat[input], input).toBeLessThan(0);
	});

	it("of reflectance and cleanliness go by what they change of the light", () => {
		expect(heat.reflectance! / heat.cleanliness!).toBeCloseTo(0.02 / 0.9 / (0.03 / 0.95), 1);
	});
});

it("tells a measured sky's spread in place of the turbidity", () => {
	const clear = dayCase(cavity, 0.3, 308.15);
	const time = Float64Array.from({ length: 100 }, (_, i) => clear.task.start - 600 + i * 600);
	const stated: DayCase = {
		...clear,
		sky: {
			kind: "measured",
			sky: {
				time,
				beam: time.map(() => 800),
				diffuse: time.map(() => 80),
				global: undefined,
				ambient: time.map(() => 280),
				wind: time.map(() => 2),
			},
		},
	};
	const { range } = ranged(stated);
	const names = range.effects.map(({ input }) => input);
	expect(names).toContain("measuredBeam");
	expect(names).not.toContain("turbidity");
	expect(range.cases).toBeLessThanOrEqual(13);
	const beam = range.effects.find(({ input }) => input === "measuredBeam")!;
	expect(beam.effects.toWater).toBeGreaterThan(0);
});
