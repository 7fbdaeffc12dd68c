import { STANDARD_PRESSURE } from "../constants.ts";
import { requireWithin } from "../errors.ts";
import { type EnergyClass, energyClass } from "./energy-class.ts";
import { type TankModel, type TankState, tankModel, tankState } from "./model.ts";
import { settledShellLoss, shellLossCoefficient } from "./shell.ts";
import { tankStep } from "./stratified.ts";
import type { Tank } from "./tank.ts";

/** The air around a tank while it stands, steady. */
export interface StandingConditions {
	readonly ambient: number; // outdoors [K]; a tank indoors keeps to its own surroundings
	readonly wind: number; // outdoors [m/s]
	readonly pressure: number; // of the air [Pa]
}

export interface StandingTask {
	readonly duration: number; // [s]
	readonly rowStep: number; // of the curve [s]
	readonly limit: number; // mean temperature of interest [K]
}

/** The tank at the instants of a curve, from 0 to the duration. */
export interface CoolingCurve {
	readonly time: readonly number[]; // since the start [s]
	readonly mean: readonly number[]; // [K]
	readonly top: readonly number[]; // [K]
	readonly bottom: readonly number[]; // [K]
}

export interface TankCooling {
	readonly curve: CoolingCurve;
	readonly endTemperatures: Float64Array; // [N] top first [K]
	readonly lossCoefficient: number; // at the start [W/K]
	readonly loss: number; // over the whole time [J]
	readonly belowLimitAfter: number | undefined; // first time that the mean is under the limit [s]; undefined if it never is
	readonly standingLoss: number; // at 65 °C inside, 20 °C still air around [W]
	readonly energyClass: EnergyClass;
}

const TEST_WATER = 338.15; // [K] Regulation (EU) 812/2013: standing loss at 65 °C
const TEST_AIR = 293.15; // [K] in a room at 20 °C
const LONGEST_STEP = 300; // [s] 0.05 % of the loss of a tank with a time constant of 100 h
const MOST_STEPS = 200_000;

/** Standing loss under the conditions of its label [W]: 65 °C inside, still air of 20 °C around, sea level.
 *  Source  Regulation (EU) 812/2013, Annex II */
export function standingLoss(tank: Tank): number {
	const indoors: Tank = { ...tank, surroundings: { kind: "indoors", temperature: TEST_AIR } };
	return (
		settledShellLoss(indoors, TEST_WATER, TEST_AIR, 0, STANDARD_PRESSURE).coefficient *
		(TEST_WATER - TEST_AIR)
	);
}

/** How a tank cools while nothing is drawn and the loop rests: its curve, its loss, when it falls under a limit.
 *  The loss coefficient follows the tank's temperature. The coil's loop is taken as still and as warm as the tank.
 *  Error   first order in the step of 300 s at most; that of the shell's coefficient, about ± 10 %, rules
 *  Check   exponential cooling, tests/reference/tank.reference.ts */
export function tankCooling(tank: Tank, conditions: StandingConditions, task: StandingTask): TankCooling {
	requireWithin("cooling time", task.duration, 1, MOST_STEPS * LONGEST_STEP);
	requireWithin("step of the cooling curve", task.rowStep, task.duration / MOST_STEPS, task.duration);
	const ambient = tank.surroundings.kind === "indoors" ? tank.surroundings.temperature : conditions.ambient;
	const air = { ...conditions, ambient };
	const model = tankModel(tank);
	const state = tankState(model, tank.startTemperatures);
	const shell = settledShellLoss(tank, mean(state), ambient, air.wind, air.pressure);
	let now: Standing = { time: 0, state, surface: shell.surfaceTemperature, loss: 0 };
	const curve = { time: [0], mean: [mean(state)], top: [top(state)], bottom: [bottom(state)] };
	let belowLimitAfter = mean(state) < task.limit ? 0 : undefined;
	for (let row = 1; now.time < task.duration; row++) {
		const rowEnd = (row + 1e-9) * task.rowStep >= task.duration ? task.duration : row * task.rowStep;
		const steps = Math.ceil((rowEnd - now.time) / LONGEST_STEP);
		const rowStart = now.time;
		for (let i = 1; i <= steps; i++) {
			const before = now;
			now = stood(tank, model, before, air, rowStart + ((rowEnd - rowStart) * i) / steps);
			belowLimitAfter ??= crossing(task.limit, before, now);
		}
		curve.time.push(now.time);
		curve.mean.push(mean(now.state));
		curve.top.push(top(now.state));
		curve.bottom.push(bottom(now.state));
	}
	const labelled = standingLoss(tank);
	return {
		curve,
		endTemperatures: now.state.temperatures,
		lossCoefficient: shell.coefficient,
		loss: now.loss,
		belowLimitAfter,
		standingLoss: labelled,
		energyClass: energyClass(labelled, tank.fill),
	};
}

/** A standing tank at one instant. */
interface Standing {
	readonly time: number; // since the start [s]
	readonly state: TankState;
	readonly surface: number; // of the lagging [K]
	readonly loss: number; // since the start [J]
}

/** The tank at a later instant, in one step. */
function stood(
	tank: Tank,
	model: TankModel,
	now: Standing,
	air: StandingConditions,
	until: number,
): Standing {
	const shell = shellLossCoefficient(tank, mean(now.state), air.ambient, air.wind, air.pressure, now.surface);
	const inputs = {
		coilHeat: new Float64Array(model.layers),
		lossCoefficient: shell.coefficient,
		surroundings: air.ambient,
		boilingPoint: Number.POSITIVE_INFINITY, // a tank that only loses heat boils no more than it did at the start
	};
	const { state, loss } = tankStep(model, now.state, inputs, until - now.time);
	return { time: until, state, surface: shell.surfaceTemperature, loss: now.loss + loss };
}

/** When the mean fell under the limit between two instants, by straight line [s]; undefined if it did not. */
function crossing(limit: number, before: Standing, after: Standing): number | undefined {
	const from = mean(before.state);
	const to = mean(after.state);
	if (!(from >= limit && to < limit)) return undefined;
	return before.time + ((after.time - before.time) * (from - limit)) / (from - to);
}

function mean(state: TankState): number {
	let sum = 0;
	for (const temperature of state.temperatures) sum += temperature;
	return sum / state.temperatures.length;
}

const top = (state: TankState) => state.temperatures[0]!;
const bottom = (state: TankState) => state.temperatures[state.temperatures.length - 1]!;
