import { STANDARD_PRESSURE } from "../constants.ts";
import { requireWithin } from "../errors.ts";
import { type EnergyClass, energyClass } from "./energy-class.ts";
import { shellGeometry } from "./geometry.ts";
import { layerHeatCapacity, type TankModel, type TankState, tankModel, tankState } from "./model.ts";
import { convergedShellLoss, shellLossCoefficient } from "./shell.ts";
import { tankStep } from "./stratified.ts";
import { airAround, type Tank } from "./tank.ts";

/** Constant air conditions around a tank at rest. */
export interface StandingConditions {
	readonly ambient: number; // outdoors [K]; a tank indoors has its own surroundings
	readonly wind: number; // outdoors [m/s]
	readonly pressure: number; // of the air [Pa]
}

export interface StandingTask {
	readonly duration: number; // [s]
	readonly rowStep: number; // of the curve [s]
	readonly limits: readonly number[]; // temperatures of interest [K]
	readonly limitAt: "mean" | "top"; // tank temperature compared with the limits
}

/** Tank temperatures and heat loss over time, from 0 to the duration. */
export interface CoolingCurve {
	readonly time: readonly number[]; // since the start [s]
	readonly mean: readonly number[]; // [K]
	readonly top: readonly number[]; // [K]
	readonly bottom: readonly number[]; // [K]
	readonly power: readonly number[]; // heat loss, mean since the previous row; in the first row the initial value [W]
}

/** Heat loss of a tank under the conditions of its energy label. */
export interface StandingLoss {
	readonly power: number; // [W]
	readonly coefficient: number; // [W/K]
	readonly volume: number; // of the vessel, the basis of the class [m³]
	readonly energyClass: EnergyClass;
}

export interface TankCooling {
	readonly curve: CoolingCurve;
	readonly endTemperatures: Float64Array; // [N] top first [K]
	readonly lossCoefficient: number; // at the start [W/K]
	readonly surfaceTemperature: number; // of the insulation at the start [K]
	readonly heatCapacity: number; // of water and shell at the start [J/K]
	readonly loss: number; // over the complete time [J]
	readonly belowAfter: readonly (number | undefined)[]; // first time below each limit [s]; undefined where that is later
	readonly standing: StandingLoss;
}

const TEST_WATER = 338.15; // [K] Regulation (EU) 812/2013: standing loss at 65 °C
const TEST_AIR = 293.15; // [K] room at 20 °C
const SHORT_STEP = 300; // [s] for 0.05 % of the loss of a tank with a time constant of 100 h
const LONG_STEP = 900; // [s] longest step, for a slow tank
const STEPS_PER_TIME_CONSTANT = 1000; // for 0.05 % of the loss, which is first order in the step
const MOST_STEPS = 200_000;

/** Standing loss under the conditions of the energy label: 65 °C inside, still air of 20 °C, sea level.
 *  Source  Regulation (EU) 812/2013, Annex II */
export function standingLoss(tank: Tank): StandingLoss {
	const indoors: Tank = { ...tank, surroundings: { kind: "indoors", temperature: TEST_AIR } };
	const { coefficient } = convergedShellLoss(indoors, TEST_WATER, TEST_AIR, 0, STANDARD_PRESSURE);
	const power = coefficient * (TEST_WATER - TEST_AIR);
	const volume = shellGeometry(tank).crossSection * tank.height;
	return { power, coefficient, volume, energyClass: energyClass(power, volume) };
}

const AT_LIMIT = 1e-9; // [K] a tank that starts at a limit counts as below it, independent of rounding in its mean

/** Cooling of a tank without draws and with the loop at rest: temperature curve, heat loss and times below limits.
 *  The loss coefficient depends on the temperature of the tank. The coil is assumed to be as warm as the tank, without flow.
 *  Error   first order in the step: 0.05 % of the loss, more for a tank that cools within two days; the error of the shell's coefficient, about ± 10 %, dominates
 *  Check   exponential cooling, tests/reference/tank.reference.ts */
