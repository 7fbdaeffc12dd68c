import { describe, expect, it } from "vitest";
import { latinHypercube } from "../../../src/numeric/latin-hypercube.ts";
import type { Question, Values } from "../../../src/uncertainty/question.ts";
import { answerRanges, orderStatistic } from "../../../src/uncertainty/range.ts";

type Scores = readonly number[];

/** A question whose case is the scores themselves, and how often it was worked out. */
function counted(inputs: number, values: (scores: Scores) => Values, margins: readonly string[]) {
	const calls: Scores[] = [];
	const recorded = (scores: Scores) => {
		calls.push(scores);
		return values(scores);
	};
	const stated = new Array<number>(inputs).fill(0);
	const question: Question<Scores> = {
		stated,
		central: recorded(stated),
		inputs: Array.from({ length: inputs }, (_, i) => ({
			name: `input${i}`,
			at: (stated: Scores, score: number) => stated.map((s, j) => (j === i ? s + score : s)),
			through: undefined,
		})),
		values: recorded,
		answers: [{ name: "answer", margins }],
	};
	return { question, calls };
}

const sum = (scores: Scores) => scores.reduce((total, score, i) => total + (i + 1) * score, 0);

describe("a straight answer", () => {
	it("lies within 1.645 deviations of the centre", () => {
		const { question } = counted(3, (scores) => ({ answer: 100 + sum(scores) }), []);
		const { ranges, effects, coverage } = answerRanges(question);
		const range = ranges[0]!;
		expect(range.method).toBe("propagation");
		expect(coverage).toBe(0.9);
		expect(range.central).toBe(100);
		expect(range.high).toBeCloseTo(100 + 1.645 * Math.sqrt(1 + 4 + 9), 1);
		expect(range.low).toBeCloseTo(100 - 1.645 * Math.sqrt(1 + 4 + 9), 1);
		expect(effects.map((effect) => effect.effects.answer)).toEqual([1, 2, 3]);
	});

	it.each([1, 3, 10, 12])("costs no more than 13 cases with %i inputs, counted exactly", (inputs) => {
		const { question, calls } = counted(inputs, (scores) => ({ answer: sum(scores) }), []);
		const { cases } = answerRanges(question);
		expect(calls.length).toBe(cases);
		expect(cases).toBe(1 + inputs + Math.min(inputs, 12 - inputs));
		expect(calls[0]!.every((score) => score === 0)).toBe(true); // the case as stated comes first
	});

	it("spends the spare cases on the strongest inputs", () => {
		const { question, calls } = counted(10, (scores) => ({ answer: sum(scores) }), []);
		answerRanges(question);
		const down = calls.filter((scores) => scores.some((score) => score < 0));
		expect(down.map((scores) => scores.findIndex((score) => score < 0))).toEqual([9, 8]);
	});
});

describe("an answer that bends", () => {
	it("is propagated with its bend where that is small", () => {
		const { question } = counted(1, ([z]) => ({ answer: Math.exp(0.2 * z!) }), []);
		const range = answerRanges(question).ranges[0]!;
		expect(range.method).toBe("propagation");
		expect(range.high).toBeCloseTo(Math.exp(0.2 * 1.645), 2); // a lognormal's own quantiles
		expect(range.low).toBeCloseTo(Math.exp(-0.2 * 1.645), 2);
	});

	it("is sampled where it is not near a straight line", () => {
		const { question, calls } = counted(2, ([a, b]) => ({ answer: a! * a! + 0.1 * b! }), []);
		const { ranges, cases } = answerRanges(question);
		expect(ranges[0]!.method).toBe("sample");
		expect(cases).toBe(40);
		expect(calls.length).toBe(40);
		expect(ranges[0]!.high).toBeGreaterThan(2.5);
		expect(ranges[0]!.high).toBeLessThan(5); // chi-square of one degree: 3.84
	});
});

