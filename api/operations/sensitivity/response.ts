import { z } from "@hono/zod-openapi";
import { type Idle, IMPROVEMENTS } from "../../../src/index.ts";
import { Assumed } from "../../parts/assumed.ts";
import { Caution } from "../../parts/caution.ts";
import { Design } from "../../parts/design.ts";
import { Method } from "../../parts/method.ts";
import { Range } from "../../parts/range.ts";
import { Reason } from "../../parts/reason.ts";
import { celsius, kelvinDifference, kilowattHours, litres, minutes } from "../../wire/units.ts";
import { Ahead, GainRange } from "./gain-range.ts";
import { RankingAdvice } from "./ranking-advice.ts";
import { refusal } from "./refusal.ts";
import { RANKINGS } from "./request.ts";

const IDLE = [
	"alreadySo",
	"measuredWhole",
	"notOnThisReceiver",
	"noRoom",
	"noSun",
] as const satisfies readonly Idle[];

const id = z.enum(IMPROVEMENTS as unknown as readonly ["aperture", ...(typeof IMPROVEMENTS)[number][]]);

const Day = z
	.strictObject({
		outcome: z.enum(["reached", "notReached"]).meta({ description: "Whether the water reached the target." }),
		timeToTargetMin: minutes("From the start to the target. Absent when not reached.").optional(),
		endTemperatureC: celsius("Mean of the tank at the end."),
		usableLitresAt40C: litres("What the tank gives at the tap at the end, mixed with mains to 40 °C."),
		toWaterKwh: kilowattHours("Heat to the water."),
		turnedAwayTimeMin: minutes(
			"That a limit turned the dish away. A day with any is near its most: improvements show in its minutes to the target.",
		),
	})
	.openapi("DayInBrief", { description: "What a day comes to." });

const Gains = z
	.strictObject({
		timeToTargetMin: minutes("Sooner at the target. Absent where either day does not reach it.").optional(),
		endTemperatureK: kelvinDifference("Hotter at the end, in the tank's mean."),
		usableLitresAt40C: litres("More at the tap."),
		toWaterKwh: kilowattHours("More heat to the water."),
	})
	.openapi("Gains", { description: "Better is positive; what makes it worse is negative." });

const per = (what: string) =>
	z
		.number()
		.meta({ description: `Of a ${what} gained. Absent where none is.` })
		.optional();

const Cost = z
	.strictObject({
		price: z.number().meta({ description: "As given." }),
		perLitre: per("usable litre a day"),
		perMinute: per("minute"),
		perKelvin: per("kelvin"),
		perKwh: per("kilowatt-hour a day"),
	})
	.openapi("CostPerGain", { description: "In the currency of `prices`. Absent where no price was given." });

const Changes = z.array(
	z.strictObject({
		pointer: z.string().meta({ description: "JSON pointer into the request." }),
		from: z.union([z.number(), z.string()]).optional().meta({ description: "Absent where there was none." }),
		to: z.union([z.number(), z.string()]),
	}),
);

export const Improvement = z
	.strictObject({
		id: id.meta({ description: "Which improvement." }),
		message: z.string().meta({ description: "What is done, in English." }),
		how: z.enum(["made", "kept"]).meta({
			description:
				"`made`: the plant is changed so. `kept`: it is so already, `changes` is what neglect would do, and the gain is what is then not lost.",
		}),
		changes: Changes.meta({ description: "The step, field by field." }),
		day: Day,
		gains: Gains,
		range: GainRange.optional(),
		rangeRefused: z.strictObject(refusal).optional().meta({
			description:
				"Why its gains have no range though one was asked for: some plant within the spreads is beyond the models.",
		}),
		aheadOfNext: Ahead.optional(),
		reaches: z.enum(["both", "onlyWith", "onlyWithout", "neither"]).meta({
			description: "Whether the target is reached with the improvement, without it, both or neither.",
		}),
		ranks: z
			.strictObject({ litres: z.number().int(), minutes: z.number().int() })
			.meta({ description: "Its place by usable litres and by minutes to the target, 1 the most." }),
		cost: Cost.optional(),
		newCautions: z
			.array(Caution)
			.meta({ description: "What to be careful of that the plant as it stands does not ask for." }),
	})
	.openapi("Improvement");

export const SensitivityResponse = z
	.strictObject({
		timeZone: z.string().meta({ description: "Zone of the local times." }),
		startTime: z.string().openapi({ description: "When the run starts.", format: "date-time" }),
		endTime: z.string().openapi({ description: "When it ends.", format: "date-time" }),
		base: Day,
		reason: Reason.optional(),
		rankedBy: z.enum(RANKINGS).meta({ description: "What orders `improvements`." }),
		advice: RankingAdvice.optional(),
		improvements: z.array(Improvement).meta({
			description:
				"Each alone and by one step, the most worth first. Small steps add up, large ones overlap.",
		}),
		notApplicable: z
			.array(
				z.strictObject({
					id: id.meta({ description: "Which improvement." }),
					code: z.enum(IDLE).meta({ description: "Why not." }),
					message: z.string().meta({ description: "The same in English." }),
				}),
			)
			.meta({ description: "What cannot be made on this plant, and why." }),
		refused: z
			.array(
				z.strictObject({
					id: id.meta({ description: "Which improvement." }),
					changes: Changes.optional().meta({
						description: "The step that was tried, field by field. Absent where it could not even be made.",
					}),
					...refusal,
				}),
			)
			.meta({ description: "What could be made, but the models do not answer for the plant with it." }),
		currency: z.string().optional().meta({ description: "Of every cost. Absent without prices." }),
		days: z.number().int().meta({ description: "How many days were worked out, those of ranges included." }),
		range: Range.optional(),
		design: Design,
		cautions: z.array(Caution).meta({ description: "Of the plant as it stands, the most serious first." }),
		assumed: z
			.array(Assumed)
			.meta({ description: "Every value that the request left out, and why this one." }),
		methods: z.array(Method).meta({ description: "What the numbers rest on." }),
	})
	.openapi("SensitivityResponse");

export type SensitivityResponse = z.output<typeof SensitivityResponse>;