export function tankCooling(tank: Tank, conditions: StandingConditions, task: StandingTask): TankCooling {
	requireWithin("tank.coolingTime", task.duration, 1, MOST_STEPS * SHORT_STEP);
	requireWithin("tank.coolingStep", task.rowStep, task.duration / MOST_STEPS, task.duration);
	const { ambient } = airAround(tank.surroundings, conditions.ambient, conditions.wind);
	const air = { ...conditions, ambient };
	const model = tankModel(tank);
	const state = tankState(model, tank.startTemperatures);
	const shell = convergedShellLoss(tank, mean(state), ambient, air.wind, air.pressure);
	const counts = { top, mean }[task.limitAt];
	const belowAfter: (number | undefined)[] = task.limits.map((limit) =>
		counts(state) <= limit + AT_LIMIT ? 0 : undefined,
	);
	const heatCapacity = state.temperatures.reduce((sum, t) => sum + layerHeatCapacity(model, t), 0);
	const longest = longestStep(heatCapacity / shell.coefficient);
	const coilHeat = new Float64Array(model.layers);
	let now: Standing = { time: 0, state, surface: shell.surfaceTemperature, loss: 0 };
	const curve = {
		...{ time: [0], mean: [mean(state)], top: [top(state)], bottom: [bottom(state)] },
		power: [shell.coefficient * (shellMean(model, state) - ambient)],
	};
	for (let row = 1; now.time < task.duration; row++) {
		const rowEnd = (row + 1e-9) * task.rowStep >= task.duration ? task.duration : row * task.rowStep;
		const steps = Math.ceil((rowEnd - now.time) / longest);
		const { time: rowStart, loss: lossBefore } = now;
		for (let i = 1; i <= steps; i++) {
			const before = now;
			now = tankAfterStep(tank, model, coilHeat, before, air, rowStart + ((rowEnd - rowStart) * i) / steps);
			recordCrossings(task.limits, belowAfter, counts, before, now);
		}
		curve.time.push(now.time);
		curve.mean.push(mean(now.state));
		curve.top.push(top(now.state));
		curve.bottom.push(bottom(now.state));
		curve.power.push((now.loss - lossBefore) / (now.time - rowStart));
	}
	return {
		curve,
		endTemperatures: now.state.temperatures,
		lossCoefficient: shell.coefficient,
		surfaceTemperature: shell.surfaceTemperature,
		heatCapacity,
		loss: now.loss,
		belowAfter,
		standing: standingLoss(tank),
	};
}

/** A tank at rest at one instant. */
interface Standing {
	readonly time: number; // since the start [s]
	readonly state: TankState;
	readonly surface: number; // of the insulation [K]
	readonly loss: number; // since the start [J]
}

/** The tank at a later instant, after one step. */
function tankAfterStep(
	tank: Tank,
	model: TankModel,
	coilHeat: Float64Array, // none
	now: Standing,
	air: StandingConditions,
	until: number,
): Standing {
	const shell = shellLossCoefficient(tank, mean(now.state), air.ambient, air.wind, air.pressure, now.surface);
	const inputs = {
		coilHeat,
		lossCoefficient: shell.coefficient,
		surroundings: air.ambient,
		boilingPoint: Number.POSITIVE_INFINITY, // a tank that only loses heat does not boil
	};
	const { state, loss } = tankStep(model, now.state, inputs, until - now.time);
	return { time: until, state, surface: shell.surfaceTemperature, loss: now.loss + loss };
}

/** Longest step for a small error of the loss [s], from the time constant of the tank [s]. */
function longestStep(timeConstant: number): number {
	return Math.min(Math.max(timeConstant / STEPS_PER_TIME_CONSTANT, SHORT_STEP), LONG_STEP);
}

/** Records when a tank temperature crossed each limit between two instants, by linear interpolation [s]. */
function recordCrossings(
	limits: readonly number[],
	belowAfter: (number | undefined)[],
	counts: (state: TankState) => number,
	before: Standing,
	after: Standing,
): void {
	const from = counts(before.state);
	const to = counts(after.state);
	for (let i = 0; i < limits.length; i++)
		if (from >= limits[i]! && to < limits[i]!)
			belowAfter[i] ??= before.time + ((after.time - before.time) * (from - limits[i]!)) / (from - to);
}

/** Mean of the layers weighted by heat loss, with the ends in the first and last layer [K]. */
function shellMean(model: TankModel, state: TankState): number {
	return model.lossShares.reduce((sum, share, layer) => sum + share * state.temperatures[layer]!, 0);
}

function mean(state: TankState): number {
	let sum = 0;
	for (const temperature of state.temperatures) sum += temperature;
	return sum / state.temperatures.length;
}

const top = (state: TankState) => state.temperatures[0]!;
const bottom = (state: TankState) => state.temperatures[state.temperatures.length - 1]!;
