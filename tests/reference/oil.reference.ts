import { mineralOil } from "../../src/fluids/mineral-oil.ts";
import { petroleumOil } from "../../src/fluids/petroleum-oil.ts";
import { vegetableOil } from "../../src/fluids/vegetable-oil.ts";
import type { ReferenceSet } from "./reference.ts";

const INCROPERA =
	"Incropera & DeWitt, Fundamentals of Heat and Mass Transfer, Table A.5, engine oil (unused)";
const CRAGOE =
	"Cragoe, Thermal properties of petroleum products, NBS Misc. Publ. 97, 1929, evaluated independently";
const WALTHER = "ASTM D341 through 32 mm²/s at 40 °C and 5.4 mm²/s at 100 °C, evaluated independently";

// [K, density, heat capacity kJ/kgK, kinematic viscosity mm²/s, conductivity W/mK]
const ENGINE_OIL = [
	[273, 899.1, 1.796, 4280, 0.147],
	[290, 890.0, 1.868, 1120, 0.145],
	[300, 884.1, 1.909, 550, 0.145],
	[310, 877.9, 1.951, 288, 0.145],
	[320, 871.8, 1.993, 161, 0.143],
	[330, 865.8, 2.035, 96.6, 0.141],
	[340, 859.9, 2.076, 61.7, 0.139],
	[350, 853.9, 2.118, 41.7, 0.138],
	[360, 847.8, 2.161, 29.7, 0.138],
	[370, 841.8, 2.206, 22.0, 0.137],
	[380, 836.0, 2.25, 16.9, 0.136],
	[390, 830.6, 2.294, 13.3, 0.135],
	[400, 825.1, 2.337, 10.6, 0.134],
	[420, 812.1, 2.427, 6.94, 0.133],
	[430, 806.5, 2.471, 5.83, 0.132],
] as const;

const anyLimit = { temperature: 500, source: "not used by this check" };
const oilOf = (densityAt15C: number, cold: [number, number], hot: [number, number]) =>
	petroleumOil({
		id: "check",
		name: "check",
		densityAt15C,
		cold: { temperature: cold[0], kinematicViscosity: cold[1] * 1e-6 },
		hot: { temperature: hot[0], kinematicViscosity: hot[1] * 1e-6 },
		range: [263.15, 523.15],
		limits: { bulk: anyLimit, film: anyLimit, coldest: anyLimit },
	});

// The table's density at 15 °C, and its viscosity at 300 and 400 K; all other rows are predictions
const engineOil = oilOf(890.6, [300, 550], [400, 10.6]);
const engineRows = (
	rows: readonly (typeof ENGINE_OIL)[number][],
	column: 1 | 2 | 3 | 4,
	computed: (temperature: number) => number,
	tolerance: (temperature: number) => { relative: number; reason: string },
) =>
	rows.map((row) => ({
		name: `${row[0]} K`,
		published: row[column],
		computed: () => computed(row[0]),
		tolerance: tolerance(row[0]),
		source: INCROPERA,
		fromMemory: false,
	}));

const gravity87 = oilOf(0.87 * 999.1, [313.15, 32], [373.15, 5.4]);
const CRAGOE_ROWS = [
	[20, 1.879, 0.1333],
	[40, 1.952, 0.1318],
	[60, 2.025, 0.1303],
	[100, 2.17, 0.1274],
	[150, 2.352, 0.1238],
	[200, 2.533, 0.1202],
] as const;

const vg32 = mineralOil(32);

