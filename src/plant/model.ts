import { coilHeldHeatCapacity, coilShares } from "../coil/geometry.ts";
import { lightCone } from "../dish/light-cone.ts";
import { type DishOptics, dishOptics } from "../dish/optics.ts";
import type { Fluid } from "../fluids/fluid.ts";
import { boreVolume } from "../loop/bore.ts";
import type { Pipe } from "../loop/loop.ts";
import { pipeHeldHeat } from "../loop/pipe.ts";
import { receiverAbsorptance } from "../receiver/absorption.ts";
import { receiverHeldHeatCapacity } from "../receiver/film.ts";
import { hasTube } from "../receiver/receiver.ts";
import { boilingPoint, standardPressure } from "../sky/atmosphere.ts";
import { declination } from "../sun/position.ts";
import { type TankModel, tankModel } from "../tank/model.ts";
import type { ModelFactors } from "./factors.ts";
import { COIL, NODES, type NodeModel, RECEIVER, RETURN, SUPPLY } from "./nodes.ts";
import type { Plant } from "./plant.ts";

/** Shares of the beam on the aperture along its path to the absorber; their sum is 1. */
export interface LightPath {
	readonly blocked: number;
	readonly soiling: number;
	readonly mirror: number;
	readonly spillage: number;
	readonly receiverReflected: number;
	readonly unresolved: number;
	readonly absorbed: number;
}

/** Constants of a plant on one day, computed before the simulation. */
export interface PlantModel {
	readonly plant: Plant;
	readonly factors: ModelFactors;
	readonly apertureArea: number; // facing the sun [m²]
	readonly light: LightPath;
	readonly nodes: NodeModel;
	readonly coilShares: Float64Array; // [N] of the coil's length, top layer first
	readonly tank: TankModel;
	readonly airPressure: number; // [Pa]
	readonly boilingPoint: number; // of the tank's water [K]
}

/** Constants of a plant for the simulation.
 *  @param time              an instant of the day, for the declination of the sun, unix time [s]
 *  @param startTemperature  of the loop, for the mass of fluid in it [K] */
export function plantModel(
	plant: Plant,
	factors: ModelFactors,
	time: number,
	startTemperature: number,
): PlantModel {
	const airPressure = standardPressure(plant.site.elevation);
	const optics = dishOptics(
		plant.dish,
		hasTube(plant.receiver) ? plant.receiver.apertureDiameter : plant.dish.focalLength,
		plant.site.latitude,
		declination(time),
	);
	return {
		plant,
		factors,
		apertureArea: optics.apertureArea,
		light: lightPath(plant, optics),
		nodes: nodeModel(plant, startTemperature),
		coilShares: coilShares(plant.coil, plant.tank.startTemperatures.length),
		tank: tankModel(plant.tank),
		airPressure,
		boilingPoint: boilingPoint(airPressure + plant.tank.reliefPressure),
	};
}

function lightPath(plant: Plant, optics: DishOptics): LightPath {
	const receiver = plant.receiver;
	if (!hasTube(receiver))
		return {
			blocked: 0,
			soiling: 0,
			mirror: 0,
			spillage: 0,
			receiverReflected: 0,
			unresolved: 1 - receiver.opticalEfficiency,
			absorbed: receiver.opticalEfficiency,
		};
	const { blocked, soiling, mirror, spillage, toReceiver } = optics.shares;
	const absorptance = receiverAbsorptance(receiver, lightCone(plant.dish));
	return {
		blocked,
		soiling,
		mirror,
		spillage,
		receiverReflected: toReceiver * (1 - absorptance),
		unresolved: 0,
		absorbed: toReceiver * absorptance,
	};
}

function nodeModel(plant: Plant, temperature: number): NodeModel {
	const { receiver, coil, loop } = plant;
	const fluid = loop.fluid;
	const density = fluid.density(temperature);
	const fluidMass = new Float64Array(NODES);
	const held = new Float64Array(NODES);
	fluidMass[RECEIVER] = hasTube(receiver) ? density * boreVolume(receiver.tube) : 0;
	fluidMass[SUPPLY] = density * boreVolume(loop.supply);
	fluidMass[COIL] = density * boreVolume(coil);
	fluidMass[RETURN] = density * boreVolume(loop.return);
	held[RECEIVER] = receiverHeldHeatCapacity(receiver, fluid, temperature);
	held[SUPPLY] = pipeHeld(loop.supply, fluid, temperature);
	held[COIL] = coilHeldHeatCapacity(coil, fluid, temperature);
	held[RETURN] = pipeHeld(loop.return, fluid, temperature) + loop.pump.heldHeatCapacity;
	const metal = held.map((capacity, node) => capacity - fluidMass[node]! * fluid.heatCapacity(temperature));
	return { fluid, fluidMass, metal };
}

/** Heat capacity of a pipe's wall and fluid [J/K]. */
function pipeHeld(pipe: Pipe, fluid: Fluid, temperature: number): number {
	const held = pipeHeldHeat(pipe, fluid, temperature);
	return (held.fluid + held.metal) * pipe.length;
}
