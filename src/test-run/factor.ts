import type { Estimate } from "./trajectory-fit.ts";

/** What a run needs to distinguish a factor from the others. */
export type Need =
	| "beam"
	| "ambient"
	| "aperture"
	| "oilInAndOut"
	| "rowsAtRest" // at night, or with the pump off
	| "rowsRunning"
	| "moreRows"
	| "longerRun"; // or a run in which sun and water change more

/** A factor with its 95 % interval, or the reason why the run does not determine it. */
export type Factor =
	| { readonly outcome: "determined"; readonly value: number; readonly low: number; readonly high: number }
	| {
			readonly outcome: "undetermined";
			readonly reason: "notMeasured" | "tooFewRows" | "collinear" | "intervalTooWide" | "unphysical";
			readonly needs: readonly Need[];
			readonly interval: { readonly low: number; readonly high: number } | undefined; // values compatible with the run
	  };

const WIDEST = 0.5; // half-width of the 95 % interval over value above which a factor is undetermined; our choice

/** A factor for which the run lacks data. */
export function undeterminedFactor(
	reason: "notMeasured" | "tooFewRows" | "collinear",
	needs: readonly Need[],
): Factor & { outcome: "undetermined" } {
	return { outcome: "undetermined", reason, needs, interval: undefined };
}

/** Rule: a factor is determined when the half-width of its 95 % interval is at most half its value, and the interval
 *  includes physically possible values. Else it is undetermined, and the interval contains the values compatible with the run.
 *  @param possible     lowest and highest physically possible value
 *  @param correlation  greatest correlation of its error with that of another factor, 0–1
 *  @param needs        what would narrow the interval */
export function factorOf(
	{ value, halfWidth }: Estimate,
	possible: readonly [low: number, high: number],
	correlation: number,
	needs: readonly Need[],
): Factor {
	const interval = { low: value - halfWidth, high: value + halfWidth };
	if (interval.high < possible[0] || interval.low > possible[1])
		return { outcome: "undetermined", reason: "unphysical", needs: [], interval };
	if (halfWidth <= WIDEST * Math.abs(value)) return { outcome: "determined", value, ...interval };
	const reason = correlation > COLLINEAR ? "collinear" : "intervalTooWide";
	return { outcome: "undetermined", reason, needs, interval };
}

const COLLINEAR = 0.95; // correlation above which a wide interval is attributed to collinear factors; our choice
