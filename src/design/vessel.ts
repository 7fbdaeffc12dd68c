import type { OilVessel } from "../instant/oil-vessel.ts";
import { type Designed, statedOr } from "./assumption.ts";
import { designVesselCoil, type SparseCoil } from "./coil.ts";
import { practice } from "./grounds.ts";
import { bulkLimit, bulkLimitGrounds } from "./loop.ts";

/** A small vessel of oil. Its height follows from volume and diameter. */
export interface SparseVessel extends Omit<OilVessel, "height" | "diameter" | "limit" | "coil"> {
	readonly diameter?: number | undefined; // inside [m]
	readonly limit?: number | undefined; // of the oil in bulk [K]
	readonly coil: SparseCoil;
}

const SLENDERNESS = 1.5; // [-] height over diameter; common practice, no source

export function designVessel(vessel: SparseVessel): Designed<OilVessel> {
	const { fill, fluid } = vessel;
	const across = statedOr(
		vessel.diameter,
		"vessel.diameter",
		Math.cbrt((4 * fill) / (Math.PI * SLENDERNESS)),
		practice(`follows from the volume at a height of ${SLENDERNESS} diameters`),
	);
	const diameter = across.design;
	const limit = statedOr(vessel.limit, "vessel.limit", bulkLimit(fluid), bulkLimitGrounds(fluid));
	const coil = designVesselCoil(vessel.coil, { fill, diameter });
	return {
		design: {
			...vessel,
			diameter,
			height: (4 * fill) / (Math.PI * diameter * diameter),
			limit: limit.design,
			coil: coil.design,
		},
		assumed: [...across.assumed, ...limit.assumed, ...coil.assumed],
	};
}
