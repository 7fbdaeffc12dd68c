import { DomainError, requireWithin } from "../errors.ts";
import { water } from "../fluids/water.ts";
import type { Draw } from "./draw.ts";

/** Water asked at the tap. */
export interface TapDemand {
	readonly mass: number; // [kg]
	readonly temperature: number; // wanted [K]
}

/** Mass that a draw asks at the tap [kg].
 *  A volume is counted at the wanted temperature; an amount of heat is that of its mass above the mains, and asked from
 *  mains that is as warm already it is DomainError contradictory. */
export function drawMass(draw: Draw, mains: number): number {
	const { demand } = draw;
	switch (demand.kind) {
		case "volume":
			requireWithin("tap.volume", demand.volume, 0, Number.MAX_VALUE);
			return demand.volume * water.density(draw.temperature);
		case "energy":
			return massOfHeat(demand.energy, draw, mains);
		default:
			return demand satisfies never;
	}
}

function massOfHeat(energy: number, draw: Draw, mains: number): number {
	requireWithin("tap.heat", energy, 0, Number.MAX_VALUE);
	const rise = water.enthalpy(draw.temperature) - water.enthalpy(mains);
	if (!(rise > 0))
		throw new DomainError(
			"contradictory",
			"tap.temperature",
			"heat is asked at a temperature that the mains already has",
			{
				temperature: draw.temperature,
				mains,
			},
		);
	return energy / rise;
}

/** Time that a draw takes at its flow [s]. */
export function drawDuration(draw: Draw, mains: number): number {
	requireWithin("tap.flow", draw.flow, Number.MIN_VALUE, Number.MAX_VALUE);
	return drawMass(draw, mains) / (draw.flow * water.density(draw.temperature));
}

/** What the draws ask between two instants, one entry for each draw that runs then.
 *  Each entry is the difference of what had been asked by either instant, so any partition of time adds up to the whole.
 *  @param from,to  unix time [s]     @param mains  temperature of the cold feed [K] */
export function tapDemand(
	draws: readonly Draw[],
	from: number,
	to: number,
	mains: number,
): readonly TapDemand[] {
	const demands: TapDemand[] = [];
	for (const draw of draws) {
		if (draw.time >= to) continue;
		const whole = drawMass(draw, mains);
		const duration = drawDuration(draw, mains);
		const mass = whole * (shareBy(draw, duration, to) - shareBy(draw, duration, from));
		if (mass > 0) demands.push({ mass, temperature: draw.temperature });
	}
	return demands;
}

/** Share of a draw that is over by an instant, 0–1. */
function shareBy(draw: Draw, duration: number, time: number): number {
	if (time <= draw.time) return 0;
	const elapsed = time - draw.time;
	return elapsed < duration ? elapsed / duration : 1;
}
