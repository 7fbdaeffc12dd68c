import type { Plant } from "../plant/plant.ts";
import { AS_DRAWN, type Cause } from "./as-built-plant.ts";
import { delivered } from "./delivered.ts";
import { type Factor, factorOf, type Need, undeterminedFactor } from "./factor.ts";
import { type FitNoise, type GapFit, gapFit, predictedHeat } from "./gap-fit.ts";
import { heatContents } from "./heat-content.ts";
import { NORMAL_95 } from "./intervals.ts";
import type { RunSky } from "./predicted-run.ts";
import { type TestRun, waterTemperature } from "./run.ts";
import { runningSpans } from "./running.ts";
import type { Estimate } from "./trajectory-fit.ts";

/** Effect of one cause on the difference between a run and its prediction. */
export interface Share {
	readonly cause: Cause;
	readonly ratio: Factor; // of the plant as built to the plant as drawn
	readonly power: Estimate | undefined; // its effect alone on the mean power [W]; undefined without a fit
	readonly differs: boolean; // whether the interval of the ratio excludes 1
}

/** Difference between measurement and prediction, and its causes. */
export interface Gap {
	readonly power: Estimate; // measured minus predicted mean power [W]
	readonly temperature: number; // at the end, measured minus predicted [K]
	readonly verdict: "none" | "explained" | "undetermined";
	readonly causes: readonly Cause[]; // those that differ, the greatest effect first
	readonly shares: readonly Share[];
	readonly unexplained: number; // mean power that the causes, each alone, do not explain: interaction and other causes [W]
	readonly noise: FitNoise | undefined; // about the fit of the causes; undefined without one
}

/** Causes of the difference between a run and its prediction.
 *  Rule: a cause explains the difference when the 95 % interval of its ratio excludes 1. Otherwise there is no gap if the difference is within
 *  the noise of its two readings; else the gap is undetermined.
 *  @param predicted  predicted rows of the plant as drawn
 *  Check   plants with known changes, tests/unit/test-run/gap.test.ts */
export function explainedGap(plant: Plant, run: TestRun, predicted: TestRun, sky: RunSky): Gap {
	const running = runningSpans(run);
	const causes: Cause[] = [];
	if (running.includes(true)) causes.push("optics", "losses");
	if (running.includes(false)) causes.push("tankLoss");
	const drawn = heatContents(predicted);
	const fit = gapFit(plant, run, sky, causes, drawn);
	const needs: Need[] = running.includes(false) ? ["longerRun"] : ["longerRun", "rowsAtRest"];
	const kept = drawn[drawn.length - 1]!;
	const shares = causes.map((cause) =>
		fit.outcome === "fitted"
			? shareOf(plant, run, sky, kept, cause, fit, needs)
			: { cause, ratio: withoutFit(fit.outcome, needs), power: undefined, differs: false },
	);
	return withVerdict(run, predicted, shares, fit.outcome === "fitted" ? fit.noise : undefined);
}

/** @param kept  predicted heat in the water at the end for the plant as drawn [J] */
function shareOf(
	plant: Plant,
	run: TestRun,
	sky: RunSky,
	kept: number,
	cause: Cause,
	fit: GapFit,
	needs: readonly Need[],
): Share {
	const { duration } = delivered(run);
	const ratio = fit.intervals[cause]!;
	const carriesTank = cause === "losses" && fit.intervals.tankLoss === undefined;
	const alone = {
		...AS_DRAWN,
		[cause]: ratio.value,
		...(carriesTank && { tankLoss: ratio.value }),
	};
	const gained = predictedHeat(plant, alone, run, sky).at(-1)! - kept;
	return {
		cause,
		ratio: factorOf(ratio, [0, Number.POSITIVE_INFINITY], fit.correlations[cause]!, needs),
		power: {
			value: gained / duration,
			halfWidth: Math.abs(fit.slopes[cause]! * ratio.halfWidth) / duration,
		},
		differs: Math.abs(ratio.value - 1) > ratio.halfWidth,
	};
}

function withoutFit(outcome: "tooFewRows" | "collinear" | "outOfBounds", needs: readonly Need[]): Factor {
	switch (outcome) {
		case "tooFewRows":
			return undeterminedFactor("tooFewRows", ["moreRows"]);
		case "collinear":
			return undeterminedFactor("collinear", needs);
		case "outOfBounds":
			return { outcome: "undetermined", reason: "unphysical", needs: [], interval: undefined };
		default:
			return outcome satisfies never;
	}
}

function withVerdict(
	run: TestRun,
	predicted: TestRun,
	shares: readonly Share[],
	noise: FitNoise | undefined,
): Gap {
	const last = run.time.length - 1;
	const measured = delivered(run);
	const fromNoise = (NORMAL_95 * Math.SQRT2 * (noise?.reading ?? 0)) / measured.duration;
	const power = {
		value: measured.power.value - delivered(predicted).power.value,
		halfWidth: Math.max(measured.power.halfWidth, fromNoise),
	};
	const weight = ({ power }: Share) => Math.abs(power?.value ?? 0);
	const differing = shares.filter(({ differs }) => differs).toSorted((a, b) => weight(b) - weight(a));
	const isReal = Math.abs(power.value) > power.halfWidth;
	return {
		power,
		temperature: waterTemperature(run, last) - waterTemperature(predicted, last),
		verdict: differing.length > 0 ? "explained" : isReal ? "undetermined" : "none",
		causes: differing.map(({ cause }) => cause),
		shares,
		unexplained: shares.reduce((rest, share) => rest - (share.power?.value ?? 0), power.value),
		noise,
	};
}
