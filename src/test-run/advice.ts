import type { Cause } from "./as-built-plant.ts";
import { type BetterRun, betterReadings, extendedRuns, hottestOf } from "./better-runs.ts";
import type { Rows } from "./extended-run.ts";
import type { Factor } from "./factor.ts";
import type { Factors } from "./factors.ts";
import { leastErrors, type Noise } from "./lump-information.ts";
import type { TestRunReport } from "./report.ts";
import { type TestRun, waterTemperature } from "./run.ts";
import { suddenFalls } from "./sudden-falls.ts";

/** A factor with a wide interval, and its expected interval in a better run. */
export interface Expected {
	readonly of: keyof typeof DRIVERS;
	readonly now: number; // half-width of the 95 % interval, in the factor's unit
	readonly better: number;
}

/** A change of the run that gives narrower intervals, and how much narrower. */
export interface Advice {
	readonly change: BetterRun;
	readonly expected: readonly Expected[];
}

const DRIVERS = {
	effectiveAperture: "aperture",
	opticalFactor: "aperture",
	loss: "lossRunning",
	optics: "aperture",
	losses: "lossRunning",
} as const satisfies Partial<Record<keyof Factors | Cause, string>>;

const NARROW = 0.1; // half-width over value up to which no advice is needed; our choice
const WORTH = 0.8; // greatest remaining share of the half-width for advice; our choice

/** Expected narrowing, in better runs, of factors with half-widths above a tenth: each half-width is that of the
 *  run times the ratio of the lump's Cramér–Rao bounds, with the noise and drift of the run unchanged.
 *  @param mostRows  allowed in a run
 *  Assumes optics and losses of the complete plant narrow like those of the lump
 *  Error   15 % of the half-width against simulated runs of the complete plant, tests/unit/test-run/advice.test.ts */
export function runAdvice(
	run: TestRun,
	{ factors, gap }: Pick<TestRunReport, "factors" | "gap">,
	elevation: number,
	mostRows: number,
): readonly Advice[] {
	const { lump } = factors;
	if (!lump || isImpossible(factors.effectiveAperture) || isImpossible(factors.loss)) return [];
	const wide = wideFactors(factors, gap);
	if (wide.length === 0 || suddenFalls(run, factors.noise).length > 0) return []; // an interrupted run should be divided, not extended
	const now = { time: run.time, drivers: lump.drivers, end: waterTemperature(run, run.time.length - 1) };
	return [...extendedRuns(run, lump, hottestOf(run, elevation)), ...betterReadings(run, lump, now, mostRows)]
		.map(({ change, rows, share }) => ({
			change,
			expected: wide.flatMap((factor) => expectedOf(factor, now, rows, share)),
		}))
		.filter(({ expected }) => expected.some(({ now, better }) => better < WORTH * now));
}

interface Wide {
	readonly of: Expected["of"];
	readonly halfWidth: number;
	readonly noise: Noise;
}

function wideFactors({ lump, ...factors }: Factors, gap: TestRunReport["gap"]): readonly Wide[] {
	const { noise, disturbance } = lump!.fit;
	const own = { reading: noise, straying: disturbance };
	const found = (["effectiveAperture", "opticalFactor", "loss"] as const).map(
		(of) => [of, factors[of], own] as const,
	);
	const compared = (gap?.shares ?? []).flatMap(({ cause, ratio }) =>
		cause === "tankLoss" || !gap?.noise ? [] : [[cause, ratio, gap.noise] as const],
	);
	return [...found, ...compared].flatMap(([of, factor, noise]) => {
		const halfWidth = wideHalf(factor);
		return halfWidth === undefined ? [] : [{ of, halfWidth, noise }];
	});
}

const isImpossible = (factor: Factor) => factor.outcome === "undetermined" && factor.reason === "unphysical";

/** Half-width of a factor's interval where it is wide and the factor is physically possible. */
function wideHalf(factor: Factor): number | undefined {
	if (isImpossible(factor)) return undefined;
	const interval = factor.outcome === "determined" ? factor : factor.interval;
	if (!interval) return undefined;
	const halfWidth = (interval.high - interval.low) / 2;
	return halfWidth > (NARROW * Math.abs(interval.high + interval.low)) / 2 ? halfWidth : undefined;
}

function expectedOf({ of, halfWidth, noise }: Wide, now: Rows, better: Rows, share: number): Expected[] {
	const finer = { ...noise, reading: noise.reading * share };
	const before = leastErrors(now.time, now.drivers, noise)?.[DRIVERS[of]];
	const after = leastErrors(better.time, better.drivers, finer)?.[DRIVERS[of]];
	if (before === undefined || after === undefined) return [];
	return [{ of, now: halfWidth, better: (halfWidth * after) / before }];
}
