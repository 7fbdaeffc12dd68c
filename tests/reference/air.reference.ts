import { air } from "../../src/fluids/air.ts";
import type { ReferenceSet, Tolerance } from "./reference.ts";

const SOURCE =
	"Incropera & DeWitt, Fundamentals of Heat and Mass Transfer, Table A.4, air at atmospheric pressure (two public copies agree)";

// The table's density at 300 K, 1.1614 kg/m³, is that of 1 bar.
// [K, kinematic viscosity m²/s, conductivity W/mK, Prandtl number, heat capacity J/kgK]
const AIR = [
	[300, 15.89e-6, 0.0263, 0.707, 1007],
	[350, 20.92e-6, 0.03, 0.7, 1009],
	[400, 26.41e-6, 0.0338, 0.69, 1014],
	[500, 38.79e-6, 0.0407, 0.684, 1030],
] as const;

const rowsOf = (
	column: 1 | 2 | 3 | 4,
	computed: (temperature: number) => number,
	tolerance: Tolerance,
): ReferenceSet["rows"] =>
	AIR.map((row) => ({
		name: `${row[0]} K`,
		published: row[column],
		computed: () => computed(row[0]),
		tolerance,
		source: SOURCE,
		kind: "print",
	}));

/** At 60 °C this table and that of Çengel's example 7-5 (18.96e-6 m²/s, Pr 0.7202) lie so far apart. */
const textbooks = (relative: number): Tolerance => ({
	relative,
	basis: "source",
	reason: `two textbooks' tables of air lie that far apart at 60 °C: this one and that behind Çengel's example 7-5`,
});

export const sets: readonly ReferenceSet[] = [
	{
		quantity: "Kinematic viscosity of air",
		unit: "m²/s",
		role: "check",
		rows: rowsOf(1, (t) => air(t, 100_000).kinematicViscosity, textbooks(0.014)),
	},
	{
		quantity: "Thermal conductivity of air",
		unit: "W/mK",
		role: "check",
		rows: rowsOf(2, (t) => air(t, 101_325).conductivity, textbooks(0.025)),
	},
	{
		quantity: "Prandtl number of air",
		unit: "-",
		role: "check",
		rows: rowsOf(3, (t) => air(t, 101_325).prandtl, textbooks(0.025)),
	},
	{
		quantity: "Heat capacity of air",
		unit: "J/kgK",
		role: "check",
		rows: rowsOf(4, (t) => air(t, 101_325).heatCapacity, {
			relative: 0.003,
			basis: "source",
			reason: "an ideal gas; at 1 bar and 300 K air holds 0.2 % more (Lemmon et al. 2000), and four digits",
		}),
	},
	{
		quantity: "Heat capacity of air as an ideal gas",
		unit: "J/kgK",
		role: "fit",
		why: "the polynomial was fitted to this equation",
		rows: (
			[
				[200, 1002.6423],
				[250, 1003.2919],
				[300, 1005.0141],
				[400, 1013.5705],
				[500, 1029.6266],
				[700, 1075.0036],
				[900, 1121.0538],
				[1000, 1141.1751],
			] as const
		).map(([temperature, published]) => ({
			name: `${temperature} K`,
			published,
			computed: () => air(temperature, 101_325).heatCapacity,
			tolerance: { relative: 4e-4, basis: "claim", reason: "error of the fit" },
			source:
				"Lemmon, Jacobsen, Penoncello & Friend, J. Phys. Chem. Ref. Data 29 (2000) 331–385, table 12, as public implementations print it",
			kind: "formula",
		})),
	},
];
