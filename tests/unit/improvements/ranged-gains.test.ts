import { describe, expect, it } from "vitest";
import { columnsOf, scoreCount } from "../../../src/improvements/gain-inputs.ts";
import { type GainRange, rangedGains } from "../../../src/improvements/ranged-gains.ts";
import { daySensitivity, type Gain, type Improvement } from "../../../src/improvements/sensitivity.ts";
import type { ImprovementId } from "../../../src/improvements/steps.ts";
import { latinHypercube } from "../../../src/numeric/latin-hypercube.ts";
import { type DayAnswer, type DayAnswers, dayAnswers } from "../../../src/uncertainty/day-answers.ts";
import { type DayCase, dayOf } from "../../../src/uncertainty/day-case.ts";
import { dayInputs } from "../../../src/uncertainty/day-inputs.ts";
import { rangedDay } from "../../../src/uncertainty/day-range.ts";
import type { DaySpreads } from "../../../src/uncertainty/day-spreads.ts";
import { cavity, measuredDish } from "../plant/plants.ts";
import { dayCase, FAULTY, hoursOf, reduced, spreads, steps } from "../uncertainty/day-cases.ts";

const ROWS = 500;

/** @param changed  what becomes of an improvement before its gains are ranged */
function ranged(
	stated: DayCase,
	by: DaySpreads = spreads,
	rankedBy: DayAnswer = "toWater",
	changed = (one: Improvement): Improvement => one,
) {
	const outcome = dayOf(stated);
	const base = rangedDay(stated, outcome, by);
	const found = daySensitivity(stated, outcome, steps, rankedBy).map(changed);
	const gains = found.filter((one): one is Gain => one.outcome === "gains");
	const { ranges, days } = rangedGains(base, found, by, rankedBy);
	const rangeOf = (id: ImprovementId) => told(ranges.get(id));
	const of = (id: ImprovementId, name: DayAnswer) => rangeOf(id).ranges.find((one) => one.name === name)!;
	return { base, gains, ranges, rangeOf, of, days, sampled: base.study.rows.length > 0 };
}

function told(range: GainRange | undefined) {
	if (range?.outcome !== "ranged") throw new Error("no range");
	return range;
}

const far = reduced(dayCase(cavity, 0.3, 360)); // ends far from the target and every limit
const reaching = hoursOf(dayCase(measuredDish, 0.2, 313.15), 7); // reaches its target by noon whatever is uncertain

/** Its target is just reached or not, so that it needs a sample. */
const wavering = reduced(dayCase(cavity, 0.3, 328.15));

const morning = hoursOf(dayCase(cavity, 0.3, 360), 4); // as far from target and limits

const gainsOf = {
	far: ranged(far),
	reaching: ranged(reaching),
	wavering: ranged(wavering, spreads, "timeToTarget"),
};

const smooth = [
	[
		"a cavity",
		morning,
		ranged(morning),
		["reflectance", "supplyLagging", "aperture"],
		["toWater", "endTemperature"],
	],
	["a measured dish", reaching, gainsOf.reaching, ["aperture", "shorterPipes"], ["timeToTarget"]],
] as const satisfies readonly (readonly [
	string,
	DayCase,
	ReturnType<typeof ranged>,
	readonly ImprovementId[],
	readonly DayAnswer[],
])[];

/** Days of plants whose every input is off by the scores of a row. */
function days(of: DayCase, columns: readonly number[], rows: readonly Float64Array[]): DayAnswers[] {
	const inputs = dayInputs(of, spreads);
	return rows.map((scores) => {
		const drawn = inputs.reduce((made, input, i) => input.at(made, scores[columns[i]!]!), of);
		return dayAnswers(dayOf(drawn), drawn.task);
	});
}

