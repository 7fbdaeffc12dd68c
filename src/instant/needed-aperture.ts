import { DomainError } from "../errors.ts";
import type { Pipe } from "../loop/loop.ts";
import { bracketedRoot } from "../numeric/root.ts";
import { secantFixedPoint } from "../numeric/secant-fixed-point.ts";
import { oilTemperatureFor } from "./coil-in-oil.ts";
import type { Conditions } from "./conditions.ts";
import { type Duty, enthalpyRise } from "./duty.ts";
import { type Heater, scaledHeater } from "./heater.ts";
import { type OilVessel, vesselModel } from "./oil-vessel.ts";
import { leavingAlong, pipeConductance } from "./outlet-pipe.ts";
import { receiverFlow } from "./receiver-flow.ts";
import type { Arrangement } from "./task.ts";
import { collected } from "./vessel-flow.ts";

/** The aperture that a wanted flow takes. */
export type NeededAperture =
	| { readonly kind: "found"; readonly area: number /* [m²] */ }
	| { readonly kind: "beyondBound" } // no dish up to the bound gives it
	| { readonly kind: "coilTooSmall" }; // no dish does: the coil can't pass it with the oil at its limit

const TOLERANCE = 1e-5; // [-] of the area
const FAR_BEYOND = 4; // [-] times the bound, where a search that strays gives up

/** Aperture of the smallest heater of these proportions (`scaledHeater`) that gives a flow steadily.
 *  The flow sets how hot it must leave the receiver for its pipe. Behind a vessel it sets the oil's temperature, and the dish
 *  must keep the oil there.
 *  @param heater   sets proportions and quality     @param wantedFlow  [kg/s]
 *  @param largest  area of the bound [m²] */
export function neededAperture(
	arrangement: Arrangement,
	heater: Heater,
	duty: Duty,
	wantedFlow: number,
	largest: number,
	conditions: Conditions,
): NeededAperture {
	if (duty.wanted >= duty.boiling) return { kind: "beyondBound" };
	switch (arrangement.kind) {
		case "direct":
			return forTap(arrangement.outlet, heater, duty, wantedFlow, largest, conditions);
		case "vessel":
			return forVessel(arrangement.vessel, heater, duty, wantedFlow, largest, conditions);
		default:
			return arrangement satisfies never;
	}
}

/** The same for water behind a vessel. */
function forVessel(
	vessel: OilVessel,
	heater: Heater,
	duty: Duty,
	wantedFlow: number,
	largest: number,
	conditions: Conditions,
): NeededAperture {
	const wanted = wantedFlow * enthalpyRise(duty);
	const oil = oilTemperatureFor(vessel, wanted, duty, vessel.limit);
	if (oil === undefined) return { kind: "coilTooSmall" };
	const model = vesselModel(vessel, conditions.ambient, conditions.wind, conditions.pressure);
	const kept = wanted + model.loss(oil);
	return smallest(heater, kept, largest, (size) => collected(size, model, oil, conditions).power);
}

/** The same for water that comes straight from the receiver through a pipe. A flow whose capacity rate is below the pipe's
 *  conductance creeps, and asks for the more heat the less it is: the dish for that rate gives it as well. */
function forTap(
	outlet: Pipe,
	heater: Heater,
	duty: Duty,
	wantedFlow: number,
	largest: number,
	conditions: Conditions,
): NeededAperture {
	const heatCapacity = enthalpyRise(duty) / (duty.wanted - duty.cold);
	const creeping = pipeConductance(outlet, 0, duty.wanted, conditions) / heatCapacity;
	const flow = Math.max(wantedFlow, creeping);
	const leaving = leavingAlong(outlet, flow, duty, conditions);
	if (leaving >= duty.boiling) return { kind: "beyondBound" };
	if (leaving <= duty.cold) return { kind: "found", area: 0 }; // the air about the pipe does it alone
	const hotter = { ...duty, wanted: leaving };
	const powerAt = (size: Heater) => receiverFlow(size, hotter, conditions)?.power ?? 0;
	return smallest(heater, flow * enthalpyRise(hotter), largest, powerAt);
}

/** Area at which a power that grows all but in proportion to it reaches what is wanted. */
function smallest(
	heater: Heater,
	wanted: number,
	largest: number,
	powerAt: (heater: Heater) => number,
): NeededAperture {
	if (!(wanted > 0)) return { kind: "found", area: 0 }; // warm air does it alone
	const bound = largest / heater.apertureArea;
	const power = (factor: number) => ifCovered(() => powerAt(scaledHeater(heater, factor)));
	const found = (factor: number): NeededAperture =>
		factor > bound ? { kind: "beyondBound" } : { kind: "found", area: factor * heater.apertureArea };
	const guess = wanted / power(1);
	const factor = secantFixedPoint(
		(size) => (size > 0 && size <= FAR_BEYOND * bound ? { next: (size * wanted) / power(size) } : undefined),
		guess,
		TOLERANCE * guess,
	)?.next;
	if (factor !== undefined && factor > 0) return found(factor);
	if (!(power(bound) >= wanted)) return { kind: "beyondBound" };
	return found(bracketedRoot((size) => (size === 0 ? 0 : power(size)) - wanted, 0, bound, TOLERANCE * bound));
}

/** Not a number where a size on the way lies outside what a model covers: the search turns back, the caller's own heater is sound. */
function ifCovered(power: () => number): number {
	try {
		return power();
	} catch (error) {
		if (error instanceof DomainError) return Number.NaN;
		throw error;
	}
}
