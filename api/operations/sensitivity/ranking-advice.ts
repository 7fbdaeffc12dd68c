import { z } from "@hono/zod-openapi";
import type { DayOutcome } from "../../../src/index.ts";
import { Parameters } from "../../parts/caution.ts";
import { fromSi } from "../../wire/units.ts";
import type { Ranking } from "./request.ts";

export const RankingAdvice = z
	.strictObject({
		code: z.enum(["rankByMinutes"]).meta({ description: "What to do, for a program to branch on." }),
		parameters: Parameters,
		message: z.string().meta({ description: "The same in English." }),
	})
	.openapi("RankingAdvice", {
		description:
			"Why this ranking tells little on this day. Present where a limit turned the dish away from a tank that reached its target, and the list is not ranked by minutes.",
	});

/** A tank that is full by its limit whatever is improved: what it ends with is where its controller's last cycle stood. */
export function rankingAdvice(
	outcome: DayOutcome,
	rankedBy: Ranking,
): z.input<typeof RankingAdvice> | undefined {
	if (rankedBy === "minutes" || !outcome.reached || outcome.turnedAwayTime === 0) return undefined;
	const turnedAwayTimeMin = fromSi.minutes(outcome.turnedAwayTime);
	return {
		code: "rankByMinutes",
		parameters: { turnedAwayTimeMin, rankedBy },
		message: `A limit turned the dish away for ${Math.ceil(turnedAwayTimeMin)} min of this day: the tank took all it may, and what an improvement changes of litres, temperature and heat is mostly where the controller's last cycle stood, of either sign. Rank by minutes, or ask for a larger tank.`,
	};
}
