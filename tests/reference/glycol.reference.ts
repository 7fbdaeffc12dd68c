import { propyleneGlycol } from "../../src/fluids/glycol.ts";
import type { ReferenceRow, ReferenceSet } from "./reference.ts";

const SOURCE = "ASHRAE Handbook Fundamentals, 2001, ch. 21, aqueous solutions of inhibited propylene glycol";

// [°C, density, heat capacity J/kgK, conductivity W/mK, viscosity mPa s]
const FORTY = [
	[-15, 1050.43, 3586, 0.369, 33.22],
	[0, 1045.12, 3636, 0.385, 12.37],
	[20, 1036.24, 3702, 0.402, 4.57],
	[40, 1025.3, 3768, 0.415, 2.21],
	[60, 1012.3, 3834, 0.425, 1.3],
	[80, 997.25, 3900, 0.43, 0.88],
	[100, 980.14, 3966, 0.432, 0.66],
] as const;
const FIFTY = [
	[-25, 1062.11, 3358, 0.329, 110.59],
	[0, 1052.71, 3455, 0.349, 18.4],
	[20, 1042.87, 3532, 0.362, 6.65],
	[40, 1030.98, 3609, 0.372, 3.11],
	[60, 1017.04, 3686, 0.378, 1.75],
	[80, 1001.05, 3763, 0.382, 1.12],
	[100, 983.0, 3841, 0.382, 0.79],
] as const;
// Mean of the columns of 20 and 30 %, geometric for the viscosity: near 25 %, not on it
const TWENTY_FIVE = [
	[0, (1025.84 + 1036.24) / 2, (3929 + 3793) / 2, (0.464 + 0.423) / 2, Math.sqrt(4.05 * 7.08)],
	[20, (1019.01 + 1028.35) / 2, (3973 + 3848) / 2, (0.492 + 0.445) / 2, Math.sqrt(2.02 * 3.06)],
	[60, (999.31 + 1006.44) / 2, (4060 + 3958) / 2, (0.529 + 0.475) / 2, Math.sqrt(0.78 * 1.01)],
	[100, (971.56 + 976.36) / 2, (4147 + 4068) / 2, (0.544 + 0.485) / 2, Math.sqrt(0.43 * 0.53)],
] as const;

const TABLES = [
	{ percent: 25, rows: TWENTY_FIVE, slack: 1 },
	{ percent: 40, rows: FORTY, slack: 0 },
	{ percent: 50, rows: FIFTY, slack: 0 },
] as const;

// [fit against the table, and how far the mean of two columns lies from 25 %], relative
const TOLERANCES = {
	density: [2e-4, 4e-4],
	heatCapacity: [3e-4, 1e-3],
	conductivity: [2e-3, 6e-3],
	viscosity: [0.01, 0.02],
} as const;

const fitOf = (
	property: keyof typeof TOLERANCES,
	column: 1 | 2 | 3 | 4,
	quantity: string,
	unit: string,
	factor: number,
): ReferenceSet => ({
	quantity: `${quantity} of propylene glycol in water, its table`,
	unit,
	role: "fit",
	why: "the polynomials were fitted to this table",
	rows: TABLES.flatMap(({ percent, rows, slack }) =>
		rows.map(
			(row): ReferenceRow => ({
				name: `${percent} % by volume, ${row[0]} °C`,
				published: row[column],
				computed: () => propyleneGlycol(percent)[property](row[0] + 273.15) * factor,
				tolerance: {
					relative: TOLERANCES[property][slack],
					basis: "claim",
					reason: slack
						? "mean of the columns of 20 and 30 % for 25 %"
						: "error of the fit, and the printed digits",
				},
				source: SOURCE,
				kind: "print",
			}),
		),
	),
});

// Uninhibited glycol of the same share by volume, 25.7, 40.9 and 50.9 % by mass, from the densities of its parts at 20 °C
const MELINDER =
	"Melinder, Properties of Secondary Working Fluids, IIR 2010, with the coefficients that a public copy prints";
// [% by volume, °C, density, heat capacity J/kgK, conductivity W/mK, viscosity mPa s]
const UNINHIBITED = [
	[25, 0, 1026.6, 3863, 0.4466, 5.714],
	[25, 20, 1019.9, 3912, 0.4645, 2.512],
	[25, 40, 1010.4, 3961, 0.4822, 1.382],
	[25, 60, 998.8, 4009, 0.4994, 0.893],
	[25, 80, 985.7, 4054, 0.5157, 0.638],
	[40, 0, 1043.2, 3626, 0.3843, 12.422],
	[40, 20, 1033.0, 3692, 0.3965, 4.538],
	[40, 40, 1020.6, 3757, 0.4092, 2.201],
	[40, 60, 1006.7, 3821, 0.4222, 1.312],
	[40, 80, 992.0, 3884, 0.4355, 0.892],
	[50, 0, 1051.6, 3435, 0.3464, 19.917],
	[50, 20, 1039.6, 3513, 0.3558, 6.616],
	[50, 40, 1025.8, 3591, 0.3657, 3.0],
	[50, 60, 1010.8, 3669, 0.3759, 1.703],
	[50, 80, 995.1, 3746, 0.3866, 1.111],
] as const;

const checkOf = (
	property: keyof typeof TOLERANCES,
	column: 2 | 3 | 4 | 5,
	quantity: string,
	unit: string,
	factor: number,
	relative: number,
): ReferenceSet => ({
	quantity: `${quantity} of propylene glycol in water`,
	unit,
	role: "check",
	rows: UNINHIBITED.map(
		(row): ReferenceRow => ({
			name: `${row[0]} % by volume, ${row[1]} °C`,
			published: row[column],
			computed: () => propyleneGlycol(row[0])[property](row[1] + 273.15) * factor,
			tolerance: {
				relative,
				basis: "practice",
				reason:
					"other measurements, of glycol without inhibitors, which make up some per cent (common practice, no source)",
			},
			source: MELINDER,
			kind: "formula",
		}),
	),
});

export const sets: readonly ReferenceSet[] = [
	checkOf("density", 2, "Density", "kg/m³", 1, 0.01),
	checkOf("heatCapacity", 3, "Heat capacity", "J/kgK", 1, 0.02),
	checkOf("conductivity", 4, "Thermal conductivity", "W/mK", 1, 0.03),
	checkOf("viscosity", 5, "Viscosity", "mPa s", 1000, 0.1),
	fitOf("density", 1, "Density", "kg/m³", 1),
	fitOf("heatCapacity", 2, "Heat capacity", "J/kgK", 1),
	fitOf("conductivity", 3, "Thermal conductivity", "W/mK", 1),
	fitOf("viscosity", 4, "Viscosity", "mPa s", 1000),
];
