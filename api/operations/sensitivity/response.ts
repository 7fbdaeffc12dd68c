import { z } from "@hono/zod-openapi";
import { type Idle, IMPROVEMENTS } from "../../../src/index.ts";
import { backing } from "../../parts/backing.ts";
import { Caution } from "../../parts/caution.ts";
import { Design } from "../../parts/design.ts";
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
		outcome: z
			.enum(["reached", "notReached"])
			.meta({ description: "Whether the water reached the target temperature." }),
		timeToTargetMin: minutes(
			"Time from the start of the run until the water reaches the target. Absent when it does not.",
		).optional(),
		endTemperatureC: celsius("Mean temperature of the tank at the end of the run."),
		usableLitresAt40C: litres(
			"Volume available at the tap at the end of the run, mixed with mains water to 40 °C.",
		),
		toWaterKwh: kilowattHours("Heat delivered to the water."),
		turnedAwayTimeMin: minutes(
			"Time during which a temperature limit kept the dish turned away from the sun. Above 0, the tank is nearly full, and improvements show in the minutes to the target.",
		),
	})
	.openapi("DayInBrief", { description: "Summary of one day." });

const Gains = z
	.strictObject({
		timeToTargetMin: minutes(
			"Reduction of the time to the target. Absent where the target is not reached both with the improvement and without.",
		).optional(),
		endTemperatureK: kelvinDifference("Increase of the tank's mean temperature at the end of the run."),
		usableLitresAt40C: litres("Increase of the volume available at the tap, mixed to 40 °C."),
		toWaterKwh: kilowattHours("Increase of the heat delivered to the water."),
	})
	.openapi("Gains", {
		description: "Gains of an improvement. Positive values are better, negative ones worse.",
	});

const per = (what: string) =>
	z
		.number()
		.meta({ description: `Price per ${what} gained. Absent where none is gained.` })
		.optional();

const rank = (by: string) =>
	z
		.number()
		.int()
		.meta({ description: `Rank of the improvement by ${by}.` });

const Cost = z
	.strictObject({
		price: z.number().meta({ description: "Price of the improvement, as sent in `prices`." }),
		perLitre: per("usable litre a day"),
		perMinute: per("minute"),
		perKelvin: per("kelvin"),
		perKwh: per("kilowatt-hour a day"),
	})
	.openapi("CostPerGain", {
		description:
			"Price of an improvement and its price per unit gained, in the currency of `prices`. Absent where no price was sent.",
	});

const Changes = z.array(
	z.strictObject({
		pointer: z.string().meta({ description: "JSON pointer to the changed field of the request." }),
		from: z.union([z.number(), z.string()]).optional().meta({
			description: "Value of the field before the change. Absent where the plant has no such part.",
		}),
		to: z.union([z.number(), z.string()]).meta({ description: "Value of the field after the change." }),
	}),
);

export const Improvement = z
	.strictObject({
		id: id.meta({ description: "Identifier of the improvement." }),
		message: z.string().meta({ description: "The improvement as an English sentence." }),
		how: z.enum(["made", "kept"]).meta({
			description:
				"`made`: the improvement changes the plant. `kept`: the plant already has it, `changes` shows the effect of neglect, and the gain is the loss avoided.",
		}),
		changes: Changes.meta({ description: "Request fields that the improvement changes." }),
		day: Day,
		gains: Gains,
		range: GainRange.optional(),
		rangeRefused: z.strictObject(refusal).optional().meta({
			description:
				"Why the gains of this improvement have no range although `withRange` was sent: some plant within the spreads is outside the models.",
		}),
		aheadOfNext: Ahead.optional(),
		reaches: z.enum(["both", "onlyWith", "onlyWithout", "neither"]).meta({
			description: "Whether the target is reached with the improvement, without it, both or neither.",
		}),
		ranks: z.strictObject({ litres: rank("usable litres"), minutes: rank("minutes to the target") }).meta({
			description:
				"Rank of the improvement by usable litres and by minutes to the target; 1 is the largest gain.",
		}),
		cost: Cost.optional(),
		newCautions: z
			.array(Caution)
			.meta({ description: "Cautions that the improvement adds to those of the plant as stated." }),
	})
	.openapi("Improvement");

export const SensitivityResponse = z
	.strictObject({
		timeZone: z.string().meta({ description: "IANA time zone of the local times in this response." }),
		startTime: z
			.string()
			.openapi({ description: "Local time at which the run starts.", format: "date-time" }),
		endTime: z.string().openapi({ description: "Local time at which the run ends.", format: "date-time" }),
		base: Day,
		reason: Reason.optional(),
		rankedBy: z.enum(RANKINGS).meta({ description: "Quantity by which `improvements` are ranked." }),
		advice: RankingAdvice.optional(),
		improvements: z.array(Improvement).meta({
			description:
				"Improvements, each applied alone and by one step, the largest gain first. Gains of small steps add up; those of large steps overlap.",
		}),
		notApplicable: z
			.array(
				z.strictObject({
					id: id.meta({ description: "Identifier of the improvement." }),
					code: z.enum(IDLE).meta({ description: "Why the improvement does not apply." }),
					message: z.string().meta({ description: "The reason as an English sentence." }),
				}),
			)
			.meta({ description: "Improvements that do not apply to this plant, each with the reason." }),
		refused: z
			.array(
				z.strictObject({
					id: id.meta({ description: "Identifier of the improvement." }),
					changes: Changes.optional().meta({
						description:
							"Request fields that the improvement would change. Absent where the change itself could not be made.",
					}),
					...refusal,
				}),
			)
			.meta({ description: "Improvements that lead to a plant outside the models, each with the reason." }),
		currency: z
			.string()
			.optional()
			.meta({ description: "Currency of all prices in this response. Absent where no prices were sent." }),
		days: z.number().int().meta({ description: "Number of days simulated, including those for ranges." }),
		range: Range.optional(),
		design: Design,
		...backing,
		cautions: z
			.array(Caution)
			.meta({ description: "Cautions to observe for the plant as stated, the most serious first." }),
	})
	.openapi("SensitivityResponse");

export type SensitivityResponse = z.output<typeof SensitivityResponse>;
