import { DomainError, requireWithin } from "../errors.ts";
import { water } from "../fluids/water.ts";
import { type Drain, drain } from "../tank/draw-off.ts";
import type { TankModel, TankState } from "../tank/model.ts";
import type { TapDemand } from "./demand.ts";
import { hotShare } from "./mixing.ts";

export interface ServedTap {
	readonly state: TankState;
	readonly drawnAboveMains: number; // heat that left the tank above the mains, which takes its place [J]
	readonly delivered: number; // heat at the tap above the mains [J]
	readonly unmet: number; // asked and not given: what a heater behind the tank would add [J]
}

const SUBSTEP = 0.1; // [-] of a layer, drawn at one setting of the mixing valve
const CLOSE = 1e-9; // [-] of the asked mass; what is left unserved
const MOST_SUBSTEPS = 100_000;

/** Serves a tap from the tank: hot water mixed with mains to the wanted temperature, mains following into the tank.
 *  The tank gives so much that the heat drawn makes the asked flow; where its outlet is too cool the whole flow comes
 *  from the tank and the shortfall is unmet. delivered + unmet = asked within 1e-9.
 *  @param demand  mass at the tap and its wanted temperature     @param mains  temperature of the cold feed [K]
 *  Assumes an ideal mixing valve and no pipe between tank and tap, so that what the tank gives is what the tap gets;
 *  a tank colder than the mains takes heat from it: drawn and delivered are negative, and unmet is more than asked */
export function serveTap(model: TankModel, before: TankState, demand: TapDemand, mains: number): ServedTap {
	requireWithin("tap.mass", demand.mass, 0, Number.MAX_VALUE);
	const cold = water.enthalpy(mains);
	const wanted = water.enthalpy(demand.temperature);
	let delivered = 0;
	let unmet = 0;
	if (wanted <= cold) return { state: before, drawnAboveMains: 0, delivered, unmet };
	const tank = drain(model, before, mains);
	const substep = SUBSTEP * model.layerMass;
	let left = demand.mass;
	for (let i = 0; left > CLOSE * demand.mass; i++) {
		if (i === MOST_SUBSTEPS)
			throw new DomainError("too_large", "tap.mass", "the tap draws more tanks full than one call serves", {
				mass: demand.mass,
			});
		const share = hotShare(warmestNext(model, tank), cold, wanted);
		const hotMass = tank.isSpent() ? left : Math.min(substep, left * share);
		const drawn = tank.take(hotMass);
		const made = drawn / (wanted - cold); // mass at the tap that this heat makes
		const served = Math.max(hotMass, made);
		if (made < hotMass) unmet += hotMass * (wanted - cold) - drawn;
		delivered += drawn;
		left -= served;
	}
	return { state: tank.state(), drawnAboveMains: delivered, delivered, unmet };
}

/** Enthalpy of the warmer of the outlet's layer and the one that moves up into it [J/kg], so that no substep gives too much. */
function warmestNext(model: TankModel, tank: Drain): number {
	const { inletLayer, outletLayer } = model;
	const next = outletLayer + Math.sign(inletLayer - outletLayer);
	return water.enthalpy(Math.max(tank.temperature(outletLayer), tank.temperature(next)));
}
