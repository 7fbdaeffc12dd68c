import { DomainError, requireWithin } from "../errors.ts";
import { water } from "../fluids/water.ts";
import { type Drain, drain } from "../tank/draw-off.ts";
import type { TankModel, TankState } from "../tank/model.ts";
import type { TapDemand } from "./demand.ts";
import { hotShare } from "./mixing.ts";

export interface ServedTap {
	readonly state: TankState;
	readonly drawnAboveMains: number; // heat that left the tank relative to the mains, which replaces it [J]
	readonly delivered: number; // heat at the tap relative to the mains [J]
	readonly unmet: number; // demand that is not met: heat that an auxiliary heater would add [J]
}

const SUBSTEP = 0.1; // [-] of a layer, drawn at a constant setting of the mixing valve
const CLOSE = 1e-9; // [-] of the demand, remaining mass that is neglected
const MOST_SUBSTEPS = 100_000;

/** Meets a demand at the tap from the tank: hot water is mixed with mains to the wanted temperature, and mains enters the tank.
 *  The tank delivers the mass whose heat meets the demand; where its outlet is too cool, the complete flow comes
 *  from the tank and the difference is unmet. delivered + unmet = demand within 1e-9.
 *  @param demand  mass at the tap and its wanted temperature     @param mains  temperature of the cold feed [K]
 *  Assumes an ideal mixing valve and no pipe between tank and tap;
 *  for a tank colder than the mains, drawn and delivered heat are negative, and unmet heat exceeds the demand */
export function serveTap(model: TankModel, before: TankState, demand: TapDemand, mains: number): ServedTap {
	requireWithin("tap.mass", demand.mass, 0, Number.MAX_VALUE);
	const cold = water.enthalpy(mains);
	const wanted = water.enthalpy(demand.temperature);
	let delivered = 0;
	let unmet = 0;
	if (wanted <= cold) return { state: before, drawnAboveMains: 0, delivered, unmet };
	const tank = drain(model, before, mains);
	const substep = SUBSTEP * model.layerMass;
	let remaining = demand.mass;
	for (let i = 0; remaining > CLOSE * demand.mass; i++) {
		if (i === MOST_SUBSTEPS)
			throw new DomainError(
				"too_large",
				"tap.mass",
				"the draw exceeds the content of the tank too many times",
				{
					mass: demand.mass,
				},
			);
		const share = hotShare(warmestNext(model, tank), cold, wanted);
		const hotMass = tank.isSpent() ? remaining : Math.min(substep, remaining * share);
		const drawn = tank.take(hotMass);
		const equivalent = drawn / (wanted - cold); // mass at the tap with this heat
		const served = Math.max(hotMass, equivalent);
		if (equivalent < hotMass) unmet += hotMass * (wanted - cold) - drawn;
		delivered += drawn;
		remaining -= served;
	}
	return { state: tank.state(), drawnAboveMains: delivered, delivered, unmet };
}

/** Enthalpy of the warmer one of the outlet layer and the layer that follows it [J/kg], so that no substep delivers too much. */
function warmestNext(model: TankModel, tank: Drain): number {
	const { inletLayer, outletLayer } = model;
	const next = outletLayer + Math.sign(inletLayer - outletLayer);
	return water.enthalpy(Math.max(tank.temperature(outletLayer), tank.temperature(next)));
}
