import { studentQuantile } from "../numeric/student.ts";
import { storeOf } from "./heat-content.ts";
import { INTERVAL, type Interval, NORMAL_95 } from "./intervals.ts";
import { readingUncertainty, type TestRun, waterTemperature } from "./run.ts";

const HEAT_CAPACITY = 4186; // [J/kgK] of water, ASAE S580
const STANDARD_BEAM = 700; // [W/m²] ASAE S580
const SINGLE_FIGURE = 50; // [K] of water above air, ASAE S580
const LEAST_BEAM = 450; // [W/m²] least beam of a counted interval, ASAE S580 (value from memory)

/** Power from the temperature rise of an interval, of the water alone: P = M·4186·ΔT/Δt [W].
 *  Source  ASAE S580 (equations from a copy of the X580 draft)
 *  Check   7 kg, 8 K in 600 s → 390.7 W   tests/reference/test-run.reference.ts */
export function intervalPower(waterMass: number, rise: number, length: number): number {
	return (waterMass * HEAT_CAPACITY * rise) / length;
}

/** The same at 700 W/m²: Ps = P·700/I [W].
 *  Check   390.7 W at 900 W/m² → 303.9 W   tests/reference/test-run.reference.ts */
export function standardisedPower(power: number, irradiance: number): number {
	return (power * STANDARD_BEAM) / irradiance;
}

/** Standardised power as a linear function of the excess of water above air, or the reason why there is none. */
export type StandardLine =
	| { readonly outcome: "undetermined"; readonly reason: "notMeasured" | "tooFewIntervals" | "noSpread" }
	| {
			readonly outcome: "determined" | "intervalTooWide";
			readonly intercept: number; // at zero excess [W]
			readonly slope: number; // [W/K]
			readonly determination: number; // r², 0–1
			readonly singleFigure: number; // at an excess of 50 K [W]
			readonly fromResolution: number; // half-width of its 95 % interval from the resolution of the thermometers alone [W]
			readonly fromScatter: number; // the same from the scatter of the points about the line [W]
			readonly counted: number; // intervals
			readonly leftOut: number; // intervals with too little beam
			readonly within: boolean; // whether 50 K is within the range of the points
			readonly asInStandard: boolean; // whether lengths and number of intervals, beam, air, water and r² conform to S580
	  };

interface Point {
	readonly interval: Interval;
	readonly excess: number; // [K]
	readonly power: number; // standardised [W]
}

const LEAST_POINTS = 5; // for a line with degrees of freedom
const LEAST_SPREAD = 1; // [K] between the first and last excess
const WIDEST = 0.5; // half-width over value, as for every factor

/** Regression of standardised power on the excess of water above air, and its value at 50 K.
 *  @param intervals  of the run, about ten minutes each
 *  Source  ASAE S580; least squares with interval: Draper & Smith, Applied Regression Analysis, ch. 1 (from memory) */
export function standardLine(run: TestRun, intervals: readonly Interval[]): StandardLine {
	if (run.beam === undefined || run.ambient === undefined)
		return { outcome: "undetermined", reason: "notMeasured" };
	const points = intervals.filter(({ beam }) => beam >= LEAST_BEAM).map((interval) => pointOf(run, interval));
	if (points.length < LEAST_POINTS) return { outcome: "undetermined", reason: "tooFewIntervals" };
	const excesses = points.map(({ excess }) => excess);
	const [least, most] = [Math.min(...excesses), Math.max(...excesses)];
	if (most - least < LEAST_SPREAD) return { outcome: "undetermined", reason: "noSpread" };
	const line = regression(points);
	const fromResolution = NORMAL_95 * readingUncertainty(run) * sensitivity(run, points, line);
	const fromScatter = studentQuantile(points.length - 2) * line.standardError;
	const wide = Math.max(fromResolution, fromScatter) > WIDEST * Math.abs(line.singleFigure);
	return {
		outcome: wide ? "intervalTooWide" : "determined",
		intercept: line.intercept,
		slope: line.slope,
		determination: line.determination,
		singleFigure: line.singleFigure,
		fromResolution,
		fromScatter,
		counted: points.length,
		leftOut: intervals.length - points.length,
		within: least <= SINGLE_FIGURE && most >= SINGLE_FIGURE,
		asInStandard: asInStandard(points, line.determination),
	};
}

function pointOf(run: TestRun, interval: Interval): Point {
	const rise = waterTemperature(run, interval.to) - waterTemperature(run, interval.from);
	const power = intervalPower(storeOf(run).waterMass, rise, interval.length);
	return {
		interval,
		excess: interval.water - interval.ambient,
		power: standardisedPower(power, interval.beam),
	};
}

interface Line {
	readonly intercept: number;
	readonly slope: number;
	readonly determination: number;
	readonly singleFigure: number;
	readonly standardError: number; // of the single figure
	readonly weights: readonly number[]; // of each point in the single figure
}

function regression(points: readonly Point[]): Line {
	const n = points.length;
	const mean = (of: (point: Point) => number) => points.reduce((sum, point) => sum + of(point), 0) / n;
	const [x, y] = [mean(({ excess }) => excess), mean(({ power }) => power)];
	const sxx = n * mean(({ excess }) => (excess - x) ** 2);
	const syy = n * mean(({ power }) => (power - y) ** 2);
	const slope = (n * mean((point) => (point.excess - x) * point.power)) / sxx;
	const residual = Math.max(0, syy - slope * slope * sxx);
	const distance = SINGLE_FIGURE - x;
	return {
		intercept: y - slope * x,
		slope,
		determination: syy > 0 ? 1 - residual / syy : 0,
		singleFigure: y + slope * distance,
		standardError: Math.sqrt((residual / (n - 2)) * (1 / n + (distance * distance) / sxx)),
		weights: points.map(({ excess }) => 1 / n + (distance * (excess - x)) / sxx),
	};
}

/** Root of the sum of squares of the derivatives of the single figure with respect to each reading [W/K]; neighbours share a reading. */
function sensitivity(run: TestRun, points: readonly Point[], { weights }: Line): number {
	const slopes = new Map<number, number>();
	const add = (row: number, slope: number) => slopes.set(row, (slopes.get(row) ?? 0) + slope);
	for (const [i, { interval }] of points.entries()) {
		const perKelvin = standardisedPower(
			intervalPower(storeOf(run).waterMass, 1, interval.length),
			interval.beam,
		);
		add(interval.to, weights[i]! * perKelvin);
		add(interval.from, -weights[i]! * perKelvin);
	}
	return Math.hypot(...slopes.values());
}

const STANDARD_POINTS = 30; // these bounds of S580 are from memory
const LEAST_DETERMINATION = 0.75;
const MOST_BEAM = 1100; // [W/m²]
const AIR = [293.15, 308.15] as const; // [K]
const WATER = [313.15, 363.15] as const; // [K]

function asInStandard(points: readonly Point[], determination: number): boolean {
	const inside = points.every(
		({ interval: { length, beam, ambient, water } }) =>
			Math.abs(length - INTERVAL) <= INTERVAL / 10 &&
			beam <= MOST_BEAM &&
			ambient >= AIR[0] &&
			ambient <= AIR[1] &&
			water >= WATER[0] &&
			water <= WATER[1],
	);
	return inside && points.length >= STANDARD_POINTS && determination > LEAST_DETERMINATION;
}
