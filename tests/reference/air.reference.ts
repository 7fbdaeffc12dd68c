import { air } from "../../src/fluids/air.ts";
import type { ReferenceSet } from "./reference.ts";

const SOURCE =
	"Incropera & DeWitt, Fundamentals of Heat and Mass Transfer, Table A.4, air at atmospheric pressure";

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
	relative: number,
	reason: string,
) =>
	AIR.map((row) => ({
		name: `${row[0]} K`,
		published: row[column],
		computed: () => computed(row[0]),
		tolerance: { relative, reason },
		source: SOURCE,
		fromMemory: true,
	}));

export const sets: readonly ReferenceSet[] = [
	{
		quantity: "Kinematic viscosity of air",
		unit: "m²/s",
		rows: rowsOf(
			1,
			(t) => air(t, 100_000).kinematicViscosity,
			0.013,
			"Sutherland's formula, 1.2 % low at 500 K",
		),
	},
	{
		quantity: "Thermal conductivity of air",
		unit: "W/mK",
		rows: rowsOf(2, (t) => air(t, 101_325).conductivity, 0.01, "sources of air data differ by 1 %"),
	},
	{
		quantity: "Prandtl number of air",
		unit: "-",
		rows: rowsOf(
			3,
			(t) => air(t, 101_325).prandtl,
			0.015,
			"viscosity and conductivity differ by 1 % each; theirs cancel in part",
		),
	},
	{
		quantity: "Heat capacity of air",
		unit: "J/kgK",
		rows: rowsOf(4, (t) => air(t, 101_325).heatCapacity, 0.003, "ideal gas, 0.2 % below air at 1 bar"),
	},
];
