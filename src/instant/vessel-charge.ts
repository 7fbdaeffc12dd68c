import { logMeanDifference } from "../heat/exchanger.ts";
import { bracketedRoot } from "../numeric/root.ts";
import { receiverHeldHeatCapacity } from "../receiver/film.ts";
import { coilFlow, oilTemperatureFor } from "./coil-in-oil.ts";
import type { Conditions } from "./conditions.ts";
import { type Duty, enthalpyRise } from "./duty.ts";
import type { Heater } from "./heater.ts";
import type { VesselModel } from "./oil-vessel.ts";
import { collectedHeat } from "./vessel-flow.ts";

/** Charging of a vessel under a constant sun, without draws. */
export interface VesselCharge {
	readonly charge: number; // temperature of the charged vessel: the wanted one, or slightly below the steady state [K]
	readonly reachesCharge: boolean;
	readonly levelsOff: number | undefined; // steady temperature without draws [K]; undefined where it would exceed the limit
	readonly warmUp: number | undefined; // from the start to the charge [s]; undefined where the sun does not heat it
	readonly toLimit: number | undefined; // from the charge to the limit of the oil [s]; undefined where the steady temperature is lower
	readonly filmAtCharge: number | undefined; // highest film temperature in the receiver [K]
}

const SHORT_OF_LEVEL = 5; // [K] below the steady temperature, which is only reached asymptotically
const INTERVALS = 8;
const TOLERANCE = 1e-3; // [K]

/** Charging times and temperatures of a vessel.
 *  @param start  initial temperature of oil and vessel [K] */
export function vesselCharge(
	heater: Heater,
	model: VesselModel,
	start: number,
	conditions: Conditions,
): VesselCharge {
	const { limit, charge: wanted } = model.vessel;
	const net = (oil: number) => collectedHeat(heater, model, oil, conditions).power - model.loss(oil);
	const rises = net(start) > 0;
	const passes = rises && net(limit) > 0;
	const levelsOff = passes ? undefined : rises ? bracketedRoot(net, start, limit, TOLERANCE) : start;
	const reachesCharge = levelsOff === undefined || wanted <= levelsOff - SHORT_OF_LEVEL;
	const charge = reachesCharge ? wanted : Math.max(start, levelsOff - SHORT_OF_LEVEL);
	const time = (from: number, to: number) => timeAlong({ heater, model, from, to }, powersAt(from, to, net));
	return {
		charge,
		reachesCharge,
		levelsOff,
		warmUp: rises ? time(start, charge) : undefined,
		toLimit: passes ? time(charge, limit) : undefined,
		filmAtCharge: collectedHeat(heater, model, charge, conditions).film,
	};
}

/** Duration of a flow from a charged vessel, and the time to recharge it. */
export type ChargedDraw =
	| { readonly kind: "sustained" } // as long as the sun shines
	| { readonly kind: "lasts"; readonly duration: number; readonly recovery: number | undefined } // [s]
	| { readonly kind: "coilTooSmall"; readonly flowAtCharge: number }; // flow that the coil can heat from charge [kg/s]

/** A flow at the wanted temperature from a charged vessel, with the sun shining.
 *  It lasts until the oil is too cold for the coil to heat the flow to the wanted temperature; a thermostatic valve
 *  mixes the hotter water before that. Recovery is from there to the charge, without draws.
 *  @param massFlow  [kg/s]     @param charge  temperature of the oil at the start [K] */
export function chargedDraw(
	heater: Heater,
	model: VesselModel,
	charge: number,
	duty: Duty,
	massFlow: number,
	conditions: Conditions,
): ChargedDraw {
	const flowAtCharge = coilFlow(model.vessel, charge, duty).massFlow;
	if (!(flowAtCharge > massFlow)) return { kind: "coilTooSmall", flowAtCharge };
	const toWater = massFlow * enthalpyRise(duty);
	const empty = oilTemperatureFor(model.vessel, toWater, duty, charge) ?? charge;
	const net = (oil: number) => collectedHeat(heater, model, oil, conditions).power - model.loss(oil);
	const nets = powersAt(empty, charge, net);
	const span = { heater, model, from: empty, to: charge };
	const duration = timeAlong(
		span,
		nets.map((power) => toWater - power),
	);
	return duration === undefined
		? { kind: "sustained" }
		: { kind: "lasts", duration, recovery: timeAlong(span, nets) };
}

/** Powers at the ends of equal intervals between two temperatures. */
function powersAt(from: number, to: number, power: (oil: number) => number): number[] {
	return Array.from({ length: INTERVALS + 1 }, (_, i) => power(from + ((to - from) * i) / INTERVALS));
}

/** Oil and its receiver between two temperatures [K]. */
interface OilSpan {
	readonly heater: Heater;
	readonly model: VesselModel;
	readonly from: number;
	readonly to: number;
}

/** Time in which given powers change the oil from one temperature to the other [s]: ∫ C dT/P over intervals with linear
 *  power: exact for losses proportional to temperature; for real ones within 0.1 % of the result with twice as many intervals.
 *  @returns  undefined where a power is not positive */
function timeAlong({ heater, model, from, to }: OilSpan, powers: readonly number[]): number | undefined {
	if (!powers.every((power) => power > 0)) return undefined;
	const width = (to - from) / INTERVALS;
	let time = 0;
	for (let i = 0; i < INTERVALS; i++) {
		const middle = from + (i + 0.5) * width;
		const held = receiverHeldHeatCapacity(heater.receiver, model.vessel.fluid, middle);
		time += ((model.heatCapacity(middle) + held) * width) / logMeanDifference(powers[i]!, powers[i + 1]!);
	}
	return time;
}
