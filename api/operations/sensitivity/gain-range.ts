import { z } from "@hono/zod-openapi";
import type { GainRange as CoreRange } from "../../../src/index.ts";
import { ranged, wireAnswer } from "../../parts/range.ts";
import { SPREAD_NAMES, spreadName } from "../../parts/spread.ts";
import { fromSi, kelvinDifference, kilowattHours, litres, minutes, ratio } from "../../wire/units.ts";

const share = (what: string) => ratio(`Share of plants that reach the target ${what}.`);

export const GainRange = z
	.strictObject({
		timeToTargetMin: ranged(minutes("Sooner at the target.")).optional().meta({
			description: "Of the plants that reach the target at all. Absent where none does it both ways.",
		}),
		endTemperatureK: ranged(kelvinDifference("Hotter at the end, in the tank's mean.")),
		usableLitresAt40C: ranged(litres("More at the tap.")),
		toWaterKwh: ranged(kilowattHours("More heat to the water.")),
		reached: z
			.strictObject({
				both: share("with the improvement and without"),
				onlyWith: share("only with it"),
				onlyWithout: share("only without it"),
				neither: share("neither way"),
			})
			.optional()
			.meta({ description: "Absent where all plants are as `reaches` says." }),
		renewed: z.enum(SPREAD_NAMES).optional().meta({
			description:
				"The input that the improvement puts a new one in the place of: the new one errs apart from the old. All others err alike with the improvement and without.",
		}),
	})
	.openapi("GainRange", {
		description:
			"Between what the gains lie, in the share of plants that `range.coverage` names. Plant and improved plant are varied together over the inputs of `range`.",
	});

export const Ahead = z
	.strictObject({
		order: z.enum(["certain", "uncertain"]).meta({
			description:
				"Whether the two places are certain: `uncertain` where the next is worth as much or more in over one plant in twenty.",
		}),
		share: ratio("Share of plants in which it is worth more, both improvements in the same plants."),
	})
	.openapi("AheadOfNext", {
		description: "Whether it is worth more than the next in the list, by `rankedBy`.",
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
