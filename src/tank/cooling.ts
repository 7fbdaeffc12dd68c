import { STANDARD_PRESSURE } from "../constants.ts";
import { requireWithin } from "../errors.ts";
import { type EnergyClass, energyClass } from "./energy-class.ts";
import { shellGeometry } from "./geometry.ts";
import { layerHeatCapacity, type TankModel, type TankState, tankModel, tankState } from "./model.ts";
import { convergedShellLoss, shellLossCoefficient } from "./shell.ts";
import { tankStep } from "./stratified.ts";
import { airAround, type Tank } from "./tank.ts";

/** The air around a tank while it stands, steady. */
export interface StandingConditions {
	readonly ambient: number; // outdoors [K]; a tank indoors keeps to its own surroundings
	readonly wind: number; // outdoors [m/s]
	readonly pressure: number; // of the air [Pa]
}

export interface StandingTask {
	readonly duration: number; // [s]
	readonly rowStep: number; // of the curve [s]
	readonly limits: readonly number[]; // temperatures of interest [K]
	readonly limitAt: "mean" | "top"; // which of the tank's temperatures counts
}

/** The tank at the instants of a curve, from 0 to the duration. */
export interface CoolingCurve {
	readonly time: readonly number[]; // since the start [s]
	readonly mean: readonly number[]; // [K]
	readonly top: readonly number[]; // [K]
	readonly bottom: readonly number[]; // [K]
	readonly power: readonly number[]; // lost, mean since the row before, at the start as it begins [W]
}

/** Heat that a tank loses under the conditions of its label. */
export interface StandingLoss {
	readonly power: number; // [W]
	readonly coefficient: number; // [W/K]
	readonly volume: number; // of the vessel, which the class goes by [m³]
	readonly energyClass: EnergyClass;
}

export interface TankCooling {
	readonly curve: CoolingCurve;
	readonly endTemperatures: Float64Array; // [N] top first [K]
	readonly lossCoefficient: number; // at the start [W/K]
	readonly surfaceTemperature: number; // of the insulation's skin at the start [K]
	readonly heatCapacity: number; // of water and shell at the start [J/K]
	readonly loss: number; // over the whole time [J]
	readonly belowAfter: readonly (number | undefined)[]; // when first under each limit [s]; undefined if not in this time
	readonly standing: StandingLoss;
}

const TEST_WATER = 338.15; // [K] Regulation (EU) 812/2013: standing loss at 65 °C
const TEST_AIR = 293.15; // [K] in a room at 20 °C
const SHORT_STEP = 300; // [s] 0.05 % of the loss of a tank with a time constant of 100 h
const LONG_STEP = 900; // [s] the most that a slow tank is marched by
const STEPS_PER_TIME_CONSTANT = 1000; // 0.05 % of the loss, which is first order in the step
const MOST_STEPS = 200_000;

/** Standing loss under the conditions of its label: 65 °C inside, still air of 20 °C around, sea level.
 *  Source  Regulation (EU) 812/2013, Annex II */
export function standingLoss(tank: Tank): StandingLoss {
	const indoors: Tank = { ...tank, surroundings: { kind: "indoors", temperature: TEST_AIR } };
	const { coefficient } = convergedShellLoss(indoors, TEST_WATER, TEST_AIR, 0, STANDARD_PRESSURE);
	const power = coefficient * (TEST_WATER - TEST_AIR);
	const volume = shellGeometry(tank).crossSection * tank.height;
	return { power, coefficient, volume, energyClass: energyClass(power, volume) };
}

const AT_LIMIT = 1e-9; // [K] a tank that starts at a limit is under it at once, whatever the last bit of its mean

/** How a tank cools while nothing is drawn and the loop rests: its curve, its loss, when it falls under a limit.
 *  The loss coefficient follows the tank's temperature. The coil's loop is taken as still and as warm as the tank.
 *  Error   first order in the step: 0.05 % of the loss, more on a tank that cools within two days; that of the shell's coefficient, about ± 10 %, rules
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
			now = stood(tank, model, coilHeat, before, air, rowStart + ((rowEnd - rowStart) * i) / steps);
			noteCrossings(task.limits, belowAfter, counts, before, now);
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

/** A standing tank at one instant. */
interface Standing {
	readonly time: number; // since the start [s]
	readonly state: TankState;
	readonly surface: number; // of the insulation [K]
	readonly loss: number; // since the start [J]
}

/** The tank at a later instant, in one step. */
function stood(
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
		boilingPoint: Number.POSITIVE_INFINITY, // a tank that only loses heat boils no more than it did at the start
	};
	const { state, loss } = tankStep(model, now.state, inputs, until - now.time);
	return { time: until, state, surface: shell.surfaceTemperature, loss: now.loss + loss };
}

/** Step that keeps the error of the loss small, at a time constant of the tank [s]. */
function longestStep(timeConstant: number): number {
	return Math.min(Math.max(timeConstant / STEPS_PER_TIME_CONSTANT, SHORT_STEP), LONG_STEP);
}

/** Enters when a temperature of the tank fell under each limit between two instants, by straight line [s]. */
function noteCrossings(
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

/** Mean of the layers as the shell sees them, the first and the last through their ends as well [K]. */
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
