import { z } from "@hono/zod-openapi";
import { IMPROVEMENTS, type ImprovementId, practice } from "../../../src/index.ts";
import { daySchema, rangeSchema, stepSchema } from "../../parts/day-request.ts";
import { assume, part } from "../../wire/defaults.ts";
import { Steps } from "./steps.ts";

export const RANKINGS = ["litres", "minutes", "temperature", "heat"] as const;
export type Ranking = (typeof RANKINGS)[number];

const price = z
	.number()
	.min(0)
	.max(1e9)
	.meta({ description: "Total price of this improvement, in `currency`." })
	.optional();

const Prices = z
	.strictObject({
		currency: z
			.string()
			.regex(/^[A-Z]{3}$/, "must be three capital letters, as in ISO 4217, such as MAD")
			.meta({ description: "Currency of the prices: three letters, as in ISO 4217.", examples: ["MAD"] }),
		...(Object.fromEntries(IMPROVEMENTS.map((id) => [id, price])) as Record<ImprovementId, typeof price>),
	})
	.openapi("ImprovementPrices", {
		description: "Total price of each improvement, for the step stated in `steps`.",
	});

export const SensitivityRequest = z
	.strictObject({
		...daySchema,
		steps: part(Steps),
		prices: Prices.optional(),
		rankedBy: assume(
			z.enum(RANKINGS).meta({
				description:
					"Quantity by which improvements are ranked: usable litres, minutes to the target, temperature at the end, or heat to the water.",
			}),
			"litres",
			practice("warm water is what the plant is for"),
		),
		...rangeSchema,
		withRange: assume(
			z.boolean().meta({
				description:
					"Whether to include uncertainty ranges for the result and every gain, and whether each place in the ranking is certain. The computation takes 12 to 30 times as long.",
			}),
			false,
			practice("the result for the plant as stated is computed fastest"),
		),
		stepS: stepSchema,
	})
	.openapi("SensitivityRequest");

export type SensitivityRequest = z.output<typeof SensitivityRequest>;
export type Prices = z.output<typeof Prices>;
