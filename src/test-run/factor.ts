import type { Estimate } from "./trajectory-fit.ts";

/** What a run would need for a factor to be told from the others. */
export type Need =
	| "beam"
	| "ambient"
	| "aperture"
	| "oilInAndOut"
	| "rowsAtRest" // at night, or with the pump off
	| "rowsRunning"
	| "moreRows"
	| "longerRun"; // or one in which sun and water change more

/** A factor with its 95 % interval, or why the run can't tell it. */
export type Factor =
	| { readonly outcome: "determined"; readonly value: number; readonly low: number; readonly high: number }
	| {
			readonly outcome: "undetermined";
			readonly reason: "notMeasured" | "tooFewRows" | "collinear" | "intervalTooWide" | "unphysical";
			readonly needs: readonly Need[];
			readonly interval: { readonly low: number; readonly high: number } | undefined; // that the run leaves open
	  };

const WIDEST = 0.5; // half-width of a 95 % interval over its value beyond which a factor is undetermined; our choice

/** A factor that the run lacks something for. */
export function unknown(
	reason: "notMeasured" | "tooFewRows" | "collinear",
	needs: readonly Need[],
): Factor & { outcome: "undetermined" } {
	return { outcome: "undetermined", reason, needs, interval: undefined };
}

/** The rule: a factor is determined when the half-width of its 95 % interval is at most half its value, and the interval
 *  reaches into what is physically possible. Else it is undetermined, and the interval says what the run leaves open.
 *  @param possible     lowest and highest value that physics allows
 *  @param correlation  of its error with that of the factor it is most easily taken for, 0–1
 *  @param needs        what would tell more */
export function judged(
	{ value, halfWidth }: Estimate,
	possible: readonly [low: number, high: number],
	correlation: number,
	needs: readonly Need[],
): Factor {
	const interval = { low: value - halfWidth, high: value + halfWidth };
	if (interval.high < possible[0] || interval.low > possible[1])
		return { outcome: "undetermined", reason: "unphysical", needs: [], interval };
	if (halfWidth <= WIDEST * Math.abs(value)) return { outcome: "determined", value, ...interval };
	const reason = correlation > ENTANGLED ? "collinear" : "intervalTooWide";
	return { outcome: "undetermined", reason, needs, interval };
}

const ENTANGLED = 0.95; // correlation beyond which a wide interval is laid to the factors' likeness; our choice
