import { type Pipe, WALL_MATERIALS, type WallMaterialId } from "../../src/index.ts";
import { toSi } from "../wire/units.ts";
import { coreInsulation } from "./insulation.ts";

/** A pipe in wire units. */
interface WirePipe {
	readonly lengthM: number;
	readonly innerDiameterMm: number;
	readonly outerDiameterMm: number;
	readonly material: WallMaterialId;
	readonly insulation: Parameters<typeof coreInsulation>[0];
}

/** A pipe for the core. */
export function corePipe(pipe: WirePipe): Pipe {
	const metal = WALL_MATERIALS[pipe.material];
	return {
		length: pipe.lengthM,
		innerDiameter: toSi.millimetres(pipe.innerDiameterMm),
		outerDiameter: toSi.millimetres(pipe.outerDiameterMm),
		wallConductivity: metal.conductivity,
		wallHeatCapacity: metal.heatCapacity,
		roughness: metal.roughness,
		insulation: coreInsulation(pipe.insulation),
	};
}
