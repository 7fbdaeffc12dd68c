import { z } from "@hono/zod-openapi";
import type { Advice } from "../../../src/index.ts";
import { celsius, fromSi, kelvinDifference, minutes } from "../../wire/units.ts";

/** Where each factor stands in the answer. */
const PLACES = {
	effectiveAperture: "factors.effectiveApertureM2",
	opticalFactor: "factors.opticalFactor",
	loss: "factors.lossWPerK",
	optics: "comparison.causes.optics",
	losses: "comparison.causes.losses",
} as const satisfies Record<Advice["expected"][number]["of"], string>;

const Expected = z
	.strictObject({
		factor: z.enum(Object.values(PLACES)).meta({ description: "By its name in this answer." }),
		halfWidth: z.number().meta({ description: "Half of its 95 % interval in the better run." }),
		halfWidthNow: z.number().meta({ description: "The same in this one." }),
	})
	.openapi("ExpectedHalfWidth", {
		description: "Half-widths are in the unit at the end of the factor's name; of a ratio they have none.",
	});

export const RunAdvice = z
	.strictObject({
		code: z.enum(["longerRun", "hotterTank", "closerRows", "finerThermometer"]).meta({
			description:
				"`longerRun`: three hours more in sun as in its last hour, or until the water is hot. `hotterTank`: on in such sun until the water is at 90 °C or 10 K below boiling. `closerRows`: more rows in the same time. `finerThermometer`: one that errs less.",
		}),
		addedMin: minutes("Of `longerRun` and `hotterTank`: how much longer.").optional(),
		endTemperatureC: celsius("Of `longerRun` and `hotterTank`: the water at its end.").optional(),
		intervalMin: minutes("Of `closerRows`: from row to row.").optional(),
		readingNoiseK: kelvinDifference(
			"Of `finerThermometer`: standard deviation of a reading, beside `readingNoiseK` of this run.",
		).optional(),
		expected: z.array(Expected),
		message: z.string().meta({ description: "The same in English." }),
	})
	.openapi("RunAdvice", {
		description:
			"A run that would tell more, and how closely it would tell each factor that this one tells to no better than a tenth. The half-widths are bounds that no fit can beat, with errors that stay in the run going on as they are.",
	});

type Wire = z.input<typeof RunAdvice>;

/** Advice in wire units, with its sentence. */
export function wireAdvice({ change, expected }: Advice): Wire {
	return {
		...changed(change),
		expected: expected.map(({ of, now, better }) => ({
			factor: PLACES[of],
			halfWidth: better,
			halfWidthNow: now,
		})),
	};
}

function changed(change: Advice["change"]): Omit<Wire, "expected"> {
	switch (change.kind) {
		case "longerRun":
		case "hotterTank": {
			const [addedMin, endTemperatureC] = [fromSi.minutes(change.added), fromSi.celsius(change.end)];
			const message = `Run ${addedMin.toFixed(0)} min longer in sun as in the last hour, until the water is at about ${endTemperatureC.toFixed(0)} °C.`;
			return { code: change.kind, addedMin, endTemperatureC, message };
		}
		case "closerRows":
			return {
				code: change.kind,
				intervalMin: fromSi.minutes(change.spacing),
				message: `Take a row every ${change.spacing} s, if the errors of the thermometer's readings are independent.`,
			};
		case "finerThermometer":
			return {
				code: change.kind,
				readingNoiseK: change.noise,
				message: `Take a thermometer whose readings scatter by ${change.noise} K.`,
			};
		default:
			return change satisfies never;
	}
}
