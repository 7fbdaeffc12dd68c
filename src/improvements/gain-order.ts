import type { Bend } from "../numeric/moments.ts";
import type { DayAnswer } from "../uncertainty/day-answers.ts";
import type { GainStudy } from "./gain-range.ts";
import { orderOfWorth, type Worth } from "./sensitivity.ts";

/** Share of plants in which the one improvement is worth more than the other, both in the same plants.
 *  @param sample  scores of the rows that either was sampled in
 *  @param many    scores to draw from where neither was, since a sum of bends costs nothing */
export function shareAhead(
	one: GainStudy,
	other: GainStudy,
	by: DayAnswer,
	sample: readonly Float64Array[],
	many: readonly Float64Array[],
): number {
	const plants = one.rows.length + other.rows.length > 0 ? sample : many;
	const ahead = plants.filter(
		(scores, row) => orderOfWorth(worthIn(one, row, scores), worthIn(other, row, scores), by) < 0,
	);
	return ahead.length / plants.length;
}

/** What an improvement is worth in a plant: as sampled, or by its bends. */
function worthIn({ gain, bends, rows }: GainStudy, row: number, scores: Float64Array): Worth {
	const found = rows[row];
	if (found !== undefined || bends === undefined) return found ?? gain;
	const at = (name: DayAnswer) => gain.gains[name] + departure(bends[name], scores);
	return {
		reaches: gain.reaches,
		gains: {
			timeToTarget: at("timeToTarget"),
			endTemperature: at("endTemperature"),
			usableVolume: at("usableVolume"),
			toWater: at("toWater"),
		},
	};
}

function departure(bends: readonly Bend[], scores: Float64Array): number {
	return bends.reduce((sum, { first, second }, i) => sum + scores[i]! * (first + second * scores[i]!), 0);
}
