import type { Cause } from "./as-built-plant.ts";
import { type BetterRun, betterRead, goingOn, hottestOf } from "./better-runs.ts";
import type { Rows } from "./extended-run.ts";
import type { Factor } from "./factor.ts";
import type { Factors } from "./factors.ts";
import { leastErrors, type Noise } from "./lump-information.ts";
import type { TestRunReport } from "./report.ts";
import { type TestRun, waterTemperature } from "./run.ts";
import { drawnFrom } from "./sudden-falls.ts";

/** A factor that a run tells too widely, and how widely a better run would. */
export interface Expected {
	readonly of: keyof typeof DRIVERS;
	readonly now: number; // half-width of the 95 % interval, in the factor's unit
	readonly better: number;
}

/** One way to a run that tells more, and how much more. */
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

const NARROW = 0.1; // half-width over value up to which nothing need be advised; our choice
const WORTH = 0.8; // of the half-width that an advice leaves at most; our choice

/** How the factors that a run tells to no better than a tenth would narrow in a better run: each half-width is that of the
 *  run times the ratio of the lump's Cramér–Rao bounds, the run's own noise and straying going on as they are.
 *  @param mostRows  that a run may have
 *  Assumes the whole plant's optics and losses narrow as the lump's do
 *  Error   15 % of the half-width against runs of the whole plant's simulation, tests/unit/test-run/advice.test.ts */
export function runAdvice(
	run: TestRun,
	{ factors, gap }: Pick<TestRunReport, "factors" | "gap">,
	elevation: number,
	mostRows: number,
): readonly Advice[] {
	const { lump } = factors;
	if (!lump || isImpossible(factors.effectiveAperture) || isImpossible(factors.loss)) return [];
	const wide = wideFactors(factors, gap);
	if (wide.length === 0 || drawnFrom(run, factors.noise).length > 0) return []; // a run that was broken into is to be cut, not drawn out
	const now = { time: run.time, drivers: lump.drivers, end: waterTemperature(run, run.time.length - 1) };
	return [...goingOn(run, lump, hottestOf(run, elevation)), ...betterRead(run, lump, now, mostRows)]
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

/** Half of a factor's interval where it is wide, and the factor not impossible. */
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
