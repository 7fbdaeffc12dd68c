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

export const Need = z
	.enum(NEEDS)
	.meta({ description: "What the run would have to have besides. See `unlocks`." });

export type Need = (typeof NEEDS)[number];

/** Number fields of a factor, in the unit that its name ends with. */
const bound = (description: string) => z.number().meta({ description });

const Determined = z
	.strictObject({
		outcome: z.literal("determined"),
		value: bound("Best estimate."),
		low: bound("Lower end of its 95 % interval."),
		high: bound("Upper end of its 95 % interval."),
	})
	.openapi("DeterminedFactor");

const Undetermined = z
	.strictObject({
		outcome: z.literal("undetermined"),
		reason: z.enum(["notMeasured", "tooFewRows", "collinear", "intervalTooWide", "unphysical"]).meta({
			description:
				"`notMeasured`: a column or kind of row is missing. `tooFewRows`: fewer than four rows beyond the factors sought. `collinear`: another factor would explain the rows as well. `intervalTooWide`: half of the 95 % interval is more than half the value. `unphysical`: the whole interval lies where physics does not.",
		}),
		needs: z.array(Need),
		low: bound("Lower end of the 95 % interval that the run leaves open, where there is one.").optional(),
		high: bound("Upper end of it.").optional(),
	})
	.openapi("UndeterminedFactor");

export const Factor = z.union([Determined, Undetermined]).openapi("Factor", {
	description:
		"A factor found by least squares, in the unit at the end of its name, with its 95 % interval; or why the run cannot tell it. It is determined when half the interval is at most half the value.",
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

/** @param scale  from the core's unit to the wire's */
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
