import { DomainError, requireWithin } from "../errors.ts";
import { water } from "../fluids/water.ts";
import type { Draw } from "./draw.ts";

/** Water demand at the tap. */
export interface TapDemand {
	readonly mass: number; // [kg]
	readonly temperature: number; // wanted [K]
}

/** Mass of a draw at the tap [kg].
 *  A volume refers to the wanted temperature; an amount of heat is relative to the mains. DomainError contradictory for heat
 *  from mains that is not colder than the wanted temperature. */
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
			"the mains is not colder than the temperature of the draw",
			{
				temperature: draw.temperature,
				mains,
			},
		);
	return energy / rise;
}

/** Duration of a draw at its flow [s]. */
export function drawDuration(draw: Draw, mains: number): number {
	requireWithin("tap.flow", draw.flow, Number.MIN_VALUE, Number.MAX_VALUE);
	return drawMass(draw, mains) / (draw.flow * water.density(draw.temperature));
}

/** Demands of the draws between two instants, one entry for each draw in that time.
 *  Each entry is the difference of the cumulative demands at both instants, so the demands of any partition of time add up.
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
		const total = drawMass(draw, mains);
		const duration = drawDuration(draw, mains);
		const mass = total * (shareBy(draw, duration, to) - shareBy(draw, duration, from));
		if (mass > 0) demands.push({ mass, temperature: draw.temperature });
	}
	return demands;
}

/** Share of a draw that is complete at an instant, 0–1. */
function shareBy(draw: Draw, duration: number, time: number): number {
	if (time <= draw.time) return 0;
	const elapsed = time - draw.time;
	return elapsed < duration ? elapsed / duration : 1;
}
