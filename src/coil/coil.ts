/** A helical tube in the tank. */
export interface Coil {
	readonly innerDiameter: number; // [m]
	readonly outerDiameter: number; // [m]
	readonly length: number; // along the tube [m]
	readonly coilDiameter: number; // of the helix, centre to centre [m]
	readonly wallConductivity: number; // [W/mK]
	readonly wallHeatCapacity: number; // volumetric [J/m³K]
	readonly bottom: number; // height of its lowest turn, share of the tank's height
	readonly top: number; // height of its highest turn, share of the tank's height
	readonly gapResistance: number; // of a double wall, on its outer area [m²K/W]; 0 for a single wall
}
