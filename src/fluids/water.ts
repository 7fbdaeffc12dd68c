import { derivative, polynomial } from "../numeric/polynomial.ts";
import type { Fluid } from "./fluid.ts";
import { heatContent } from "./heat-content.ts";
import { boundedScaled, SCALE } from "./temperature-scale.ts";

const LOW = 273.15; // [K]
const HIGH = 473.15; // [K]

// Least-squares fits to the IAPWS formulations at 101.325 kPa, above 100 °C at saturation; x = (T − 273.15 K)/100 K.
// The comment gives the largest deviation between 0 and 200 °C.
const DENSITY = [
	999.842674, 6.65565796, -87.754313, 81.3077445, -70.6660766, 39.8524123, -12.4912936, 1.61645425,
] as const; // [kg/m³] ± 0.003 %, IAPWS R7-97 region 1
const HEAT_CAPACITY = [
	4218.17114, -279.375333, 708.986546, -882.617446, 660.73797, -246.952467, 37.3547649,
] as const; // [J/kgK] ± 0.03 %, IAPWS R7-97 region 1
const CONDUCTIVITY = [0.556230404, 0.235347365, -0.151753765, 0.0443421015, -0.00717541996] as const; // [W/mK] ± 0.11 %, IAPWS R15-11
const LOG_VISCOSITY = [
	-6.32761201, -3.35403171, 2.65393227, -1.67010379, 0.620074687, -0.0954764276,
] as const; // ln of [Pa s]; viscosity ± 0.31 %, IAPWS R12-08
const DENSITY_SLOPE = derivative(DENSITY);

const scaled = (temperature: number) => boundedScaled(temperature, LOW, HIGH);

/** Volumetric expansion coefficient of water, −(dρ/dT)/ρ from the density fit of this file.
 *  @param temperature [K]     @returns expansion coefficient [1/K], negative below 4 °C
 *  Range   273.15–473.15 K, end values beyond
 *  Error   1.2e-6 1/K to 100 °C; above, 3 %, because it follows saturation instead of constant pressure
 *  Source  fit to IAPWS R7-97 region 1
 *  Check   IAPWS R7-97 at 101.325 kPa   tests/reference/water.reference.ts */
export function waterExpansion(temperature: number): number {
	const x = scaled(temperature);
	return -polynomial(DENSITY_SLOPE, x) / (SCALE * polynomial(DENSITY, x));
}

const END_OF_FIT = {
	temperature: HIGH,
	reason:
		"end of the property fit; boiling at the pressure of the loop comes first and is checked separately",
	basis: "derived",
	confirmed: true,
} as const;

/** Liquid water, 0–200 °C, at 101.325 kPa and above 100 °C at saturation.
 *  Error   density 0.003 %, heat capacity 0.03 %, conductivity 0.11 %, viscosity 0.31 % of the IAPWS formulations;
 *          pressure neglected: 10 bar raises the density by 0.05 %
 *  Source  IAPWS R7-97(2012), R12-08, R15-11
 *  Check   the same formulations, independently computed   tests/reference/water.reference.ts */
export const water: Fluid = {
	id: "water",
	family: "water",
	name: "Water",
	basis: "standard",
	source: "IAPWS R7-97(2012) region 1, R12-08 (viscosity) and R15-11 (conductivity)",
	confirmed: true,
	range: [LOW, HIGH],
	potable: true,
	freezes: true,
	density: (temperature) => polynomial(DENSITY, scaled(temperature)),
	conductivity: (temperature) => polynomial(CONDUCTIVITY, scaled(temperature)),
	viscosity: (temperature) => Math.exp(polynomial(LOG_VISCOSITY, scaled(temperature))),
	...heatContent(HEAT_CAPACITY, [LOW, HIGH]),
	limits: {
		bulk: END_OF_FIT,
		film: END_OF_FIT,
		coldest: {
			temperature: LOW,
			reason: "freezing point at 101.325 kPa",
			basis: "standard",
			source: "IAPWS R14-08", // 273.1525 K by the open library iapws
			confirmed: true,
		},
	},
};