export const sets: readonly ReferenceSet[] = [
	{
		quantity: "Density of engine oil",
		unit: "kg/m³",
		rows: engineRows(ENGINE_OIL, 1, engineOil.density, (t) => ({
			relative: t <= 350 ? 0.0035 : 0.009,
			reason: "one expansion coefficient for all lubricating oils; it swells this one 8 % too much",
		})),
	},
	{
		quantity: "Heat capacity of engine oil",
		unit: "kJ/kgK",
		rows: engineRows(
			ENGINE_OIL,
			2,
			(t) => engineOil.heatCapacity(t) / 1000,
			() => ({
				relative: 0.05,
				reason: "one line for all petroleum oils; Cragoe states 2–4 % (from memory)",
			}),
		),
	},
	{
		quantity: "Thermal conductivity of engine oil",
		unit: "W/mK",
		rows: engineRows(ENGINE_OIL, 4, engineOil.conductivity, () => ({
			relative: 0.12,
			reason: "Cragoe states 10 % (from memory), and lies 9–11 % below this table",
		})),
	},
	{
		quantity: "Kinematic viscosity of engine oil through two points",
		unit: "mm²/s",
		rows: engineRows(
			ENGINE_OIL.filter(([t]) => t !== 300 && t !== 400),
			3,
			(t) => (1e6 * engineOil.viscosity(t)) / engineOil.density(t),
			(t) =>
				t < 280
					? {
							relative: 0.32,
							reason: "27 K below the lower point, where this oil no longer follows the chart",
						}
					: { relative: 0.05, reason: "this oil against a straight line of the chart" },
		),
	},
	{
		quantity: "Swelling of engine oil",
		unit: "%",
		rows: (
			[
				[100, 5.7],
				[120, 7.2],
				[150, 9.6],
			] as const
		).map(([to, published]) => ({
			name: `20 to ${to} °C`,
			published,
			computed: () => 100 * (engineOil.density(293.15) / engineOil.density(to + 273.15) - 1),
			tolerance: { absolute: 0.8, reason: "density model within 0.8 % of the table at the hot end" },
			source: INCROPERA,
			fromMemory: false,
		})),
	},
	{
		quantity: "Heat capacity of mineral oil, specific gravity 0.87",
		unit: "kJ/kgK",
		rows: CRAGOE_ROWS.map(([celsius, published]) => ({
			name: `${celsius} °C`,
			published,
			computed: () => gravity87.heatCapacity(celsius + 273.15) / 1000,
			tolerance: { absolute: 0.0006, reason: "three printed decimals" },
			source: CRAGOE,
			fromMemory: true,
		})),
	},
	{
		quantity: "Thermal conductivity of mineral oil, specific gravity 0.87",
		unit: "W/mK",
		rows: CRAGOE_ROWS.map(([celsius, , published]) => ({
			name: `${celsius} °C`,
			published,
			computed: () => gravity87.conductivity(celsius + 273.15),
			tolerance: { absolute: 6e-5, reason: "four printed decimals" },
			source: CRAGOE,
			fromMemory: true,
		})),
	},
	{
		quantity: "Kinematic viscosity of mineral oil ISO VG 32",
		unit: "mm²/s",
		rows: (
			[
				[0, 336, 0.6],
				[20, 86, 0.6],
				[60, 15.2, 0.06],
				[80, 8.5, 0.06],
				[120, 3.7, 0.06],
				[150, 2.4, 0.06],
				[200, 1.4, 0.06],
			] as const
		).map(([celsius, published, absolute]) => ({
			name: `${celsius} °C`,
			published,
			computed: () => (1e6 * vg32.viscosity(celsius + 273.15)) / vg32.density(celsius + 273.15),
			tolerance: { absolute, reason: "half of the last printed digit" },
			source: WALTHER,
			fromMemory: true,
		})),
	},
	{
		quantity: "Viscosity of vegetable oil",
		unit: "Pa s",
		rows: [
			{
				name: "38 °C, middle of the edible oils measured",
				published: (0.0398 + 0.0296) / 2,
				computed: () => vegetableOil.viscosity(311.15),
				tolerance: { absolute: (0.0398 - 0.0296) / 2, reason: "spread from walnut oil to rice bran oil" },
				source:
					"Diamante & Lan, Absolute viscosities of vegetable oils at different temperatures, J. Food Process., 2014, 234583, abstract",
				fromMemory: false,
			},
		],
	},
];
