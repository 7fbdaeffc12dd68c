import { ICE_POINT } from "../constants.ts";

export type WallMaterialId =
	| "copper"
	| "stainlessSteel"
	| "steel"
	| "galvanisedSteel"
	| "aluminium"
	| "polyethylene";

/** What pipes, coils and tanks are made of. */
export interface WallMaterial {
	readonly name: string;
	readonly conductivity: number; // [W/mK]
	readonly heatCapacity: number; // volumetric [J/m³K]
	readonly roughness: number; // of a tube as sold, inside [m]
	readonly serviceLimit: number | undefined; // of a plastic, for good [K]; a metal outlasts every fluid here
	readonly source: string;
}

const THERMAL = "ISO 10456:2007, table 3 (values from memory)";
const MOODY = "roughness: Moody, Trans. ASME 66 (1944) 671–684 (as public copies quote it)";

/** Walls of the trade. A layer of zinc is too thin to count for heat; it counts for roughness and corrosion. */
export const WALL_MATERIALS: Readonly<Record<WallMaterialId, WallMaterial>> = {
	copper: {
		name: "copper",
		conductivity: 380,
		heatCapacity: 8900 * 380, // density × specific heat
		roughness: 1.5e-6,
		serviceLimit: undefined,
		source: `${THERMAL}; ${MOODY}, drawn tubing`,
	},
	stainlessSteel: {
		name: "austenitic stainless steel",
		conductivity: 17,
		heatCapacity: 7900 * 500,
		roughness: 1.5e-6,
		serviceLimit: undefined,
		source: `${THERMAL}; ${MOODY}, drawn tubing`,
	},
	steel: {
		name: "steel",
		conductivity: 50,
		heatCapacity: 7800 * 450,
		roughness: 4.6e-5,
		serviceLimit: undefined,
		source: `${THERMAL}; ${MOODY}, commercial steel`,
	},
	galvanisedSteel: {
		name: "galvanised steel",
		conductivity: 50,
		heatCapacity: 7800 * 450,
		roughness: 1.5e-4,
		serviceLimit: undefined,
		source: `${THERMAL}; ${MOODY}, galvanised iron`,
	},
	aluminium: {
		name: "aluminium alloy",
		conductivity: 160,
		heatCapacity: 2800 * 880,
		roughness: 1.5e-6,
		serviceLimit: undefined,
		source: `${THERMAL}; ${MOODY}, drawn tubing`,
	},
	polyethylene: {
		name: "high-density polyethylene",
		conductivity: 0.5,
		heatCapacity: 980 * 1800,
		roughness: 1.5e-6,
		serviceLimit: ICE_POINT + 60,
		source: `${THERMAL}; ${MOODY}, smooth drawn tubing; service limit: usual for vessels without pressure, ISO 4427 rates pipes to 40 °C (from memory)`,
	},
};
