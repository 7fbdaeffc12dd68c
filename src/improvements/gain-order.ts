import type { Effect } from "../numeric/moments.ts";
import type { DayAnswer } from "../uncertainty/day-answers.ts";
import type { GainStudy } from "./gain-range.ts";
import { orderOfWorth, type Worth } from "./sensitivity.ts";

/** Share of plants in which one improvement is worth more than the other, compared plant by plant.
 *  @param sample  scores of the rows in which either was sampled
 *  @param many    scores used where neither was sampled, because a sum of effects is cheap to evaluate */
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

/** Worth of an improvement in a plant: as sampled, or from the effects of its inputs. */
function worthIn({ gain, effects, rows }: GainStudy, row: number, scores: Float64Array): Worth {
	const found = rows[row];
	if (found !== undefined || effects === undefined) return found ?? gain;
	const at = (name: DayAnswer) => gain.gains[name] + departure(effects[name], scores);
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

function departure(effects: readonly Effect[], scores: Float64Array): number {
	return effects.reduce((sum, { first, second }, i) => sum + scores[i]! * (first + second * scores[i]!), 0);
}
