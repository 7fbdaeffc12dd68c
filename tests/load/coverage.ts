/** How often plants drawn at random from the full model fall between low and high: a thousand for each of three seeds, against
 *  the share claimed. Draws are independent, and no part of the propagation is used to make them. */
import { coreSpreads, Spreads } from "../../api/schemas/spread.ts";
import { normalStream } from "../../src/numeric/random.ts";
import { type DayAnswers, dayAnswers } from "../../src/sizing/day-answers.ts";
import { type DayCase, dayOf } from "../../src/sizing/day-case.ts";
import { dayInputs } from "../../src/sizing/day-inputs.ts";
import { rangedDay } from "../../src/sizing/day-range.ts";
import type { AnswerRange } from "../../src/sizing/range.ts";
import { cavity, glazedCoil, measuredDish, openCoil } from "../unit/plant/plants.ts";
import { dayCase } from "../unit/sizing/day-cases.ts";

const PLANTS = Number(process.argv[2] ?? 1000);
const spreads = coreSpreads(Spreads.parse({})); // those that an answer takes unless told otherwise
const SEEDS = [1, 2, 3];
const ALLOWED = 0.05; // either way
const TAIL = 0.05; // beyond either end, as the answer claims

const days: readonly (readonly [string, DayCase, readonly (keyof DayAnswers)[]])[] = [
	[
		"cavity, target reached",
		dayCase(cavity, 0.3, 318.15),
		["timeToTarget", "endTemperature", "usableVolume", "toWater"],
	],
	["cavity, target just reached or not", dayCase(cavity, 0.3, 333.15), ["timeToTarget"]],
	["open coil, tank just boils or not", dayCase(openCoil, 0.15, 333.15), ["timeToTarget", "toWater"]],
	["glazed coil", dayCase(glazedCoil, 0.3, 313.15), ["timeToTarget", "endTemperature", "toWater"]],
	["measured dish", dayCase(measuredDish, 0.3, 308.15), ["timeToTarget", "endTemperature", "toWater"]],
];

function drawn(stated: DayCase, seed: number): readonly DayAnswers[] {
	const normal = normalStream(seed);
	const inputs = dayInputs(stated, spreads);
	return Array.from({ length: PLANTS }, () => {
		const of = inputs.reduce((made, input) => input.at(made, normal()), stated);
		return dayAnswers(dayOf(of), of.task);
	});
}

/** Whether an answer falls within, one that is missing counting as later than any. */
function within({ low, high }: AnswerRange, value: number): boolean {
	const at = Number.isNaN(value) ? Number.POSITIVE_INFINITY : value;
	return at >= low && (Number.isNaN(high) || at <= high);
}

let passed = 0;
let failed = 0;
for (const [name, stated, answers] of days) {
	const { range } = rangedDay(stated, spreads, dayOf);
	const samples = SEEDS.map((seed) => drawn(stated, seed));
	for (const answer of answers) {
		const found = range.ranges.find((candidate) => candidate.name === answer)!;
		const claimed = range.coverage + (Number.isNaN(found.high) ? TAIL : 0);
		const shares = samples.map(
			(sample) => sample.filter((day) => within(found, day[answer])).length / PLANTS,
		);
		const ok = shares.every((share) => Math.abs(share - claimed) <= ALLOWED);
		if (ok) passed++;
		else failed++;
		console.log(
			`${ok ? "ok  " : "OFF "} ${name}: ${answer} by ${found.method}, ${range.cases} marches: claimed ${claimed.toFixed(2)}, inside ${shares.map((share) => share.toFixed(3)).join(", ")}`,
		);
	}
}
console.log(`${passed} passed, ${failed} failed`);
if (failed > 0) process.exitCode = 1;
