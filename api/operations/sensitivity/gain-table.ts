import { csv } from "../../parts/csv.ts";
import type { SensitivityResponse } from "./response.ts";
import { DONE } from "./words.ts";

type Improvement = SensitivityResponse["improvements"][number];
type Cell = string | number | undefined;

const GAINS = [
	["timeToTarget", "timeToTargetMin", "min"],
	["endTemperature", "endTemperatureK", "K"],
	["usableLitresAt40C", "usableLitresAt40C", "L"],
	["toWater", "toWaterKwh", "kWh"],
] as const satisfies readonly (readonly [string, keyof Improvement["gains"], string])[];

/** The improvements as a table of comma-separated values, a row each: those that gain by their rank, then those that cannot be made
 *  and those that the models refuse, with their code. Ranges and costs have columns where they were asked for. */
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
	const apart = (outcome: string) => (one: { readonly id: Improvement["id"]; readonly code: string }) =>
		padded([undefined, one.id, DONE[one.id], outcome, one.code]);
	return csv([
		head,
		...improvements.map((one, i) => padded(row(one, i + 1, range !== undefined, currency !== undefined))),
		...notApplicable.map(apart("notApplicable")),
		...refused.map(apart("refused")),
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
