import { water } from "../fluids/water.ts";
import { drawMass } from "./demand.ts";
import type { ProfileDraw } from "./profiles.ts";

/** Volume of water at a given temperature with the heat of a profile's day [m³, at that temperature].
 *  @param temperature  at the tap [K]     @param mains  of the cold feed [K]
 *  Check   five profiles at 40 and 60 °C, tests/reference/tap.reference.ts */
export function equivalentVolume(
	profile: readonly ProfileDraw[],
	temperature: number,
	mains: number,
): number {
	const energy = profile.reduce((sum, draw) => sum + draw.energy, 0);
	const demand = { kind: "energy", energy } as const;
	return drawMass({ time: 0, demand, temperature, flow: 0 }, mains) / water.density(temperature);
}
