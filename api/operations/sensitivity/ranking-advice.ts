import { z } from "@hono/zod-openapi";
import type { DayOutcome } from "../../../src/index.ts";
import { Parameters } from "../../parts/caution.ts";
import { fromSi } from "../../wire/units.ts";
import type { Ranking } from "./request.ts";

export const RankingAdvice = z
	.strictObject({
		code: z.enum(["rankByMinutes"]).meta({ description: "Machine-readable code of the advice." }),
		parameters: Parameters,
		message: z.string().meta({ description: "The advice as an English sentence." }),
	})
	.openapi("RankingAdvice", {
		description:
			"Advice to rank by another quantity. Present where a temperature limit turned the dish away, the tank reached its target, and the list is not ranked by minutes.",
	});

/** Advice for a tank that reaches its limit whatever is improved: its final state depends on the phase of the controller's last cycle. */
export function rankingAdvice(
	outcome: DayOutcome,
	rankedBy: Ranking,
): z.input<typeof RankingAdvice> | undefined {
	if (rankedBy === "minutes" || !outcome.reached || outcome.turnedAwayTime === 0) return undefined;
	const turnedAwayTimeMin = fromSi.minutes(outcome.turnedAwayTime);
	return {
		code: "rankByMinutes",
		parameters: { turnedAwayTimeMin, rankedBy },
		message: `A temperature limit turned the dish away for ${Math.ceil(turnedAwayTimeMin)} min on this day, so the tank is full. Gains in litres, temperature and heat then mostly reflect the controller's last cycle and can have either sign. Rank by minutes, or send a larger tank.`,
	};
}
