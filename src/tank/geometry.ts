import { DomainError, requireWithin } from "../errors.ts";
import type { Tank } from "./tank.ts";

/** The shell of a tank: an upright cylinder closed by two flat ends, with insulation of uniform thickness. */
export interface ShellGeometry {
	readonly filledHeight: number; // [m]
	readonly crossSection: number; // of the water [m²]
	readonly innerArea: number; // wall and both ends [m²]
	readonly outerArea: number; // of the insulation, wall and both ends [m²]
	readonly outerDiameter: number; // of the insulation [m]
	readonly wallVolume: number; // of the shell material [m³]
	readonly wallConduction: number; // through the insulation of the cylinder, shape factor [m]; its area [m²] without insulation
	readonly endConduction: number; // of one end with its edge, likewise
}

const EDGE = 0.54; // [-] shape factor of an edge between two walls per length of edge, Langmuir, Adams & Meikle 1913
const ROUNDING = 1.001; // [-] allowed ratio of fill to volume, for rounded dimensions

/** Areas and conduction shape factors of a tank's shell.
 *  wall 2πH/ln(r₂/r₁), end πr₁²/t, edge 0.54·2πr₁, with r₁ outside the wall and r₂ outside the insulation of thickness t
 *  Range   fill within height × cross-section, else DomainError contradictory; the dry wall of a partly filled vessel belongs to the top layer
 *  Error   the edge factor was measured on plane walls thicker than a fifth of their sides; an edge carries about 5 % of the loss
 *  Source  Langmuir, Adams & Meikle, Trans. Am. Electrochem. Soc. 24 (1913) 53–76, as in Incropera 6e, table 4.1 */
export function shellGeometry(tank: Tank): ShellGeometry {
	requireWithin("tank.diameter", tank.diameter, 1e-3, 1e3);
	requireWithin("tank.height", tank.height, 1e-3, 1e3);
	requireWithin("tank.wallThickness", tank.wallThickness, 0, tank.diameter);
	requireWithin("tank.insulationThickness", tank.insulation.thickness, 0, 10);
	const inner = tank.diameter / 2;
	const crossSection = Math.PI * inner * inner;
	const filledHeight = tank.fill / crossSection;
	if (!(filledHeight > 0 && filledHeight <= tank.height * ROUNDING))
		throw new DomainError(
			"contradictory",
			"tank.fill",
			"the water does not fit the tank's height and diameter",
			{
				fill: tank.fill,
				vessel: crossSection * tank.height,
			},
		);
	const thickness = tank.insulation.thickness;
	const wall = inner + tank.wallThickness;
	const outer = wall + thickness;
	const innerArea = 2 * Math.PI * inner * tank.height + 2 * crossSection;
	const outerHeight = tank.height + 2 * (tank.wallThickness + thickness);
	return {
		filledHeight,
		crossSection,
		innerArea,
		outerArea: 2 * Math.PI * outer * (outerHeight + outer),
		outerDiameter: 2 * outer,
		wallVolume: innerArea * tank.wallThickness,
		wallConduction:
			thickness > 0
				? (2 * Math.PI * tank.height) / Math.log1p(thickness / wall)
				: 2 * Math.PI * wall * tank.height,
		endConduction:
			thickness > 0 ? (Math.PI * wall * wall) / thickness + EDGE * 2 * Math.PI * wall : Math.PI * wall * wall,
	};
}

/** Index of the layer at a height, top first; at a boundary the lower layer. Heights are shares of the filled height. */
export function layerAtHeight(height: number, layers: number): number {
	requireWithin("tank.portHeight", height, 0, 1);
	return Math.min(layers - 1, Math.floor((1 - height) * layers + 1e-9)); // 1e-9 assigns a rounded boundary to the lower layer
}

/** Share of each layer in the shell's loss, top first [N]: its ring of wall, plus the ends for the first and the last. */
export function shellLossShares(tank: Tank, layers: number): Float64Array {
	const shell = shellGeometry(tank);
	const total = shell.wallConduction + 2 * shell.endConduction;
	const filled = Math.min(1, shell.filledHeight / tank.height);
	const shares = new Float64Array(layers).fill((shell.wallConduction * filled) / layers / total);
	shares[0]! += (shell.endConduction + shell.wallConduction * (1 - filled)) / total;
	shares[layers - 1]! += shell.endConduction / total;
	return shares;
}
