import { coreSpreads, Spreads } from "../../../api/parts/spread.ts";
import { normalStream } from "../../../src/numeric/random.ts";
import { type DayAnswers, dayAnswers } from "../../../src/uncertainty/day-answers.ts";
import { type DayCase, dayOf } from "../../../src/uncertainty/day-case.ts";
import { dayInputs } from "../../../src/uncertainty/day-inputs.ts";
import { rangedDay } from "../../../src/uncertainty/day-range.ts";
import type { AnswerRange } from "../../../src/uncertainty/range.ts";
import { cavity, glazedCoil, measuredDish, openCoil } from "../../unit/plant/plants.ts";
import { dayCase } from "../../unit/uncertainty/day-cases.ts";

const spreads = coreSpreads(Spreads.parse({})); // those that an answer takes unless told otherwise
const SEEDS = [1, 2, 3];
const ALLOWED = 0.05; // either way
const TAIL = 0.05; // beyond either end, as the answer claims

interface Day {
	readonly name: string;
	readonly stated: DayCase;
	readonly answers: readonly (keyof DayAnswers)[];
}

/** Days whose ranges are tried, those that take longest first. */
export const days: readonly Day[] = [
	{
		name: "cavity, target reached",
		stated: dayCase(cavity, 0.3, 318.15),
		answers: ["timeToTarget", "endTemperature", "usableVolume", "toWater"],
	},
	{
		name: "cavity, target just reached or not",
		stated: dayCase(cavity, 0.3, 333.15),
		answers: ["timeToTarget"],
	},
	{
		name: "open coil, tank just boils or not",
		stated: dayCase(openCoil, 0.15, 333.15),
		answers: ["timeToTarget", "toWater"],
	},
	{
		name: "glazed coil",
		stated: dayCase(glazedCoil, 0.3, 313.15),
		answers: ["timeToTarget", "endTemperature", "toWater"],
	},
	{
		name: "measured dish",
		stated: dayCase(measuredDish, 0.3, 308.15),
		answers: ["timeToTarget", "endTemperature", "toWater"],
	},
];

/** How often one answer fell within its range, seed by seed, against the share that the range claims. */
export interface Coverage {
	readonly day: string;
	readonly answer: keyof DayAnswers;
	readonly method: AnswerRange["method"];
	readonly marches: number;
	readonly claimed: number;
	readonly inside: readonly number[];
	readonly asClaimed: boolean;
}

/** @param plants  drawn for each seed */
export function coverageOf({ name, stated, answers }: Day, plants: number): readonly Coverage[] {
	const { range } = rangedDay(stated, dayOf(stated), spreads);
	const samples = SEEDS.map((seed) => drawn(stated, plants, seed));
	return answers.map((answer) => {
		const found = range.ranges.find((candidate) => candidate.name === answer)!;
		const claimed = range.coverage + (Number.isNaN(found.high) ? TAIL : 0);
		const inside = samples.map(
			(sample) => sample.filter((day) => within(found, day[answer])).length / plants,
		);
		const asClaimed = inside.every((share) => Math.abs(share - claimed) <= ALLOWED);
		return { day: name, answer, method: found.method, marches: range.cases, claimed, inside, asClaimed };
	});
}

function drawn(stated: DayCase, plants: number, seed: number): readonly DayAnswers[] {
	const normal = normalStream(seed);
	const inputs = dayInputs(stated, spreads);
	return Array.from({ length: plants }, () => {
		const of = inputs.reduce((made, input) => input.at(made, normal()), stated);
		return dayAnswers(dayOf(of), of.task);
	});
}

/** Whether an answer falls within, one that is missing counting as later than any. */
function within({ low, high }: AnswerRange, value: number): boolean {
	const at = Number.isNaN(value) ? Number.POSITIVE_INFINITY : value;
	return at >= low && (Number.isNaN(high) || at <= high);
}
