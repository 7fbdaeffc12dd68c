import { z } from "@hono/zod-openapi";
import type { Factor as CoreFactor, Need as CoreNeed } from "../../../src/index.ts";

const NEEDS = [
	"beam",
	"ambient",
	"dish",
	"site",
	"oilInAndOut",
	"rowsAtRest",
	"rowsRunning",
	"moreRows",
	"longerRun",
] as const;

export const Need = z.enum(NEEDS).meta({ description: "What the run lacks. See `unlocks`." });

export type Need = (typeof NEEDS)[number];

/** A number of a factor, in the unit that the factor's name ends with. */
const bound = (description: string) => z.number().meta({ description });

const Determined = z
	.strictObject({
		outcome: z.literal("determined").meta({ description: "The run determines the factor." }),
		value: bound("Best estimate of the factor."),
		low: bound("Lower end of the factor's 95 % interval."),
		high: bound("Upper end of the factor's 95 % interval."),
	})
	.openapi("DeterminedFactor");

const Undetermined = z
	.strictObject({
		outcome: z.literal("undetermined").meta({ description: "The run does not determine the factor." }),
		reason: z.enum(["notMeasured", "tooFewRows", "collinear", "intervalTooWide", "unphysical"]).meta({
			description:
				"Why the factor is undetermined. `notMeasured`: a column or kind of row is missing. `tooFewRows`: fewer than four rows more than factors. `collinear`: another factor explains the rows equally well. `intervalTooWide`: half of the 95 % interval is more than half the value. `unphysical`: the complete interval is physically impossible.",
		}),
		needs: z.array(Need).meta({ description: "What the run lacks to determine the factor." }),
		low: bound("Lower end of the factor's 95 % interval. Absent where there is none.").optional(),
		high: bound("Upper end of the factor's 95 % interval. Absent where there is none.").optional(),
	})
	.openapi("UndeterminedFactor");

export const Factor = z.union([Determined, Undetermined]).openapi("Factor", {
	description:
		"A factor fitted by least squares, in the unit at the end of its name, with its 95 % interval; or the reason why the run does not determine it. It is determined when half the interval is at most half the value.",
});

export type Factor = z.input<typeof Factor>;

const WIRE_NEEDS: Readonly<Record<CoreNeed, Need>> = {
	beam: "beam",
	ambient: "ambient",
	aperture: "dish",
	oilInAndOut: "oilInAndOut",
	rowsAtRest: "rowsAtRest",
	rowsRunning: "rowsRunning",
	moreRows: "moreRows",
	longerRun: "longerRun",
};

/** @param scale  converts from the core's unit to the wire's */
export function wireFactor(factor: CoreFactor, scale: (value: number) => number = (value) => value): Factor {
	if (factor.outcome === "determined") {
		const { value, low, high } = factor;
		return { outcome: "determined", value: scale(value), low: scale(low), high: scale(high) };
	}
	const { interval } = factor;
	return {
		outcome: "undetermined",
		reason: factor.reason,
		needs: factor.needs.map((need) => WIRE_NEEDS[need]),
		...(interval && { low: scale(interval.low), high: scale(interval.high) }),
	};
}