describe.each(smooth)("against a Latin hypercube of 500, %s", (_name, stated, { gains, of }, ids, names) => {
	const inputs = dayInputs(stated, spreads);
	const rows = latinHypercube(11, ROWS, scoreCount(inputs));
	const without = days(
		stated,
		inputs.map((_, i) => i),
		rows,
	);

	describe.each(ids)("%s", (id) => {
		const withIt = days(gains.find((one) => one.id === id)!.of, columnsOf(id, inputs), rows);

		it.each(names)("has its gain of %s propagated within 15 % of the width", (name) => {
			const sign = name === "timeToTarget" ? -1 : 1;
			const gained = without.map((day, i) => sign * (withIt[i]![name] - day[name])).sort((a, b) => a - b);
			const at = (probability: number) => gained[Math.round(probability * ROWS - 0.5)]!;
			const { low, high, method } = of(id, name);
			const width = at(0.95) - at(0.05);
			expect(method).toBe("propagation");
			expect(Math.abs(low - at(0.05))).toBeLessThan(0.15 * width);
			expect(Math.abs(high - at(0.95))).toBeLessThan(0.15 * width);
		});
	});
});

describe("plant and improved plant", () => {
	const { base, of, rangeOf, ranges, gains } = gainsOf.far;

	it("err alike, so that a gain is far better known than either of the two", () => {
		const heat = base.range.ranges.find(({ name }) => name === "toWater")!;
		for (const id of ["supplyLagging", "returnLagging", "coilLength", "flow", "aperture"] as const) {
			const gain = of(id, "toWater");
			expect((gain.high - gain.low) / (heat.high - heat.low), id).toBeLessThan(0.25);
		}
	});

	it("gain what physics says they do, in all likelihood", () => {
		for (const id of ["aperture", "shorterPipes", "supplyLagging", "coilLength", "dryLagging"] as const) {
			expect(of(id, "toWater").low, id).toBeGreaterThan(0);
			expect(of(id, "endTemperature").low, id).toBeGreaterThan(0);
		}
		expect(of("tankLagging", "endTemperature").low).toBeGreaterThan(0);
		expect(of("tankLagging", "toWater").high).toBeLessThan(0); // a warmer tank takes less from the coil
	});

	it("hold each gain as stated within its range", () => {
		for (const { id, gains: stated } of gains)
			for (const name of ["endTemperature", "usableVolume", "toWater"] as const) {
				const { low, central, high } = of(id, name);
				expect(central, `${id} ${name}`).toBe(stated[name]);
				expect(low, `${id} ${name}`).toBeLessThanOrEqual(central);
				expect(high, `${id} ${name}`).toBeGreaterThanOrEqual(central);
			}
	});

	it("part the certain places from the uncertain", () => {
		const order = gains.map(({ id }) => rangeOf(id).ahead?.order);
		expect(gains[0]!.id).toBe("aperture");
		expect(rangeOf("reflectance").ahead?.order).toBe("uncertain"); // as good as washing more often, give or take the new mirror
		expect(order).toContain("certain");
		expect(order.at(-1)).toBeUndefined();
		for (const { id } of gains.slice(0, -1)) {
			const { share, order: said } = rangeOf(id).ahead!;
			expect(said).toBe(share >= 0.95 ? "certain" : "uncertain");
		}
	});

	it("are told for every improvement that gains", () => {
		expect([...ranges.keys()]).toEqual(gains.map(({ id }) => id));
	});
});

describe("a new mirror", () => {
	const certain = Object.fromEntries(Object.keys(spreads).map((name) => [name, 0])) as unknown as DaySpreads;

	it("errs apart from the old one: its gain is off by both", () => {
		const { of, rangeOf } = ranged(morning, { ...certain, reflectance: 0.01 });
		const { low, central, high } = of("reflectance", "toWater");
		const rise = steps.reflectance - morning.plant.dish.reflectance; // the gain goes by it, in a straight line
		expect((high - low) / 2 / central / ((1.645 * Math.SQRT2 * 0.01) / rise)).toBeCloseTo(1, 1);
		expect(rangeOf("reflectance").renewed).toBe("reflectance");
	});

	it("errs like the old one in any other improvement", () => {
		const { of, rangeOf } = ranged(morning, { ...certain, reflectance: 0.01 });
		const { low, central, high } = of("aperture", "toWater");
		expect((high - low) / central).toBeLessThan(0.06); // two times 1.645 hundredths of 0.9
		expect(rangeOf("aperture").renewed).toBeUndefined();
	});
});

