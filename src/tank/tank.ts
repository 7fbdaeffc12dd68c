import type { Insulation } from "../heat/insulation.ts";

/** An upright cylinder of water in equal layers. Heights are shares of the filled height, 0 at the bottom. */
export interface Tank {
	readonly fill: number; // volume of water [m³], at the start temperature
	readonly height: number; // [m]
	readonly diameter: number; // [m]
	readonly wallThickness: number; // [m]
	readonly wallConductivity: number; // [W/mK]
	readonly wallHeatCapacity: number; // volumetric [J/m³K]
	readonly insulation: Insulation;
	readonly fittingsFactor: number; // multiplies the shell's loss, for pipes and feet, ≥ 1
	readonly inletHeight: number;
	readonly outletHeight: number;
	readonly startTemperatures: Float64Array; // [N] top first [K]
	readonly reliefPressure: number; // gauge pressure [Pa]; 0 when vented
	readonly surroundings: Surroundings;
}

/** Location of a tank; indoors it is in still air of constant temperature [K]. */
export type Surroundings =
	| { readonly kind: "outdoors" }
	| { readonly kind: "indoors"; readonly temperature: number };

/** Air around a tank. */
export interface TankAir {
	readonly ambient: number; // [K]
	readonly wind: number; // [m/s]
}

/** Air around a tank for given outdoor air. */
export function airAround(surroundings: Surroundings, ambient: number, wind: number): TankAir {
	switch (surroundings.kind) {
		case "outdoors":
			return { ambient, wind };
		case "indoors":
			return { ambient: surroundings.temperature, wind: 0 };
		default:
			return surroundings satisfies never;
	}
}

/** Whether a tank is exposed to rain and wind. */
export function standsOutdoors({ kind }: Surroundings): boolean {
	switch (kind) {
		case "outdoors":
			return true;
		case "indoors":
			return false;
		default:
			return kind satisfies never;
	}
}