describe("an answer near a sharp bend", () => {
	const capped = (centre: number) => (scores: Scores) => {
		const x = centre + scores[0]!;
		return { answer: x < 0 ? x : Number.NaN, margin: x };
	};

	it("is sampled, and tells the share that has an answer", () => {
		const { question } = counted(1, capped(0.5), ["margin"]);
		const range = answerRanges(question).ranges[0]!;
		expect(range.method).toBe("sample");
		expect(range.central).toBeNaN();
		expect(range.answered).toBeCloseTo(0.309, 1); // Φ(−0.5)
		expect(range.low).toBeLessThan(-0.9);
		expect(range.high).toBeNaN(); // more than one in twenty have none
	});

	it("is propagated far from the bend", () => {
		const { question } = counted(1, capped(-4), ["margin"]);
		expect(answerRanges(question).ranges[0]!.method).toBe("propagation");
	});

	it("has no range where no case has an answer", () => {
		const { question, calls } = counted(1, capped(9), ["margin"]);
		const range = answerRanges(question).ranges[0]!;
		expect(range).toMatchObject({ method: "propagation", answered: 0, low: Number.NaN, high: Number.NaN });
		expect(calls.length).toBeLessThan(13);
	});
});

describe("inputs that act through one quantity", () => {
	it("share their cases and keep their own effects", () => {
		const light = ([a, b]: Scores) => Math.exp(0.1 * a!) * (1 + 0.05 * b!);
		const { question, calls } = counted(2, (scores) => ({ answer: 50 * light(scores) }), []);
		const { cases, effects } = answerRanges({
			...question,
			inputs: question.inputs.map((input) => ({ ...input, through: light })),
		});
		expect(calls.length).toBe(cases);
		expect(cases).toBe(3); // stated, up, down: whatever the number of inputs
		expect(effects[0]!.effects.answer).toBeCloseTo(50 * Math.sinh(0.1), 6);
		expect(effects[1]!.effects.answer).toBeCloseTo(2.5, 6);
	});

	it("cost nothing where they move nothing", () => {
		const { question, calls } = counted(2, () => ({ answer: 5 }), []);
		const still = () => 1;
		const inputs = question.inputs.map((input) => ({ ...input, through: still }));
		const { ranges } = answerRanges({ ...question, inputs });
		expect(calls.length).toBe(1);
		expect(ranges[0]).toMatchObject({ low: 5, central: 5, high: 5 });
	});
});

describe("a sampled range", () => {
	/** Weights of many inputs that share in an answer as those of a plant do. */
	const WEIGHTS = [1, 0.7, 0.5, 0.4, 0.3, 0.3, 0.2, 0.2, 0.1, 0.1, 0.05, 0.05];
	const deviation = Math.hypot(...WEIGHTS);
	const ROWS = 27;
	const SEEDS = 400;

	it("holds nine plants of ten, over many samples: neither more nor fewer", () => {
		let inside = 0;
		for (let seed = 1; seed <= SEEDS; seed++) {
			const sorted = latinHypercube(seed, ROWS, WEIGHTS.length)
				.map((scores) => WEIGHTS.reduce((sum, weight, i) => sum + weight * scores[i]!, 0))
				.sort((a, b) => a - b);
			const below = (probability: number) =>
				normalShare(orderStatistic(sorted, ROWS, probability) / deviation);
			inside += (below(0.95) - below(0.05)) / SEEDS;
		}
		expect(Math.abs(inside - 0.9)).toBeLessThan(0.008); // three standard deviations of 400 samples
	});

	it("has no end where too many lack an answer, and its middle in the middle", () => {
		const sorted = Array.from({ length: 20 }, (_, i) => i);
		expect(orderStatistic(sorted, 27, 0.95)).toBeNaN();
		expect(orderStatistic(sorted, 27, 0.05)).toBeLessThan(1);
		expect(orderStatistic(sorted, 20, 0.5)).toBeCloseTo(9.5, 12);
	});
});

/** Share of a normal distribution below a score, by Simpson's rule on its density. */
function normalShare(score: number): number {
	const steps = 200;
	const width = score / steps;
	let sum = 0;
	for (let i = 0; i <= steps; i++)
		sum += (i === 0 || i === steps ? 1 : i % 2 === 1 ? 4 : 2) * Math.exp(-((i * width) ** 2) / 2);
	return 0.5 + (sum * width) / 3 / Math.sqrt(2 * Math.PI);
}
