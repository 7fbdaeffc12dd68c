import { csv } from "../../parts/csv.ts";
import type { SensitivityResponse } from "./response.ts";
import { DESCRIPTIONS } from "./words.ts";

type Improvement = SensitivityResponse["improvements"][number];
type Cell = string | number | undefined;

const GAINS = [
	["timeToTarget", "timeToTargetMin", "min"],
	["endTemperature", "endTemperatureK", "K"],
	["usableLitresAt40C", "usableLitresAt40C", "L"],
	["toWater", "toWaterKwh", "kWh"],
] as const satisfies readonly (readonly [string, keyof Improvement["gains"], string])[];

/** The improvements as a table of comma-separated values, one row each: ranked gains first, then improvements that do not apply
 *  and those outside the models, with their code. Ranges and prices have columns where requested. */
export function gainTable(answer: SensitivityResponse): string {
	const { improvements, notApplicable, refused, range, currency } = answer;
	const head = [
		...["rank", "id", "what", "outcome", "reachesOrCode"],
		...GAINS.flatMap(([name, , unit]) => [
			`${name} [${unit}]`,
			...(range ? [`${name}Low [${unit}]`, `${name}High [${unit}]`] : []),
		]),
		...(range ? ["aheadOfNext", "aheadOfNextShare"] : []),
		...(currency ? [`price [${currency}]`] : []),
	];
	const padded = (row: readonly Cell[]): readonly Cell[] => head.map((_, i) => row[i]);
	const unranked = (outcome: string) => (one: { readonly id: Improvement["id"]; readonly code: string }) =>
		padded([undefined, one.id, DESCRIPTIONS[one.id], outcome, one.code]);
	return csv([
		head,
		...improvements.map((one, i) => padded(row(one, i + 1, range !== undefined, currency !== undefined))),
		...notApplicable.map(unranked("notApplicable")),
		...refused.map(unranked("refused")),
	]);
}

function row(one: Improvement, rank: number, ranged: boolean, priced: boolean): readonly Cell[] {
	const { id, message, reaches, gains, range, aheadOfNext, cost } = one;
	return [
		...[rank, id, message, "gains", reaches],
		...GAINS.flatMap(([, field]) => [
			gains[field],
			...(ranged ? [range?.[field]?.low, range?.[field]?.high] : []),
		]),
		...(ranged ? [aheadOfNext?.order, aheadOfNext?.share] : []),
		...(priced ? [cost?.price] : []),
	];
}
