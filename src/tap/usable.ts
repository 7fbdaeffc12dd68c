import { DomainError } from "../errors.ts";
import { water } from "../fluids/water.ts";
import type { TankModel } from "../tank/model.ts";

/** Water of a wanted temperature that the tank gives at the tap, mixed with mains [m³, counted at the wanted temperature].
 *  The layers leave in order from the outlet towards the inlet, unmixed, until the first that is colder than wanted;
 *  each makes M (h − h_mains)/(h_wanted − h_mains) of mixed water. The last one ends where a line through the layers' middles
 *  falls to the wanted temperature. Heat in the shell and water beyond the ports are left out.
 *  @param temperatures [N]  of the layers, top first [K]     @param wanted,mains  [K]
 *  Range   wanted above mains, else DomainError contradictory: such a tap needs no tank
 *  Error   a real draw mixes at the thermocline and gives 3–10 % less (common practice, no source)
 *  Source  after V40 of EN 16147 and Regulation (EU) 814/2013, Annex I(24): water at 40 °C of the same heat content
 *  Check   ideal V40, tests/reference/tap.reference.ts */
export function usableVolume(
	model: TankModel,
	temperatures: Float64Array,
	wanted: number,
	mains: number,
): number {
	const cold = water.enthalpy(mains);
	const rise = water.enthalpy(wanted) - cold;
	if (!(rise > 0))
		throw new DomainError(
			"contradictory",
			"tap.temperature",
			"usable water is counted above a mains that is as warm already",
			{
				wanted,
				mains,
			},
		);
	const towardsInlet = model.inletLayer < model.outletLayer ? -1 : 1;
	const cells = Math.abs(model.inletLayer - model.outletLayer) + 1;
	const along = Array.from(
		{ length: cells },
		(_, cell) => temperatures[model.outletLayer + towardsInlet * cell]!,
	);
	const depth = warmDepth(along, wanted);
	let mass = 0;
	for (let cell = 0; cell < depth; cell++) {
		const share = Math.min(1, depth - cell);
		mass += (share * model.layerMass * (water.enthalpy(Math.max(wanted, along[cell]!)) - cold)) / rise;
	}
	return mass / water.density(wanted);
}

/** How far the water from the outlet on is warm enough, in cells: to where a line through the cells' middles falls to `wanted`.
 *  So usable water grows steadily as a tank warms, and not cell by cell. */
function warmDepth(along: readonly number[], wanted: number): number {
	const cold = along.findIndex((temperature) => temperature < wanted);
	if (cold < 0) return along.length;
	if (cold === 0) return 0;
	const above = along[cold - 1]!;
	return cold - 0.5 + (above - wanted) / (above - along[cold]!);
}
