import { z } from "@hono/zod-openapi";
import type { GainRange as CoreRange } from "../../../src/index.ts";
import { ranged, wireAnswer } from "../../parts/range.ts";
import { SPREAD_NAMES, spreadName } from "../../parts/spread.ts";
import { fromSi, kelvinDifference, kilowattHours, litres, minutes, ratio } from "../../wire/units.ts";

const share = (what: string) => ratio(`Share of plants that reach the target ${what}.`);

export const GainRange = z
	.strictObject({
		timeToTargetMin: ranged(minutes("Reduction of the time to the target.")).optional().meta({
			description:
				"Reduction of the time to the target, over the plants that reach it both with the improvement and without. Absent where none does.",
		}),
		endTemperatureK: ranged(
			kelvinDifference("Increase of the tank's mean temperature at the end of the run."),
		),
		usableLitresAt40C: ranged(litres("Increase of the volume available at the tap, mixed to 40 °C.")),
		toWaterKwh: ranged(kilowattHours("Increase of the heat delivered to the water.")),
		reached: z
			.strictObject({
				both: share("both with the improvement and without it"),
				onlyWith: share("only with the improvement"),
				onlyWithout: share("only without the improvement"),
				neither: share("neither with the improvement nor without it"),
			})
			.optional()
			.meta({
				description:
					"Shares of plants that reach the target with and without the improvement. Absent where all plants agree with `reaches`.",
			}),
		renewed: z.enum(SPREAD_NAMES).optional().meta({
			description:
				"The input whose part the improvement replaces, so that the new part's error is independent of the old one's. All other errors are the same with the improvement and without.",
		}),
	})
	.openapi("GainRange", {
		description:
			"Range of the gains that covers the share of plants stated in `range.coverage`. The plant and the improved plant are varied together over the inputs of `range`.",
	});

export const Ahead = z
	.strictObject({
		order: z.enum(["certain", "uncertain"]).meta({
			description:
				"Whether the order of the two improvements is certain. `uncertain`: in more than one plant in twenty, the next improvement gains as much or more.",
		}),
		share: ratio(
			"Share of plants in which this improvement gains more than the next, both computed for the same plants.",
		),
	})
	.openapi("AheadOfNext", {
		description: "Comparison of this improvement with the next in the list, by `rankedBy`.",
	});

type Ranged = Extract<CoreRange, { outcome: "ranged" }>;

export function wireGainRange({ ranges, reaches, renewed }: Ranged): z.input<typeof GainRange> {
	const named = (wanted: Ranged["ranges"][number]["name"]) => ranges.find(({ name }) => name === wanted)!;
	const time = named("timeToTarget");
	const sure = Object.values(reaches).includes(1);
	return {
		...(time.answered > 0 && { timeToTargetMin: wireAnswer(time, fromSi.minutes) }),
		endTemperatureK: wireAnswer(named("endTemperature"), (kelvin) => kelvin),
		usableLitresAt40C: wireAnswer(named("usableVolume"), fromSi.litres),
		toWaterKwh: wireAnswer(named("toWater"), fromSi.kilowattHours),
		...(!sure && { reached: { ...reaches } }),
		...(renewed !== undefined && { renewed: spreadName(renewed) }),
	};
}
