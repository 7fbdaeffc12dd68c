import { receiverTilt } from "../dish/receiver-tilt.ts";
import { shellLossCoefficient } from "../tank/shell.ts";
import { tankStep } from "../tank/stratified.ts";
import { airAround } from "../tank/tank.ts";
import { circulatingStep } from "./circulating-loop.ts";
import type { LoopFluxes } from "./coefficients.ts";
import { type ControlState, nextControl } from "./control.ts";
import { type Conditions, type Drive, type Exchange, exchange, linearisedLoss } from "./exchange.ts";
import { enterBeam, enterLoop, type Ledger } from "./ledger.ts";
import type { PlantModel } from "./model.ts";
import { type NodeState, nodeCapacity, nodeTemperature, RECEIVER } from "./nodes.ts";
import { restingStep } from "./resting-loop.ts";
import type { PlantState } from "./state.ts";

/** Whether the dish faces the sun, or the reason why not. */
export type DishFacing = ControlState["dish"] | "below";

/** Decision of the controller from the sensor readings in a state. */
export function controlDecision(model: PlantModel, state: PlantState): ControlState {
	return nextControl(model.plant.loop.control, state.control, {
		receiver: state.loop.temperatures[RECEIVER]!,
		tankSensor: state.tank.temperatures[coilSensorLayer(model)]!,
		tankTop: state.tank.temperatures[0]!,
	});
}

export function dishFacing(model: PlantModel, control: ControlState, now: Conditions): DishFacing {
	return now.altitude < model.plant.dish.lowestAltitude ? "below" : control.dish;
}

/** Result of one step, for the records of the day. */
export interface StepReport {
	readonly state: PlantState;
	readonly drive: Drive;
	readonly onSun: DishFacing;
	readonly oil: number; // hottest fluid [K]
	readonly film: number; // hottest fluid at a wall [K]
	readonly lit: number; // beam irradiance of the step [W/m²]
	readonly vented: number; // [J]
}

const WALL_ITERATIONS = 4;
const WALL_CLOSE = 0.5; // [K] within which the loss is practically linear

/** One coupled step of the plant: the present tank is the boundary of the forward pass sun → receiver → loop → coil,
 *  the wall temperature of the receiver is a fixed point, and the tank after `dt` is the result.
 *  @param control  decision of the controller in this state
 *  Heat enters lumps and layers as fluxes, so the balance closes to round-off for any step. */
export function plantStep(
	model: PlantModel,
	state: PlantState,
	control: ControlState,
	now: Conditions,
	dt: number,
	ledger: Ledger,
): StepReport {
	const beam = now.beam * model.apertureArea;
	const onSun = dishFacing(model, control, now);
	enterBeam(ledger, beam * dt, onSun === "onSun" ? model.light : "turnedAway");
	const absorbed = onSun === "onSun" ? beam * model.light.absorbed : 0;

	const { drive, coefficients, supplySurface, returnSurface } = exchange(
		model,
		state,
		now,
		control,
		absorbed,
	);
	const fluxes = loopFluxes(model, state, now, coefficients, dt);
	enterLoop(ledger, fluxes, coefficients.pumpHeat, dt);
	ledger.pumpElectricity += drive.electricPower * dt;

	const loop = nodesAfter(model, state.loop, fluxes, dt);
	const shell = tankSurroundings(model, state, now);
	const tank = tankStep(
		model.tank,
		state.tank,
		{
			coilHeat: fluxes.toLayers,
			lossCoefficient: shell.coefficient,
			surroundings: shell.temperature,
			boilingPoint: model.boilingPoint,
		},
		dt,
	);
	ledger.tankLoss += tank.loss;
	ledger.vented += tank.vented;
	const oil = loop.temperatures[RECEIVER]!;
	return {
		state: {
			loop,
			tank: tank.state,
			control,
			wall: fluxes.wallTemperature,
			supplySurface,
			returnSurface,
			shellSurface: shell.surface,
		},
		drive,
		onSun,
		oil,
		// Assumes evenly distributed light on the tube: the leaving fluid plus the temperature difference across the film.
		film: oil + Math.max(0, fluxes.useful) / coefficients.film,
		lit: now.beam,
		vented: tank.vented,
	};
}

/** Fluxes of the loop with the receiver loss linearised about the resulting wall temperature. */
function loopFluxes(
	model: PlantModel,
	state: PlantState,
	now: Conditions,
	coefficients: Exchange["coefficients"],
	dt: number,
): LoopFluxes {
	const held = state.loop.temperatures.map((t, node) => nodeCapacity(model.nodes, node, t));
	const surroundings = {
		ambient: now.ambient,
		wind: now.wind,
		pressure: model.airPressure,
		altitude: receiverTilt(model.plant.dish, model.plant.site.latitude, now.altitude),
	};
	const march = coefficients.capacityRate > 0 ? circulatingStep : restingStep;
	let at = state.wall;
	for (let i = 0; ; i++) {
		const loss = linearisedLoss(model.plant.receiver, model.factors, at, surroundings);
		const fluxes = march(held, state.loop.temperatures, coefficients, loss, dt);
		if (i === WALL_ITERATIONS || Math.abs(fluxes.wallTemperature - at) < WALL_CLOSE) return fluxes;
		at = fluxes.wallTemperature;
	}
}

function nodesAfter(model: PlantModel, before: NodeState, fluxes: LoopFluxes, dt: number): NodeState {
	const energies = before.energies.map((energy, node) => energy + fluxes.net[node]! * dt);
	const temperatures = energies.map((energy, node) =>
		nodeTemperature(model.nodes, node, energy, fluxes.temperatures[node]!),
	);
	return { temperatures, energies };
}

function tankSurroundings(
	model: PlantModel,
	state: PlantState,
	now: Conditions,
): { coefficient: number; surface: number; temperature: number } {
	const { tank } = model.plant;
	const { ambient, wind } = airAround(tank.surroundings, now.ambient, now.wind);
	const layers = state.tank.temperatures;
	const mean = layers.reduce((sum, t) => sum + t, 0) / layers.length;
	const shell = shellLossCoefficient(tank, mean, ambient, wind, model.airPressure, state.shellSurface);
	return {
		coefficient: shell.coefficient * model.factors.tankLoss,
		surface: shell.surfaceTemperature,
		temperature: ambient,
	};
}

/** Layer of the controller's tank sensor: at the lowest turn of the coil. */
function coilSensorLayer(model: PlantModel): number {
	const layers = model.coilShares.length;
	return Math.min(layers - 1, Math.floor((1 - model.plant.coil.bottom) * layers - 1e-9));
}
