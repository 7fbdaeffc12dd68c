import {
	type LinearisedLoss,
	type LoopCoefficients,
	type LoopFluxes,
	totalLoss,
	totalSlope,
} from "./coefficients.ts";
import { COIL, NODES, RECEIVER, RETURN, SUPPLY } from "./nodes.ts";

/** One step of the loop with the pump running: four lumps in series, implicit in time (backward Euler).
 *  The outlet temperature of each lump is linear in that of the previous one, T = α·T_previous + β; once around the loop this
 *  gives one equation for the receiver. The heat loss of a pipe or the coil depends on its inlet temperature through
 *  its effectiveness 1 − exp(−UA/ṁcp), so no outlet is colder than the surroundings at any flow.
 *  @param held [4]   heat capacity of each lump [J/K]     @param before [4]  temperatures at the start of the step [K]
 *  @returns  fluxes with a sum of zero around the loop, to round-off; unconditionally stable, first order in dt */
export function circulatingStep(
	held: Float64Array,
	before: Float64Array,
	c: LoopCoefficients,
	loss: LinearisedLoss,
	dt: number,
): LoopFluxes {
	const mc = c.capacityRate;
	const supply = mc * -Math.expm1(-(c.supplyPipe + c.fittings) / mc);
	const back = mc * -Math.expm1(-(c.returnPipe + c.casing) / mc);
	const exchange = layerExchange(c, dt);
	let through = 1; // outlet of the coil: T_out = through·T_in + gained, with the fluid passing the layers from the top down
	let gained = 0;
	for (let layer = 0; layer < exchange.length; layer++) {
		const effectiveness = exchange[layer]! / mc;
		through *= 1 - effectiveness;
		gained = gained * (1 - effectiveness) + effectiveness * c.layerTemperatures[layer]!;
	}

	const cR = held[RECEIVER]! / dt;
	const cS = held[SUPPLY]! / dt;
	const cC = held[COIL]! / dt;
	const cP = held[RETURN]! / dt;
	const receiver = receiverLine(c, loss);
	const aR = (mc - receiver.onInlet) / (cR + mc + receiver.onOutlet);
	const bR = (cR * before[RECEIVER]! + receiver.free) / (cR + mc + receiver.onOutlet);
	const aS = (mc - supply) / (cS + mc);
	const bS = (cS * before[SUPPLY]! + supply * c.ambient) / (cS + mc);
	const aC = (mc * through) / (cC + mc);
	const bC = (cC * before[COIL]! + mc * gained) / (cC + mc);
	const aP = (mc - back) / (cP + mc);
	const bP = (cP * before[RETURN]! + back * c.ambient + c.pumpHeat) / (cP + mc);

	const temperatures = new Float64Array(NODES);
	const tR = (aR * (aP * (aC * bS + bC) + bP) + bR) / (1 - aR * aP * aC * aS);
	const tS = aS * tR + bS;
	const tC = aC * tS + bC;
	const tP = aP * tC + bP;
	temperatures[RECEIVER] = tR;
	temperatures[SUPPLY] = tS;
	temperatures[COIL] = tC;
	temperatures[RETURN] = tP;

	const useful = receiver.free - receiver.onInlet * tP - receiver.onOutlet * tR;
	const wallTemperature = loss.refersTo === "outlet" ? tR : tP + useful / filmFlow(c);
	const over = wallTemperature - loss.at;
	const toLayers = exchange;
	const toWater = coilHeat(c, tS, toLayers);
	const supplySide = supply * (tR - c.ambient);
	const returnSide = back * (tC - c.ambient);
	const supplyShare = share(c.supplyPipe, c.fittings);
	const returnShare = share(c.returnPipe, c.casing);
	const net = new Float64Array(NODES);
	net[RECEIVER] = useful + mc * (tP - tR);
	net[SUPPLY] = mc * (tR - tS) - supplySide;
	net[COIL] = mc * (tS - tC) - toWater;
	net[RETURN] = mc * (tC - tP) - returnSide + c.pumpHeat;
	return {
		useful,
		wallTemperature,
		radiated: loss.radiated + loss.radiatedSlope * over,
		convected: loss.convected + loss.convectedSlope * over,
		conducted: loss.conducted + loss.conductedSlope * over,
		unresolved: loss.unresolved + loss.unresolvedSlope * over,
		supplyPipe: supplySide * supplyShare,
		fittings: supplySide * (1 - supplyShare),
		returnPipe: returnSide * returnShare,
		casing: returnSide * (1 - returnShare),
		toWater,
		toLayers,
		temperatures,
		net,
	};
}

/** Heat to the fluid as a linear function: useful = free − onInlet·T_in − onOutlet·T_out [W, W/K, W/K]. */
function receiverLine(
	c: LoopCoefficients,
	loss: LinearisedLoss,
): { free: number; onInlet: number; onOutlet: number } {
	const slope = totalSlope(loss);
	const atZero = c.absorbed - totalLoss(loss) + slope * loss.at;
	if (loss.refersTo === "outlet") return { free: atZero, onInlet: 0, onOutlet: slope };
	const damping = 1 + slope / filmFlow(c); // the wall is hotter than the fluid by useful / filmFlow
	return { free: atZero / damping, onInlet: slope / damping, onOutlet: 0 };
}

/** Conductance between a wall of uniform temperature and the fluid at its inlet, ṁcp·(1 − exp(−hA/ṁcp)) [W/K]. */
function filmFlow(c: LoopCoefficients): number {
	return c.capacityRate * -Math.expm1(-c.film / c.capacityRate);
}

/** Conductance between coil and each layer over the step, damped so that a small layer does not become hotter than the oil [N] [W/K]. */
function layerExchange(c: LoopCoefficients, dt: number): Float64Array {
	const exchange = new Float64Array(c.coil.length);
	for (let layer = 0; layer < exchange.length; layer++) {
		const ua = c.coil[layer]!;
		if (ua === 0) continue;
		const conductance = c.capacityRate * -Math.expm1(-ua / c.capacityRate);
		const x = (conductance * dt) / c.layerCapacities[layer]!;
		exchange[layer] = conductance * (-Math.expm1(-x) / x);
	}
	return exchange;
}

/** Heat to each layer from fluid that enters the coil at `inlet` [W], which replaces the conductances; returns the sum. */
function coilHeat(c: LoopCoefficients, inlet: number, exchange: Float64Array): number {
	let temperature = inlet;
	let sum = 0;
	for (let layer = 0; layer < exchange.length; layer++) {
		const heat = exchange[layer]! * (temperature - c.layerTemperatures[layer]!);
		exchange[layer] = heat;
		temperature -= heat / c.capacityRate;
		sum += heat;
	}
	return sum;
}

function share(part: number, rest: number): number {
	return part + rest > 0 ? part / (part + rest) : 1;
}
