import { ICE_POINT } from "../constants.ts";
import { polynomial } from "../numeric/polynomial.ts";
import { COMMON_PRACTICE } from "../provenance.ts";
import type { Fluid } from "./fluid.ts";
import { heatContent } from "./heat-content.ts";
import { boundedScaled } from "./temperature-scale.ts";

/** Propylene glycol in the mixture, per cent by volume. */
export type GlycolPercent = 25 | 40 | 50;

interface Mixture {
	readonly freezingPoint: number; // first ice crystals [K]
	readonly coldest: number; // of the table [K]
	readonly density: readonly number[]; // [kg/m³]
	readonly heatCapacity: readonly number[]; // [J/kgK]
	readonly conductivity: readonly number[]; // [W/mK]
	readonly logViscosity: readonly number[]; // ln of [Pa s]
}

// Fits against x = (T − 273.15 K)/100 K to ASHRAE Handbook Fundamentals (2001) ch. 21, tables of inhibited propylene
// glycol; 25 % is interpolated between the columns of 20, 30 and 40 %. Largest deviation from the table: density 0.01 %, heat
// capacity 0.02 %, conductivity 0.2 %, viscosity 0.9 %.
const MIXTURES: Readonly<Record<GlycolPercent, Mixture>> = {
	25: {
		freezingPoint: ICE_POINT - 10, // −10.2 °C at 25.3 %
		coldest: ICE_POINT,
		density: [1031.23, -31.7663, -25.375],
		heatCapacity: [3863.56, 246.873],
		conductivity: [0.443136, 0.136191, -0.065261],
		logViscosity: [-5.2303, -4.3719, 3.00708, -1.382, 0.331962],
	},
	40: {
		freezingPoint: ICE_POINT - 21.5, // −21.1 °C at 39.6 %, −22.1 °C at 40.6 %
		coldest: ICE_POINT - 15,
		density: [1045.12, -39.2633, -25.7179],
		heatCapacity: [3635.73, 330.052],
		conductivity: [0.384773, 0.0954453, -0.0484178],
		logViscosity: [-4.39248, -5.828, 4.67752, -2.38844, 0.605425],
	},
	50: {
		freezingPoint: ICE_POINT - 33.5, // −33.5 °C at 49.9 %
		coldest: ICE_POINT - 25,
		density: [1052.7, -44.0404, -25.6644],
		heatCapacity: [3454.71, 385.902],
		conductivity: [0.349441, 0.0710688, -0.0386168],
		logViscosity: [-3.99503, -5.89945, 4.46709, -2.31044, 0.597004],
	},
};

const HOTTEST = ICE_POINT + 100; // [K] end of the table
const LEAST_BURST_PROTECTION = 30; // [% by volume] below it a hard frost can still burst pipes; common practice, no source

/** Water with inhibited propylene glycol, per cent by volume.
 *  Range   0 (25 %), −15 (40 %) or −25 °C (50 %) to 100 °C, the range of the table; end values beyond
 *  Error   density 0.01 %, cp 0.02 %, conductivity 0.2 %, viscosity 0.9 % of the table
 *  Source  ASHRAE Handbook Fundamentals (2001) ch. 21, properties of aqueous propylene glycol
 *  Check   the table itself   tests/reference/glycol.reference.ts */
export function propyleneGlycol(percent: GlycolPercent): Fluid {
	const mixture = MIXTURES[percent];
	const range = [mixture.coldest, HOTTEST] as const;
	const scaled = (temperature: number) => boundedScaled(temperature, range[0], range[1]);
	return {
		id: `propyleneGlycol${percent}`,
		family: "glycol",
		name: `Propylene glycol ${percent} % by volume in water`,
		basis: "handbook",
		source: "ASHRAE Handbook Fundamentals (2001) ch. 21, aqueous propylene glycol",
		confirmed: true,
		range,
		potable: false, // of low toxicity, but the inhibitors are not fit for drinking
		freezes: percent < LEAST_BURST_PROTECTION,
		density: (temperature) => polynomial(mixture.density, scaled(temperature)),
		conductivity: (temperature) => polynomial(mixture.conductivity, scaled(temperature)),
		viscosity: (temperature) => Math.exp(polynomial(mixture.logViscosity, scaled(temperature))),
		...heatContent(mixture.heatCapacity, range),
		limits: {
			bulk: {
				temperature: ICE_POINT + 120,
				reason: "glycol and inhibitors age fast above it",
				...COMMON_PRACTICE,
			},
			film: { temperature: ICE_POINT + 150, reason: "30 K above the bulk limit", ...COMMON_PRACTICE },
			coldest: {
				temperature: mixture.freezingPoint,
				reason: "first ice crystals",
				basis: "handbook",
				source: "ASHRAE Handbook Fundamentals (2001) ch. 21",
				confirmed: true,
			},
		},
	};
}
