import { ICE_POINT } from "../constants.ts";
import type { Fluid } from "./fluid.ts";
import { petroleumOil } from "./petroleum-oil.ts";

/** ISO 3448 viscosity grade: the kinematic viscosity at 40 °C in mm²/s. */
export type MineralOilGrade = 22 | 32 | 46 | 68;

interface Grade {
	readonly at100C: number; // kinematic viscosity for a viscosity index near 100 [m²/s]
	readonly densityAt15C: number; // [kg/m³]
	readonly pourPoint: number; // [K]
	readonly flashPoint: number; // open cup [K]
}

// Viscosity at 100 °C ± 3 % and density ± 1.5 %: generic paraffinic oils with a viscosity index of 95–105 (value from memory).
// Pour point (highest) and flash point (lowest) allowed: DIN 51524-2 (value from memory).
const GRADES: Readonly<Record<MineralOilGrade, Grade>> = {
	22: { at100C: 4.3e-6, densityAt15C: 865, pourPoint: ICE_POINT - 21, flashPoint: ICE_POINT + 165 },
	32: { at100C: 5.4e-6, densityAt15C: 870, pourPoint: ICE_POINT - 18, flashPoint: ICE_POINT + 175 },
	46: { at100C: 6.8e-6, densityAt15C: 875, pourPoint: ICE_POINT - 15, flashPoint: ICE_POINT + 185 },
	68: { at100C: 8.7e-6, densityAt15C: 880, pourPoint: ICE_POINT - 12, flashPoint: ICE_POINT + 195 },
};

const HOTTEST = ICE_POINT + 250; // [K] upper end of the extrapolated correlations
const BULK = ICE_POINT + 180; // [K]
const FILM = ICE_POINT + 210; // [K]

const DIN_4754 = {
	basis: "standard",
	source: "DIN 4754",
	confirmed: false, // practice under the standard
} as const;
const DIN_51524 = {
	basis: "standard",
	source: "DIN 51524-2",
	confirmed: false,
} as const;

/** Mineral oil of an ISO viscosity grade, as used in hydraulics and heat transfer, viscosity index near 100.
 *  Range   pour point to 250 °C; cp and k published to 200 °C
 *  Error   of a real oil against this generic one: viscosity 10 % at 40–100 °C (the grade's own band), cp 5 %, k 12 %,
 *          density 1.5 %
 *  Source  ISO 3448 (grades); properties: see `petroleumOil`; limits: see each limit
 *  Check   tests/reference/oil.reference.ts */
export function mineralOil(grade: MineralOilGrade): Fluid {
	const { at100C, densityAt15C, flashPoint, pourPoint } = GRADES[grade];
	return petroleumOil({
		id: `mineralOilVg${grade}`,
		name: `Mineral oil ISO VG ${grade}`,
		densityAt15C,
		cold: { temperature: ICE_POINT + 40, kinematicViscosity: grade * 1e-6 },
		hot: { temperature: ICE_POINT + 100, kinematicViscosity: at100C },
		range: [pourPoint, HOTTEST],
		limits: {
			bulk: {
				temperature: BULK,
				reason:
					"oxidation in an open-vented loop, upper end of 150–180 °C; in a closed loop, heat-transfer oil bears about 300 °C",
				...DIN_4754,
			},
			film: {
				temperature: FILM,
				reason: "30 K above the bulk limit, within the usual 20–40 K",
				...DIN_4754,
			},
			flash: {
				temperature: flashPoint,
				reason: "lowest open-cup flash point that the standard allows for the grade",
				...DIN_51524,
			},
			coldest: {
				temperature: pourPoint,
				reason: "highest pour point that the standard allows for the grade",
				...DIN_51524,
			},
		},
	});
}
