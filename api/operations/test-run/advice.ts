import { z } from "@hono/zod-openapi";
import type { Advice } from "../../../src/index.ts";
import { celsius, fromSi, kelvinDifference, minutes } from "../../wire/units.ts";

/** Path of each factor in the response. */
const PLACES = {
	effectiveAperture: "factors.effectiveApertureM2",
	opticalFactor: "factors.opticalFactor",
	loss: "factors.lossWPerK",
	optics: "comparison.causes.optics",
	losses: "comparison.causes.losses",
} as const satisfies Record<Advice["expected"][number]["of"], string>;

const Expected = z
	.strictObject({
		factor: z.enum(Object.values(PLACES)).meta({ description: "Path of the factor in this response." }),
		halfWidth: z
			.number()
			.meta({ description: "Half-width of the factor's 95 % interval in the better run." }),
		halfWidthNow: z.number().meta({ description: "Half-width of the factor's 95 % interval in this run." }),
	})
	.openapi("ExpectedHalfWidth", {
		description:
			"Precision of one factor, in this run and in the better one. Half-widths are in the unit at the end of the factor's name; those of a ratio have no unit.",
	});

export const RunAdvice = z
	.strictObject({
		code: z.enum(["longerRun", "hotterTank", "closerRows", "finerThermometer"]).meta({
			description:
				"Code of the advice. `longerRun`: three more hours in sun like that of the last hour, or until the water is hot. `hotterTank`: the same until the water is at 90 °C or 10 K below boiling. `closerRows`: more rows in the same time. `finerThermometer`: a thermometer with less noise.",
		}),
		addedMin: minutes("Time to add to the run. Only with `longerRun` and `hotterTank`.").optional(),
		endTemperatureC: celsius(
			"Temperature of the water at the end of the better run. Only with `longerRun` and `hotterTank`.",
		).optional(),
		intervalMin: minutes("Time between rows in the better run. Only with `closerRows`.").optional(),
		readingNoiseK: kelvinDifference(
			"Standard deviation of a reading in the better run, to compare with `readingNoiseK` of this run. Only with `finerThermometer`.",
		).optional(),
		expected: z
			.array(Expected)
			.meta({ description: "Precision of each factor that the better run improves." }),
		message: z.string().meta({ description: "The advice as an English sentence." }),
	})
	.openapi("RunAdvice", {
		description:
			"A better run, with its precision for each factor that this run determines to no better than a tenth. The half-widths are lower bounds for any fit; errors that persist through the run are assumed to stay the same.",
	});

type Wire = z.input<typeof RunAdvice>;

/** Advice in wire units, with its English sentence. */
export function wireAdvice({ change, expected }: Advice): Wire {
	return {
		...changeFields(change),
		expected: expected.map(({ of, now, better }) => ({
			factor: PLACES[of],
			halfWidth: better,
			halfWidthNow: now,
		})),
	};
}

function changeFields(change: Advice["change"]): Omit<Wire, "expected"> {
	switch (change.kind) {
		case "longerRun":
		case "hotterTank": {
			const [addedMin, endTemperatureC] = [fromSi.minutes(change.added), fromSi.celsius(change.end)];
			const message = `Run ${addedMin.toFixed(0)} min longer in sun like that of the last hour, until the water is at about ${endTemperatureC.toFixed(0)} °C.`;
			return { code: change.kind, addedMin, endTemperatureC, message };
		}
		case "closerRows":
			return {
				code: change.kind,
				intervalMin: fromSi.minutes(change.spacing),
				message: `Record a row every ${change.spacing} s, provided that the errors of successive readings are independent.`,
			};
		case "finerThermometer":
			return {
				code: change.kind,
				readingNoiseK: change.noise,
				message: `Use a thermometer whose readings scatter by ${change.noise} K.`,
			};
		default:
			return change satisfies never;
	}
}
