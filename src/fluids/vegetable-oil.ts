import { ICE_POINT } from "../constants.ts";
import { polynomial } from "../numeric/polynomial.ts";
import { COMMON_PRACTICE } from "../provenance.ts";
import type { Fluid } from "./fluid.ts";
import { heatContent } from "./heat-content.ts";
import { boundedScaled, SCALE } from "./temperature-scale.ts";
import { waltherLine, waltherViscosity } from "./walther.ts";

const LOW = ICE_POINT - 10; // [K]
const HIGH = ICE_POINT + 210; // [K]

// Against x = (T − 273.15 K)/100 K
const DENSITY = [933.4, -67] as const; // [kg/m³] ± 1 %: 920 at 20 °C, −0.67 per kelvin (value from memory)
const HEAT_CAPACITY = [1900, 270] as const; // [J/kgK] ± 5 %: 1.95 kJ/kgK at 20 °C, 2.4 at 180 °C (value from memory)
const CONDUCTIVITY = [0.1695, -0.0125] as const; // [W/mK] ± 5 %: 0.167 at 20 °C (value from memory)
const VISCOSITY = waltherLine(
	{ temperature: ICE_POINT + 40, kinematicViscosity: 34.5e-6 }, // ± 6 % (value from memory)
	{ temperature: ICE_POINT + 100, kinematicViscosity: 8e-6 }, // ± 5 % (value from memory)
);

const scaled = (temperature: number) => boundedScaled(temperature, LOW, HIGH);
const density = (temperature: number) => polynomial(DENSITY, scaled(temperature));

/** Edible oil such as rapeseed or sunflower oil, fresh and refined.
 *  Range   −10 to 210 °C, end values beyond; the thickening of used oil is not modelled
 *  Error   between kinds: density 1 %, cp 5 %, conductivity 5 %, viscosity 10 %
 *  Source  density and viscosity: Noureddini, Teoh & Clements, J. Am. Oil Chem. Soc. 69 (1992) 1184–1191; cp: Fasina &
 *          Colley, Int. J. Food Prop. 11 (2008) 738–746; conductivity: Hoffmann et al., Sol. Energy Mater. Sol. Cells
 *          178 (2018) 129–138 (rounded values, from memory)
 *  Check   viscosities of edible oils, Diamante & Lan (2014)   tests/reference/oil.reference.ts */
export const vegetableOil: Fluid = {
	id: "vegetableOil",
	family: "vegetableOil",
	name: "Vegetable oil",
	basis: "measured",
	source: "Noureddini et al. (1992), Fasina & Colley (2008), Hoffmann et al. (2018); rounded",
	confirmed: false,
	range: [LOW, HIGH],
	potable: false, // edible, but rancid oil would spoil drinking water
	freezes: false,
	density,
	conductivity: (temperature) => polynomial(CONDUCTIVITY, scaled(temperature)),
	viscosity: (temperature) =>
		waltherViscosity(VISCOSITY, ICE_POINT + SCALE * scaled(temperature)) * density(temperature),
	...heatContent(HEAT_CAPACITY, [LOW, HIGH]),
	limits: {
		bulk: { temperature: ICE_POINT + 180, reason: "usual frying temperature", ...COMMON_PRACTICE },
		film: {
			temperature: ICE_POINT + 210,
			reason: "smoke point of refined oils, within 160–230 °C",
			basis: "handbook",
			confirmed: false,
		},
		flash: {
			temperature: ICE_POINT + 300,
			reason: "lower end of 300–330 °C, open cup",
			basis: "handbook",
			confirmed: false,
		},
		coldest: {
			temperature: LOW,
			reason: "pour point of rapeseed and sunflower oil, on the safe side",
			basis: "handbook",
			confirmed: false,
		},
	},
};
