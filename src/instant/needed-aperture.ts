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
import { collectedHeat } from "./vessel-flow.ts";

/** Aperture that a wanted flow needs. */
export type NeededAperture =
	| { readonly kind: "found"; readonly area: number /* [m²] */ }
	| { readonly kind: "beyondBound" } // no dish up to the bound is sufficient
	| { readonly kind: "coilTooSmall" }; // no dish is sufficient: the coil cannot transfer the heat with the oil at its limit

const TOLERANCE = 1e-5; // [-] of the area
const FAR_BEYOND = 4; // [-] times the bound, where the iteration stops

/** Aperture of the smallest heater of these proportions (`scaledHeater`) that sustains a flow.
 *  The flow determines the outlet temperature of the receiver that the pipe requires. With a vessel it determines the oil temperature, which
 *  the dish must sustain.
 *  @param heater   determines proportions and properties     @param wantedFlow  [kg/s]
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

/** The same for water heated in a vessel. */
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
	const required = wanted + model.loss(oil);
	return smallest(heater, required, largest, (size) => collectedHeat(size, model, oil, conditions).power);
}

/** The same for water that flows directly from the receiver through a pipe. A flow with a capacity rate below the conductance
 *  of the pipe needs more heat the smaller it is; the dish for a capacity rate equal to the conductance sustains it too. */
function forTap(
	outlet: Pipe,
	heater: Heater,
	duty: Duty,
	wantedFlow: number,
	largest: number,
	conditions: Conditions,
): NeededAperture {
	const heatCapacity = enthalpyRise(duty) / (duty.wanted - duty.cold);
	const smallestFlow = pipeConductance(outlet, 0, duty.wanted, conditions) / heatCapacity;
	const flow = Math.max(wantedFlow, smallestFlow);
	const leaving = leavingAlong(outlet, flow, duty, conditions);
	if (leaving >= duty.boiling) return { kind: "beyondBound" };
	if (leaving <= duty.cold) return { kind: "found", area: 0 }; // the air around the pipe is warm enough
	const hotter = { ...duty, wanted: leaving };
	const powerAt = (size: Heater) => receiverFlow(size, hotter, conditions)?.power ?? 0;
	return smallest(heater, flow * enthalpyRise(hotter), largest, powerAt);
}

/** Smallest area with the wanted power, which is nearly proportional to area. */
function smallest(
	heater: Heater,
	wanted: number,
	largest: number,
	powerAt: (heater: Heater) => number,
): NeededAperture {
	if (!(wanted > 0)) return { kind: "found", area: 0 }; // the air is warm enough
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

/** NaN where a trial size is outside the range of a model: the search turns back; the caller's own heater is within it. */
function ifCovered(power: () => number): number {
	try {
		return power();
	} catch (error) {
		if (error instanceof DomainError) return Number.NaN;
		throw error;
	}
}
