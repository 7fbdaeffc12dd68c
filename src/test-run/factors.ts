import type { Lump } from "./extended-run.ts";
import { type Factor, factorOf, type Need, undeterminedFactor } from "./factor.ts";
import { heatContents, heatNoise, storeHeatCapacity } from "./heat-content.ts";
import { type Driver, oilDrivers, sunDrivers } from "./reduced-model.ts";
import { type Column, type TestRun, waterTemperature } from "./run.ts";
import { runningSpans } from "./running.ts";
import { combination, greatestCorrelation, type TrajectoryFit, trajectoryFit } from "./trajectory-fit.ts";

/** Factors of the plant from a run alone, without a prediction. */
export interface Factors {
	readonly effectiveAperture: Factor; // aperture of a lossless dish with the same result [m²]
	readonly opticalFactor: Factor; // effective aperture over the aperture of the dish
	readonly loss: Factor; // of receiver, loop and tank while running, per kelvin of water above air [W/K]
	readonly tankLoss: Factor; // at rest [W/K]
	readonly collectorLoss: Factor; // of receiver and loop: the difference of the two [W/K]
	readonly capacityRate: Factor; // of the oil [W/K]
	readonly loopLoss: Factor; // of pipes and pump, per kelvin of oil above air [W/K]
	readonly noise: number; // of a reading about the fit, standard deviation; NaN without a fit [K]
	readonly lump: Lump | undefined; // driven by the sun; undefined without beam, air or a fit
}

const ANY: readonly [number, number] = [0, Number.POSITIVE_INFINITY];

/** All factors of the reduced model, each with its 95 % interval or the reason why the run does not determine it. */
export function runFactors(run: TestRun): Factors {
	const running = runningSpans(run);
	const sun = sunFit(run, running);
	const oil = oilFit(run, running);
	const aperture = run.aperture;
	const reads = reader(sun, running);
	const optical = reads({ aperture: 1 }, ANY);
	return {
		effectiveAperture: optical,
		opticalFactor:
			aperture === undefined
				? undeterminedFactor("notMeasured", ["aperture", ...needsOf(optical)])
				: reads({ aperture: 1 / aperture }, [0, 1]),
		loss: reads({ lossRunning: 1 }, ANY),
		tankLoss: reads({ lossAtRest: 1 }, ANY),
		collectorLoss: reads({ lossRunning: 1, lossAtRest: -1 }, ANY),
		capacityRate: reader(oil, running)({ capacityRate: 1 }, ANY),
		loopLoss: running.includes(false)
			? reader(oil, running)({ loopLoss: 1 }, ANY)
			: undeterminedFactor("notMeasured", [...(oil.drivers.length > 0 ? [] : oil.needs), "rowsAtRest"]),
		lump:
			run.beam && run.ambient && sun.fit?.outcome === "fitted" && running.includes(true)
				? { drivers: sun.drivers, fit: sun.fit }
				: undefined,
		noise: noiseOf(run, sun.fit?.outcome === "fitted" ? sun.fit : oil.fit),
	};
}

interface NamedFit {
	readonly drivers: readonly Driver[];
	readonly fit: TrajectoryFit | undefined;
	readonly needs: readonly Need[]; // missing columns that prevent a fit
}

function sunFit(run: TestRun, running: readonly boolean[]): NamedFit {
	const { beam, ambient } = run;
	const missing: Need[] = [];
	if (beam === undefined) missing.push("beam");
	if (ambient === undefined) missing.push("ambient");
	if (beam !== undefined && ambient !== undefined)
		return namedFit(run, sunDrivers(run, { beam, ambient }, running));
	const rest = ambient === undefined ? undefined : longestRest(run, running);
	if (rest === undefined) return { drivers: [], fit: undefined, needs: missing };
	const still = rest.time.length > 1 ? new Array<boolean>(rest.time.length - 1).fill(false) : [];
	const dark = new Float64Array(rest.time.length);
	return {
		...namedFit(rest, sunDrivers(rest, { beam: dark, ambient: rest.ambient! }, still)),
		needs: missing,
	};
}

function oilFit(run: TestRun, running: readonly boolean[]): NamedFit {
	const { oilIn, oilOut, ambient } = run;
	if (oilIn !== undefined && oilOut !== undefined && ambient !== undefined)
		return namedFit(run, oilDrivers(run, { oilIn, oilOut, ambient }, running));
	const needs: Need[] = oilIn === undefined || oilOut === undefined ? ["oilInAndOut"] : [];
	if (ambient === undefined) needs.push("ambient");
	return { drivers: [], fit: undefined, needs };
}

function namedFit(run: TestRun, drivers: readonly Driver[]): NamedFit {
	const columns = drivers.map(({ column }) => column);
	return { drivers, fit: trajectoryFit(run.time, heatContents(run), columns, heatNoise(run)), needs: [] };
}

function noiseOf(run: TestRun, fit: TrajectoryFit | undefined): number {
	return fit?.outcome === "fitted"
		? fit.noise / storeHeatCapacity(run, waterTemperature(run, 0))
		: Number.NaN;
}

type Weights = Partial<Record<Driver["name"], number>>;

/** Weighted sums of the factors of a fit. */
function reader({ drivers, fit, needs }: NamedFit, running: readonly boolean[]) {
	return (weights: Weights, possible: readonly [number, number]): Factor => {
		const names = Object.keys(weights) as Driver["name"][];
		const absent = names.filter((name) => !drivers.some((driver) => driver.name === name));
		if (fit === undefined || absent.length > 0)
			return undeterminedFactor("notMeasured", [
				...needs.filter((need) => need !== "beam" || names.some((name) => name !== "lossAtRest")),
				...new Set(names.flatMap((name) => rowsFor(name, running))),
			]);
		const more: Need[] = ["longerRun", ...(running.includes(false) ? [] : (["rowsAtRest"] as const))];
		switch (fit.outcome) {
			case "tooFewRows":
				return undeterminedFactor("tooFewRows", ["moreRows"]);
			case "collinear":
				return undeterminedFactor("collinear", more);
			case "fitted":
				break;
			default:
				return fit satisfies never;
		}
		const vector = drivers.map(({ name }) => weights[name] ?? 0);
		const first = drivers.findIndex(({ name }) => name === names[0]);
		return factorOf(combination(fit, vector), possible, greatestCorrelation(fit.covariance, first), more);
	};
}

/** Rows that a driver needs, where the run has none. */
function rowsFor(name: Driver["name"], running: readonly boolean[]): readonly Need[] {
	if (name === "lossAtRest") return running.includes(false) ? [] : ["rowsAtRest"];
	const drivenBySun = name === "aperture" || name === "lossRunning";
	return drivenBySun && !running.includes(true) ? ["rowsRunning"] : [];
}

const needsOf = (factor: Factor) => (factor.outcome === "undetermined" ? factor.needs : []);

/** The longest uninterrupted sequence of rows at rest, as a separate run. */
function longestRest(run: TestRun, running: readonly boolean[]): TestRun | undefined {
	let best = { from: 0, to: 0, length: 0 };
	for (let from = 0, row = 0; row <= running.length; row++) {
		if (row < running.length && !running[row]) continue;
		const length = run.time[row]! - run.time[from]!;
		if (row > from && length > best.length) best = { from, to: row, length };
		from = row + 1;
	}
	if (best.length === 0) return undefined;
	const cut = (column: Column) => Array.prototype.slice.call(column, best.from, best.to + 1) as number[];
	return {
		...run,
		time: cut(run.time),
		thermometers: run.thermometers.map(cut),
		ambient: run.ambient && cut(run.ambient),
	};
}
