import { DomainError } from "../errors.ts";
import { water } from "../fluids/water.ts";
import type { TankModel } from "../tank/model.ts";

/** Volume of water at a wanted temperature that the tank delivers at the tap, mixed with mains [m³, at the wanted temperature].
 *  The layers leave in order from the outlet towards the inlet, unmixed, until the first that is colder than the wanted temperature;
 *  each yields M (h − h_mains)/(h_wanted − h_mains) of mixed water. The last one ends where a line through the centres of the layers
 *  reaches the wanted temperature. Heat in the shell and water beyond the ports are neglected.
 *  @param temperatures [N]  of the layers, top first [K]     @param wanted,mains  [K]
 *  Range   wanted above mains, else DomainError contradictory
 *  Error   a real draw mixes at the thermocline and yields 3–10 % less (common practice, no source)
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
			"the mains is not colder than the temperature of usable water",
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

/** Depth from the outlet, in cells, at which a line through the centres of the cells reaches `wanted`.
 *  This makes usable water a continuous function of temperature. */
function warmDepth(along: readonly number[], wanted: number): number {
	const cold = along.findIndex((temperature) => temperature < wanted);
	if (cold < 0) return along.length;
	if (cold === 0) return 0;
	const above = along[cold - 1]!;
	return cold - 0.5 + (above - wanted) / (above - along[cold]!);
}
