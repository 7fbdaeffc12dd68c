import { logMeanDifference } from "../heat/exchanger.ts";
import { bracketedRoot } from "../numeric/root.ts";
import { receiverHeldHeatCapacity } from "../receiver/film.ts";
import { coilFlow, oilTemperatureFor } from "./coil-in-oil.ts";
import type { Conditions } from "./conditions.ts";
import { type Duty, enthalpyRise } from "./duty.ts";
import type { Heater } from "./heater.ts";
import type { VesselModel } from "./oil-vessel.ts";
import { collected } from "./vessel-flow.ts";

/** How a vessel charges under a steady sun, with no water drawn. */
export interface VesselCharge {
	readonly charge: number; // temperature at which it counts as charged: the wanted one, or just under where it levels off [K]
	readonly reachesCharge: boolean;
	readonly levelsOff: number | undefined; // [K]; undefined where it would pass the limit
	readonly warmUp: number | undefined; // from the start to the charge [s]; undefined where the sun does not even warm it
	readonly toLimit: number | undefined; // from the charge to the oil's limit [s]; undefined where it levels off below
	readonly filmAtCharge: number | undefined; // hottest in the receiver [K]
}

const SHORT_OF_LEVEL = 5; // [K] under where it levels off, which it would take forever to reach
const PANELS = 8;
const TOLERANCE = 1e-3; // [K]

/** @param start  temperature of oil and vessel when the sun comes on [K] */
export function vesselCharge(
	heater: Heater,
	model: VesselModel,
	start: number,
	conditions: Conditions,
): VesselCharge {
	const { limit, charge: wanted } = model.vessel;
	const net = (oil: number) => collected(heater, model, oil, conditions).power - model.loss(oil);
	const rises = net(start) > 0;
	const passes = rises && net(limit) > 0;
	const levelsOff = passes ? undefined : rises ? bracketedRoot(net, start, limit, TOLERANCE) : start;
	const reachesCharge = levelsOff === undefined || wanted <= levelsOff - SHORT_OF_LEVEL;
	const charge = reachesCharge ? wanted : Math.max(start, levelsOff - SHORT_OF_LEVEL);
	const time = (from: number, to: number) => timeAlong({ heater, model, from, to }, sampled(from, to, net));
	return {
		charge,
		reachesCharge,
		levelsOff,
		warmUp: rises ? time(start, charge) : undefined,
		toLimit: passes ? time(charge, limit) : undefined,
		filmAtCharge: collected(heater, model, charge, conditions).film,
	};
}

/** How long a flow lasts from charge, and how long the vessel then takes to be charged again. */
export type ChargedDraw =
	| { readonly kind: "sustained" } // for as long as the sun stays
	| { readonly kind: "lasts"; readonly duration: number; readonly recovery: number | undefined } // [s]
	| { readonly kind: "coilTooSmall"; readonly flowAtCharge: number }; // not even from charge [kg/s]

/** A flow drawn at the wanted temperature from a charged vessel, the sun still on it.
 *  It lasts until the oil is too cool for the coil to bring that flow to the wanted temperature; a thermostatic valve
 *  mixes the hotter water before that. Recovery runs from there back to the charge, with no water drawn.
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
	const net = (oil: number) => collected(heater, model, oil, conditions).power - model.loss(oil);
	const nets = sampled(empty, charge, net);
	const span = { heater, model, from: empty, to: charge };
	const duration = timeAlong(
		span,
		nets.map((power) => toWater - power),
	);
	return duration === undefined
		? { kind: "sustained" }
		: { kind: "lasts", duration, recovery: timeAlong(span, nets) };
}

/** Powers at the ends of equal panels between two temperatures. */
function sampled(from: number, to: number, power: (oil: number) => number): number[] {
	return Array.from({ length: PANELS + 1 }, (_, i) => power(from + ((to - from) * i) / PANELS));
}

/** Oil, with the receiver it fills, on its way between two temperatures [K]. */
interface OilSpan {
	readonly heater: Heater;
	readonly model: VesselModel;
	readonly from: number;
	readonly to: number;
}

/** Time in which powers take the oil from one temperature to the other [s]: ∫ C dT/P in panels over each of which the power
 *  is a straight line: exact for losses in proportion; for real ones sixteen panels say the same within 0.1 %.
 *  @returns  undefined where the powers give out on the way */
function timeAlong({ heater, model, from, to }: OilSpan, powers: readonly number[]): number | undefined {
	if (!powers.every((power) => power > 0)) return undefined;
	const width = (to - from) / PANELS;
	let time = 0;
	for (let i = 0; i < PANELS; i++) {
		const middle = from + (i + 0.5) * width;
		const held = receiverHeldHeatCapacity(heater.receiver, model.vessel.fluid, middle);
		time += ((model.heatCapacity(middle) + held) * width) / logMeanDifference(powers[i]!, powers[i + 1]!);
	}
	return time;
}
