import type { TankState } from "../tank/model.ts";
import { tankState } from "../tank/model.ts";
import type { ControlState } from "./control.ts";
import type { PlantModel } from "./model.ts";
import { COIL, NODES, type NodeState, nodeState } from "./nodes.ts";

/** State of a plant between two steps. Surface and wall temperatures are only initial guesses of the next step. */
export interface PlantState {
	readonly loop: NodeState;
	readonly tank: TankState;
	readonly control: ControlState;
	readonly wall: number; // of the receiver [K]
	readonly supplySurface: number; // of the supply pipe's insulation [K]
	readonly returnSurface: number; // of the return pipe's insulation [K]
	readonly shellSurface: number; // of the tank's insulation [K]
}

/** A plant after a night: loop at air temperature, except for the coil, which is at the temperature of the water around it; tank as
 *  filled, pump off, dish ready to face the sun. */
export function initialState(model: PlantModel, ambient: number): PlantState {
	const layers = model.plant.tank.startTemperatures;
	const loop = new Float64Array(NODES).fill(ambient);
	loop[COIL] = model.coilShares.reduce((sum, share, layer) => sum + share * layers[layer]!, 0);
	return {
		loop: nodeState(model.nodes, loop),
		tank: tankState(model.tank, Float64Array.from(model.plant.tank.startTemperatures)),
		control: { pump: "off", dish: "onSun" },
		wall: ambient,
		supplySurface: ambient,
		returnSurface: ambient,
		shellSurface: ambient,
	};
}
