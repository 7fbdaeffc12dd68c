import { coilConductances } from "../coil/conductance.ts";
import type { Pipe } from "../loop/loop.ts";
import { pipeLossPass } from "../loop/pipe.ts";
import { pipeInsideFilm } from "../loop/pipe-flow.ts";
import type { ReceiverSurroundings } from "../receiver/balance.ts";
import { receiverFilmConductance } from "../receiver/film.ts";
import { receiverLosses } from "../receiver/losses.ts";
import { hasTube, type Receiver } from "../receiver/receiver.ts";
import { layerHeatCapacity } from "../tank/model.ts";
import { circuitDuty } from "./circuit.ts";
import type { LinearisedLoss, LoopCoefficients } from "./coefficients.ts";
import type { ControlState } from "./control.ts";
import type { ModelFactors } from "./factors.ts";
import type { PlantModel } from "./model.ts";
import { COIL, RECEIVER, RETURN, SUPPLY } from "./nodes.ts";
import type { PlantState } from "./state.ts";

/** Air and sun during one step. */
export interface Conditions {
	readonly beam: number; // [W/m²]
	readonly ambient: number; // [K]
	readonly wind: number; // [m/s]
	readonly altitude: number; // of the sun, apparent [rad]
}

/** Operation of the pump during one step. */
export interface Drive {
	readonly flow: number; // [m³/s]
	readonly electricPower: number; // [W]
}

/** All coefficients of one step except the linearised receiver loss, from the state at its start. */
export interface Exchange {
	readonly drive: Drive;
	readonly coefficients: LoopCoefficients;
	readonly supplySurface: number; // of the insulation [K]
	readonly returnSurface: number; // of the insulation [K]
}

const AT_REST: Drive = { flow: 0, electricPower: 0 };

export function exchange(
	model: PlantModel,
	state: PlantState,
	now: Conditions,
	control: ControlState,
	absorbed: number,
): Exchange {
	const { loop, receiver, coil } = model.plant;
	const fluid = loop.fluid;
	const temperatures = state.loop.temperatures;
	const duty = control.pump === "on" ? circuitDuty(model.plant, temperatures) : undefined;
	const flow = duty?.flow ?? 0;
	const supply = pipeConductance(model, loop.supply, temperatures[SUPPLY]!, flow, now, state.supplySurface);
	const back = pipeConductance(model, loop.return, temperatures[RETURN]!, flow, now, state.returnSurface);
	const layers = state.tank.temperatures;
	const coilUa = new Float64Array(layers.length);
	const oil = (temperatures[SUPPLY]! + temperatures[COIL]!) / 2;
	coilConductances(coil, model.factors.coilFilm, model.coilShares, fluid, oil, flow, layers, coilUa);
	const mean = (temperatures[RECEIVER]! + temperatures[RETURN]!) / 2;
	return {
		drive: duty ?? AT_REST,
		coefficients: {
			capacityRate: flow * fluid.density(temperatures[RETURN]!) * fluid.heatCapacity(mean),
			ambient: now.ambient,
			absorbed,
			film: hasTube(receiver)
				? receiverFilmConductance(receiver, fluid, mean, flow)
				: Number.POSITIVE_INFINITY,
			supplyPipe: supply.coefficient,
			returnPipe: back.coefficient,
			fittings: loop.fittingsLossCoefficient,
			casing: loop.pump.casingLossCoefficient,
			pumpHeat: flow > 0 ? (duty?.heatToFluid ?? 0) : 0, // a blocked pump heats only itself
			coil: coilUa,
			layerTemperatures: layers,
			layerCapacities: layers.map((t) => layerHeatCapacity(model.tank, t)),
		},
		supplySurface: supply.surface,
		returnSurface: back.surface,
	};
}

function pipeConductance(
	model: PlantModel,
	pipe: Pipe,
	temperature: number,
	flow: number,
	now: Conditions,
	surfaceGuess: number,
): { coefficient: number; surface: number } {
	const pass = pipeLossPass(
		pipe,
		{
			fluidTemperature: temperature,
			insideFilm: pipeInsideFilm(pipe, model.plant.loop.fluid, temperature, flow),
			ambient: now.ambient,
			wind: now.wind,
			pressure: model.airPressure,
		},
		surfaceGuess,
	);
	return {
		coefficient: pass.coefficientPerMetre * pipe.length * model.factors.laggingLoss,
		surface: pass.surfaceTemperature,
	};
}

const SLOPE_STEP = 0.5; // [K] finite difference for the slope of the loss

/** Receiver losses linearised about a temperature: value and slope by path. */
export function linearisedLoss(
	receiver: Receiver,
	factors: ModelFactors,
	at: number,
	conditions: ReceiverSurroundings,
): LinearisedLoss {
	const { ambient, wind, pressure, altitude } = conditions;
	const here = receiverLosses(receiver, { wallTemperature: at, ambient, wind, pressure, altitude });
	const warmer = at + SLOPE_STEP;
	const there = receiverLosses(receiver, { wallTemperature: warmer, ambient, wind, pressure, altitude });
	return {
		refersTo: hasTube(receiver) ? "wall" : "outlet",
		at,
		radiated: here.radiated,
		convected: here.convected * factors.receiverConvection,
		conducted: here.conducted * factors.laggingLoss,
		unresolved: here.unresolved,
		radiatedSlope: (there.radiated - here.radiated) / SLOPE_STEP,
		convectedSlope: ((there.convected - here.convected) / SLOPE_STEP) * factors.receiverConvection,
		conductedSlope: ((there.conducted - here.conducted) / SLOPE_STEP) * factors.laggingLoss,
		unresolvedSlope: (there.unresolved - here.unresolved) / SLOPE_STEP,
	};
}
