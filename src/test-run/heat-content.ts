import { ICE_POINT } from "../constants.ts";
import { water } from "../fluids/water.ts";
import { tankModel } from "../tank/model.ts";
import { readingUncertainty, type TestRun, waterTemperature } from "./run.ts";

/** Heat content of the tank relative to 273.15 K, row by row [N] [J]: water by its enthalpy, wall by its heat capacity.
 *  Assumes each thermometer represents an equal share of water and wall, and that nothing was drawn or vented. */
export function heatContents(run: TestRun): Float64Array {
	const { waterMass, wallCapacity } = storeOf(run);
	const share = 1 / run.thermometers.length;
	return Float64Array.from({ length: run.time.length }, (_, row) => {
		let held = 0;
		for (const column of run.thermometers) {
			const temperature = column[row]!;
			held += waterMass * water.enthalpy(temperature) + wallCapacity * (temperature - ICE_POINT);
		}
		return held * share;
	});
}

/** Heat capacity of water and wall at a temperature [J/K]. */
export function storeHeatCapacity(run: TestRun, temperature: number): number {
	const { waterMass, wallCapacity } = storeOf(run);
	return waterMass * water.heatCapacity(temperature) + wallCapacity;
}

/** Water in the tank [kg] and the heat capacity of its wall [J/K]. */
export function storeOf({ tank }: TestRun): { readonly waterMass: number; readonly wallCapacity: number } {
	const model = tankModel(tank);
	return {
		waterMass: model.layers * model.layerMass,
		wallCapacity: model.layers * model.layerWallCapacity,
	};
}

/** Lower bound of the noise of the heat content, from the resolution of the thermometers [J]. */
export function heatNoise(run: TestRun): number {
	return storeHeatCapacity(run, waterTemperature(run, 0)) * readingUncertainty(run);
}
