import {
	type LinearisedLoss,
	type LoopCoefficients,
	type LoopFluxes,
	totalLoss,
	totalSlope,
} from "./coefficients.ts";
import { COIL, NODES, RECEIVER, RETURN, SUPPLY } from "./nodes.ts";

/** One step of the loop with the pump off: the four lumps cool or heat independently (backward Euler).
 *  Thermosiphon circulation is neglected: a check valve usually prevents it.
 *  @param held [4]   heat capacity of each lump [J/K]     @param before [4]  temperatures at the start of the step [K]
 *  @returns  fluxes that account for all heat to round-off; unconditionally stable, first order in dt */
export function restingStep(
	held: Float64Array,
	before: Float64Array,
	c: LoopCoefficients,
	loss: LinearisedLoss,
	dt: number,
): LoopFluxes {
	const temperatures = new Float64Array(NODES);
	const net = new Float64Array(NODES);
	const toLayers = new Float64Array(c.coil.length);

	const slope = totalSlope(loss);
	const atZero = c.absorbed - totalLoss(loss) + slope * loss.at;
	const damping = loss.refersTo === "wall" ? 1 + slope / c.film : 1;
	const cR = held[RECEIVER]! / dt;
	const tR = (cR * before[RECEIVER]! + atZero / damping) / (cR + slope / damping);
	const useful = (atZero - slope * tR) / damping;
	const wallTemperature = loss.refersTo === "wall" ? tR + useful / c.film : tR;
	const over = wallTemperature - loss.at;
	temperatures[RECEIVER] = tR;
	net[RECEIVER] = useful;

	const tS = temperatureAfterLoss(held[SUPPLY]! / dt, before[SUPPLY]!, c.supplyPipe + c.fittings, c.ambient);
	const tP = temperatureAfterLoss(held[RETURN]! / dt, before[RETURN]!, c.returnPipe + c.casing, c.ambient);
	const supplyPipe = c.supplyPipe * (tS - c.ambient);
	const fittings = c.fittings * (tS - c.ambient);
	const returnPipe = c.returnPipe * (tP - c.ambient);
	const casing = c.casing * (tP - c.ambient);
	temperatures[SUPPLY] = tS;
	temperatures[RETURN] = tP;
	net[SUPPLY] = -supplyPipe - fittings;
	net[RETURN] = -returnPipe - casing;

	const toWater = restingCoil(held[COIL]! / dt, before[COIL]!, c, temperatures, toLayers);
	net[COIL] = -toWater;
	return {
		useful,
		wallTemperature,
		radiated: loss.radiated + loss.radiatedSlope * over,
		convected: loss.convected + loss.convectedSlope * over,
		conducted: loss.conducted + loss.conductedSlope * over,
		unresolved: loss.unresolved + loss.unresolvedSlope * over,
		supplyPipe,
		fittings,
		returnPipe,
		casing,
		toWater,
		toLayers,
		temperatures,
		net,
	};
}

/** Temperature after a step of a lump that loses heat to its surroundings [K]; without heat capacity it does not change. */
function temperatureAfterLoss(
	rate: number,
	before: number,
	conductance: number,
	surroundings: number,
): number {
	const sum = rate + conductance;
	return sum > 0 ? (rate * before + conductance * surroundings) / sum : before;
}

/** Heat from the coil without flow to the layers around it [W]; writes `toLayers` [W] and the temperature of the coil. */
function restingCoil(
	rate: number,
	before: number,
	c: LoopCoefficients,
	temperatures: Float64Array,
	toLayers: Float64Array,
): number {
	let conductance = 0;
	let weighted = 0;
	for (let layer = 0; layer < toLayers.length; layer++) {
		conductance += c.coil[layer]!;
		weighted += c.coil[layer]! * c.layerTemperatures[layer]!;
	}
	const temperature = rate + conductance > 0 ? (rate * before + weighted) / (rate + conductance) : before;
	temperatures[COIL] = temperature;
	if (rate === 0) return 0;
	let sum = 0;
	for (let layer = 0; layer < toLayers.length; layer++) {
		const heat = c.coil[layer]! * (temperature - c.layerTemperatures[layer]!);
		toLayers[layer] = heat;
		sum += heat;
	}
	return sum;
}
