import type { Dish } from "../dish/dish.ts";
import type { Conditions } from "../instant/conditions.ts";
import type { Duty } from "../instant/duty.ts";
import { type Heater, heaterOf } from "../instant/heater.ts";
import { neededAperture } from "../instant/needed-aperture.ts";
import { flowOf, flows, powerOf } from "../instant/steady.ts";
import { type Arrangement, steadyFlow, vesselBetween } from "../instant/task.ts";
import type { Receiver } from "../receiver/receiver.ts";
import type { Values } from "./question.ts";

/** What the beam of one sun rests on: stated outright, or found under a sky of so much haze, or read from an instrument. */
export type BeamSource =
	| { readonly kind: "stated" }
	| { readonly kind: "clear"; readonly turbidity: number; readonly elevation: number }
	| { readonly kind: "measured" };

/** Everything that what an instant heater gives under one sun follows from. */
export interface InstantCase {
	readonly dish: Dish;
	readonly receiver: Receiver;
	readonly latitude: number; // [rad]
	readonly declination: number; // [rad]
	readonly convection: number; // of the receiver, over what its correlations say [-]
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

/** The answers under one sun: flow [kg/s] and power [W], 0 where none flows, and the aperture that the wanted flow takes [m²], NaN
 *  where no dish up to the bound gives it. Margins: flow, oil below its limit, aperture below the bound; NaN beyond, where how far
 *  is not known and only a sample helps. */
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
