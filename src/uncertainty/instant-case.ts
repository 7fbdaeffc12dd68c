import type { Dish } from "../dish/dish.ts";
import type { Conditions } from "../instant/conditions.ts";
import type { Duty } from "../instant/duty.ts";
import { type Heater, heaterOf } from "../instant/heater.ts";
import { neededAperture } from "../instant/needed-aperture.ts";
import { flowOf, flows, powerOf } from "../instant/steady.ts";
import { type Arrangement, steadyFlow, vesselBetween } from "../instant/task.ts";
import type { Receiver } from "../receiver/receiver.ts";
import type { Values } from "./question.ts";

/** Source of the beam of one sun: stated, computed for a clear sky of given turbidity, or measured. */
export type BeamSource =
	| { readonly kind: "stated" }
	| { readonly kind: "clear"; readonly turbidity: number; readonly elevation: number }
	| { readonly kind: "measured" };

/** All inputs of an instant heater under one sun. */
export interface InstantCase {
	readonly dish: Dish;
	readonly receiver: Receiver;
	readonly latitude: number; // [rad]
	readonly declination: number; // [rad]
	readonly convection: number; // of the receiver relative to its correlations [-]
	readonly arrangement: Arrangement;
	readonly duty: Duty;
	readonly wantedFlow: number | undefined; // [kg/s]
	readonly largestAperture: number; // bound of the search for a larger dish [m²]
	readonly conditions: Conditions;
	readonly beam: BeamSource;
}

export function caseHeater({ dish, receiver, latitude, declination, convection }: InstantCase): Heater {
	return { ...heaterOf(dish, receiver, latitude, declination), convection };
}

/** The answers under one sun: flow [kg/s] and power [W], 0 without flow, and the aperture that the wanted flow needs [m²], NaN
 *  where no dish up to the bound is sufficient. Margins: flow, oil below its limit, aperture below the bound; NaN beyond, where the
 *  distance is unknown and a sample is needed. */
export function instantValues(of: InstantCase): Values {
	const { arrangement, duty, conditions, wantedFlow } = of;
	const heater = caseHeater(of);
	const steady = steadyFlow(arrangement, heater, duty, conditions);
	const area = neededArea(of, heater, wantedFlow);
	const oil = flows(steady) ? steady.oil : undefined;
	const limit = vesselBetween(arrangement)?.vessel.limit ?? 0;
	return {
		flow: flowOf(steady),
		power: powerOf(steady),
		neededAperture: area,
		flowing: flowOf(steady) > 0 ? flowOf(steady) : Number.NaN,
		belowLimit: oil === undefined ? 1 : oil.atLimit ? Number.NaN : limit - oil.temperature,
		found: of.largestAperture - area,
	};
}

function neededArea(of: InstantCase, heater: Heater, wantedFlow: number | undefined): number {
	if (wantedFlow === undefined) return Number.NaN;
	const needed = neededAperture(
		of.arrangement,
		heater,
		of.duty,
		wantedFlow,
		of.largestAperture,
		of.conditions,
	);
	return needed.kind === "found" ? needed.area : Number.NaN;
}