describe("what is useless", () => {
	it("may gain nothing: its range holds zero", () => {
		const { start } = far.task;
		const night = { ...far, task: { ...far.task, start: start - 6 * 3600, end: start - 2 * 3600 } };
		const { of, rangeOf, gains } = ranged(night);
		for (const id of ["aperture", "reflectance", "cleaning", "slopeError"] as const)
			for (const name of ["endTemperature", "usableVolume", "toWater"] as const) {
				const { low, high } = of(id, name);
				expect(low, `${id} ${name}`).toBeLessThanOrEqual(0);
				expect(high, `${id} ${name}`).toBeGreaterThanOrEqual(0);
			}
		const first = gains.findIndex(({ id }) => id === "aperture");
		expect(rangeOf(gains[first]!.id).ahead?.order).toBe("uncertain");
	});

	it("gains about nothing where the tank boils anyway, however much more heat it takes", () => {
		const { of } = ranged(reduced(dayCase(cavity, 0.08, 318.15)));
		const { low, high } = of("aperture", "endTemperature");
		expect(low).toBeGreaterThan(-0.1);
		expect(high).toBeLessThan(0.1);
		expect(of("aperture", "toWater").low).toBeGreaterThan(0);
	});
});

describe("what it costs in marches", () => {
	it("is at most 12 each where all is propagated", () => {
		const { days, gains, ranges, sampled } = gainsOf.reaching;
		expect(sampled).toBe(false);
		expect(
			[...ranges.values()].every((one) => told(one).ranges.every((r) => r.method === "propagation")),
		).toBe(true);
		expect(days).toBeLessThanOrEqual(12 * gains.length);
		expect(days).toBeGreaterThan(gains.length);
	});

	it("is the rows of the plant's own sample where that needed one", () => {
		const { days, gains, base, sampled } = gainsOf.wavering;
		expect(sampled).toBe(true);
		expect(base.study.rows.length).toBeLessThanOrEqual(30);
		expect(days).toBe(base.study.rows.length * gains.length);
	});
});

describe("a target that is just reached or not", () => {
	const { rangeOf, of } = gainsOf.wavering;
	const { reaches } = rangeOf("aperture");

	it("is reached by more plants with a larger dish", () => {
		expect(reaches.both + reaches.onlyWith + reaches.onlyWithout + reaches.neither).toBeCloseTo(1, 12);
		expect(reaches.onlyWith).toBeGreaterThan(0);
		expect(reaches.both).toBeGreaterThan(0);
		expect(reaches.onlyWithout).toBe(0);
	});

	it("leaves the most time saved open where more plants reach it only so than are left out above", () => {
		const { low, high } = of("aperture", "timeToTarget");
		expect(reaches.onlyWith / (1 - reaches.neither)).toBeGreaterThan(0.05);
		expect(high).toBeNaN();
		expect(low).toBeGreaterThan(0);
	});
});

describe("a plant within the spreads that the models refuse", () => {
	/** The longer coil in a bore wider than any helix it could be wound to, or what else the change makes of it. */
	const withCoil = (change: (of: DayCase) => DayCase) => (one: Improvement) =>
		one.outcome === "gains" && one.id === "coilLength" ? { ...one, of: change(one.of) } : one;

	it("takes the range of its own improvement alone", () => {
		const unwindable = (of: DayCase): DayCase => {
			const { coil } = of.plant;
			return { ...of, plant: { ...of.plant, coil: { ...coil, coilDiameter: coil.innerDiameter } } };
		};
		const { ranges, rangeOf } = ranged(morning, spreads, "toWater", withCoil(unwindable));
		const refused = [...ranges].filter(([, range]) => range.outcome === "refused");
		expect(refused.map(([id]) => id)).toEqual(["coilLength"]);
		expect(refused[0]![1]).toMatchObject({ error: { code: "out_of_range", subject: "coil.diameterRatio" } });
		expect(rangeOf("aperture").ranges).toHaveLength(4);
	});

	it("is no cloak for a fault of the service", () => {
		const faulty = (of: DayCase): DayCase => ({
			...of,
			plant: { ...of.plant, loop: { ...of.plant.loop, fluid: FAULTY } },
		});
		expect(() => ranged(morning, spreads, "toWater", withCoil(faulty))).toThrow(TypeError);
	});
});
