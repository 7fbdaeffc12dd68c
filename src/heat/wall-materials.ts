import { ICE_POINT } from "../constants.ts";
import type { Provenance } from "../provenance.ts";

export type WallMaterialId =
	| "copper"
	| "stainlessSteel"
	| "steel"
	| "galvanisedSteel"
	| "aluminium"
	| "polyethylene";

/** A material of pipes, coils and tanks. */
export interface WallMaterial extends Provenance {
	readonly name: string;
	readonly conductivity: number; // [W/mK]
	readonly heatCapacity: number; // volumetric [J/m³K]
	readonly roughness: number; // of the inside of a tube as sold [m]
	readonly serviceLimit: number | undefined; // of a plastic in continuous service [K]; a metal outlasts every fluid here
}

// Moody's roughness is as quoted in public copies.
const published = (tubing: string): Provenance => ({
	basis: "standard",
	source: `ISO 10456:2007, table 3; roughness: Moody, Trans. ASME 66 (1944) 671–684, ${tubing}`,
	confirmed: false, // the standard's values
});

/** Usual wall materials. A layer of zinc is too thin to affect heat transfer; it affects roughness and corrosion. */
export const WALL_MATERIALS: Readonly<Record<WallMaterialId, WallMaterial>> = {
	copper: {
		name: "copper",
		conductivity: 380,
		heatCapacity: 8900 * 380, // density × specific heat
		roughness: 1.5e-6,
		serviceLimit: undefined,
		...published("drawn tubing"),
	},
	stainlessSteel: {
		name: "austenitic stainless steel",
		conductivity: 17,
		heatCapacity: 7900 * 500,
		roughness: 1.5e-6,
		serviceLimit: undefined,
		...published("drawn tubing"),
	},
	steel: {
		name: "steel",
		conductivity: 50,
		heatCapacity: 7800 * 450,
		roughness: 4.6e-5,
		serviceLimit: undefined,
		...published("commercial steel"),
	},
	galvanisedSteel: {
		name: "galvanised steel",
		conductivity: 50,
		heatCapacity: 7800 * 450,
		roughness: 1.5e-4,
		serviceLimit: undefined,
		...published("galvanised iron"),
	},
	aluminium: {
		name: "aluminium alloy",
		conductivity: 160,
		heatCapacity: 2800 * 880,
		roughness: 1.5e-6,
		serviceLimit: undefined,
		...published("drawn tubing"),
	},
	polyethylene: {
		name: "high-density polyethylene",
		conductivity: 0.5,
		heatCapacity: 980 * 1800,
		roughness: 1.5e-6,
		serviceLimit: ICE_POINT + 60, // usual for vessels without pressure, ISO 4427 rates pipes to 40 °C (from memory)
		...published("smooth drawn tubing"),
	},
};
