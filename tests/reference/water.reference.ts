import { water, waterExpansion } from "../../src/fluids/water.ts";
import type { ReferenceRow, ReferenceSet } from "./reference.ts";

const THERMAL = "IAPWS R7-97(2012), region 1, at 101.325 kPa, by the open library iapws";
const SATURATED = "IAPWS R7-97(2012), region 1, at saturation, by the open library iapws";
const VISCOSITY = "IAPWS R12-08, Viscosity of ordinary water substance, by the open library iapws";
const CONDUCTIVITY =
	"IAPWS R15-11, Thermal conductivity of ordinary water substance, by the open library iapws";

// [°C, density, heat capacity kJ/kgK, conductivity, viscosity Pa s]
const PROPERTIES = [
	[0, 999.844, 4.21943, 0.555651, 1.79175e-3],
	[5, 999.97, 4.2049, 0.5678, 1.518e-3],
	[10, 999.7, 4.1954, 0.5788, 1.306e-3],
	[15, 999.1, 4.1891, 0.5888, 1.138e-3],
	[20, 998.21, 4.1848, 0.598, 1.002e-3],
	[30, 995.65, 4.18, 0.6144, 7.972e-4],
	[40, 992.22, 4.1786, 0.6285, 6.527e-4],
	[50, 988.05, 4.1796, 0.6406, 5.465e-4],
	[60, 983.21, 4.1828, 0.651, 4.66e-4],
	[70, 977.78, 4.1881, 0.6598, 4.036e-4],
	[80, 971.8, 4.1955, 0.667, 3.541e-4],
	[90, 965.32, 4.205, 0.6728, 3.142e-4],
	[95, 961.9, 4.2106, 0.6752, 2.971e-4],
	[120, 943.106, 4.24637, 0.682241, 2.32033e-4],
	[150, 917.007, 4.31027, 0.681015, 1.8261e-4],
	[180, 887.005, 4.40555, 0.671284, 1.50384e-4],
	[200, 864.668, 4.49401, 0.660027, 1.34587e-4],
] as const;

// [°C, expansion coefficient 1/K]
const EXPANSION = [
	[5, 1.6e-5],
	[10, 8.81e-5],
	[15, 1.509e-4],
	[20, 2.066e-4],
	[30, 3.029e-4],
	[40, 3.849e-4],
	[50, 4.574e-4],
	[60, 5.231e-4],
	[70, 5.841e-4],
	[80, 6.417e-4],
	[90, 6.97e-4],
	[95, 7.241e-4],
] as const;

// [from °C, to °C, enthalpy difference kJ/kg], from 21.12, 42.12, 63.08 … 376.99, 398.03 kJ/kg
const HEATING = [
	[5, 95, 398.03 - 21.12],
	[10, 60, 251.22 - 42.12],
	[15, 90, 376.99 - 63.08],
	[20, 40, 167.62 - 84.01],
	[30, 80, 334.99 - 125.83],
] as const;

const FITTED = "the polynomials were fitted to these formulations";

const kelvin = (celsius: number) => celsius + 273.15;
const thermalSource = (celsius: number) => (celsius > 100 ? SATURATED : THERMAL);
const rowsOf = (
	column: 1 | 2 | 3 | 4,
	computed: (temperature: number) => number,
	relative: number,
	reason: string,
	source: (celsius: number) => string,
): readonly ReferenceRow[] =>
	PROPERTIES.map((row) => ({
		name: `${row[0]} °C`,
		published: row[column],
		computed: () => computed(kelvin(row[0])),
		tolerance: { relative, basis: "claim", reason },
		source: source(row[0]),
		kind: "library",
	}));

export const sets: readonly ReferenceSet[] = [
	{
		quantity: "Density of water",
		unit: "kg/m³",
		role: "fit",
		why: FITTED,
		rows: rowsOf(1, water.density, 5e-5, "error of the fit 2e-5, and five printed digits", thermalSource),
	},
	{
		quantity: "Heat capacity of water",
		unit: "kJ/kgK",
		role: "fit",
		why: FITTED,
		rows: rowsOf(2, (t) => water.heatCapacity(t) / 1000, 4e-4, "error of the fit 3e-4", thermalSource),
	},
	{
		quantity: "Thermal conductivity of water",
		unit: "W/mK",
		role: "fit",
		why: FITTED,
		rows: rowsOf(3, water.conductivity, 1.2e-3, "error of the fit 1.1e-3", () => CONDUCTIVITY),
	},
	{
		quantity: "Viscosity of water",
		unit: "Pa s",
		role: "fit",
		why: FITTED,
		rows: rowsOf(4, water.viscosity, 3.5e-3, "error of the fit 3.1e-3", () => VISCOSITY),
	},
	{
		quantity: "Volumetric expansion of water",
		unit: "1/K",
		role: "fit",
		why: FITTED,
		rows: EXPANSION.map(([celsius, published]) => ({
			name: `${celsius} °C`,
			published,
			computed: () => waterExpansion(kelvin(celsius)),
			tolerance: { absolute: 1.3e-6, basis: "claim", reason: "slope of the density fit, 1.2e-6 1/K" },
			source: THERMAL,
			kind: "library",
		})),
	},
	{
		quantity: "Heat to warm water",
		unit: "kJ/kg",
		role: "fit",
		why: FITTED,
		rows: HEATING.map(([from, to, published]) => ({
			name: `${from} to ${to} °C`,
			published,
			computed: () => (water.enthalpy(kelvin(to)) - water.enthalpy(kelvin(from))) / 1000,
			tolerance: {
				relative: 3e-4,
				basis: "claim",
				reason: "heat capacity fit 3e-4; enthalpies printed to 0.01 kJ/kg",
			},
			source: THERMAL,
			kind: "library",
		})),
	},
	{
		quantity: "Heat to warm 100 litres of water",
		unit: "kWh",
		role: "fit",
		why: FITTED,
		rows: [
			{
				name: "15 to 60 °C, filled at 15 °C",
				published: 5.221,
				computed: () =>
					(0.1 * water.density(288.15) * (water.enthalpy(333.15) - water.enthalpy(288.15))) / 3.6e6,
				tolerance: {
					absolute: 0.002,
					basis: "claim",
					reason: "heat capacity fit 3e-4, and three printed decimals",
				},
				source: THERMAL,
				kind: "library",
			},
		],
	},
	{
		quantity: "Swelling of water",
		unit: "%",
		role: "fit",
		why: FITTED,
		rows: (
			[
				[60, 1.68],
				[90, 3.56],
			] as const
		).map(([to, published]) => ({
			name: `10 to ${to} °C`,
			published,
			computed: () => 100 * (water.density(283.15) / water.density(kelvin(to)) - 1),
			tolerance: { absolute: 0.008, basis: "claim", reason: "two printed decimals, and the density fit" },
			source: THERMAL,
			kind: "library",
		})),
	},
];
