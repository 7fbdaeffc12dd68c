import { mineralOil } from "../../src/fluids/mineral-oil.ts";
import { petroleumOil } from "../../src/fluids/petroleum-oil.ts";
import { vegetableOil } from "../../src/fluids/vegetable-oil.ts";
import type { ReferenceRow, ReferenceSet, Tolerance } from "./reference.ts";

const INCROPERA =
	"Incropera & DeWitt, Fundamentals of Heat and Mass Transfer, Table A.5, engine oil (unused)";
const CRAGOE = "Cragoe, Thermal properties of petroleum products, NBS Misc. Publ. 97, 1929";
const WALTHER =
	"ASTM D341, log log(ν + 0.7) = A − B log T, through 32 mm²/s at 40 °C and 5.4 mm²/s at 100 °C";

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

const anyLimit = {
	temperature: 500,
	reason: "not used by this check",
	basis: "commonPractice",
	confirmed: true,
} as const;
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
	tolerance: (temperature: number) => Tolerance,
): readonly ReferenceRow[] =>
	rows.map((row) => ({
		name: `${row[0]} K`,
		published: row[column],
		computed: () => computed(row[0]),
		tolerance: tolerance(row[0]),
		source: INCROPERA,
		kind: "print",
	}));

const gravity87 = oilOf(0.87 * 999.1, [313.15, 32], [373.15, 5.4]);
// [°C, heat capacity by (0.388 + 0.00045 t)/√s Btu/lb°F with t in °F, conductivity]
const CRAGOE_ROWS = [
	[20, 1.879, 0.1333],
	[40, 1.9517, 0.1318],
	[60, 2.0244, 0.1303],
	[100, 2.1698, 0.1274],
	[150, 2.3516, 0.1238],
	[200, 2.5334, 0.1202],
] as const;

const vg32 = mineralOil(32);

export const sets: readonly ReferenceSet[] = [
	{
		quantity: "Density of engine oil",
		unit: "kg/m³",
		role: "check",
		rows: engineRows(
			ENGINE_OIL.filter(([t]) => t !== 290),
			1,
			engineOil.density,
			() => ({
				relative: 0.015,
				basis: "claim",
				reason: "one expansion for all lubricating oils; what the model allows itself of a real oil",
			}),
		),
	},
	{
		quantity: "Heat capacity of engine oil",
		unit: "kJ/kgK",
		role: "check",
		rows: engineRows(
			ENGINE_OIL,
			2,
			(t) => engineOil.heatCapacity(t) / 1000,
			() => ({
				relative: 0.1,
				basis: "practice",
				reason: "one line for all petroleum oils; a tenth among oils (common practice, no source)",
			}),
		),
	},
	{
		quantity: "Thermal conductivity of engine oil",
		unit: "W/mK",
		role: "check",
		rows: engineRows(ENGINE_OIL, 4, engineOil.conductivity, () => ({
			relative: 0.15,
			basis: "practice",
			reason: "one line for all petroleum oils; 15 % among oils and tables (common practice, no source)",
		})),
	},
	{
		quantity: "Kinematic viscosity of engine oil through two points",
		unit: "mm²/s",
		role: "check",
		rows: engineRows(
			ENGINE_OIL.filter(([t]) => t > 280 && t !== 300 && t !== 400),
			3,
			(t) => (1e6 * engineOil.viscosity(t)) / engineOil.density(t),
			() => ({
				relative: 0.1,
				basis: "source",
				reason: "the chart promises a straight line, not how straight; ISO 3448 grades are ± 10 % wide",
			}),
		),
	},
	{
		quantity: "Kinematic viscosity of engine oil 27 K below the lower point",
		unit: "mm²/s",
		role: "sanity",
		why: "far outside the two points, where this oil no longer follows the chart",
		rows: engineRows(
			ENGINE_OIL.filter(([t]) => t === 273),
			3,
			(t) => (1e6 * engineOil.viscosity(t)) / engineOil.density(t),
			() => ({ relative: 0.5, basis: "practice", reason: "within a half (common practice, no source)" }),
		),
	},
	{
		quantity: "Swelling of engine oil",
		unit: "%",
		role: "check",
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
			tolerance: { absolute: 1.5, basis: "claim", reason: "density is held to 1.5 %" },
			source: `ratio of densities read between the rows of ${INCROPERA}`,
			kind: "formula",
		})),
	},
	{
		quantity: "Heat capacity of mineral oil, specific gravity 0.87",
		unit: "kJ/kgK",
		role: "check",
		rows: CRAGOE_ROWS.map(([celsius, published]) => ({
			name: `${celsius} °C`,
			published,
			computed: () => gravity87.heatCapacity(celsius + 273.15) / 1000,
			tolerance: { absolute: 5.1e-5, basis: "digits", reason: "half of the fourth decimal" },
			source: `${CRAGOE}, the form of which a public copy prints`,
			kind: "formula",
		})),
	},
	{
		quantity: "Thermal conductivity of mineral oil, specific gravity 0.87",
		unit: "W/mK",
		role: "check",
		rows: CRAGOE_ROWS.map(([celsius, , published]) => ({
			name: `${celsius} °C`,
			published,
			computed: () => gravity87.conductivity(celsius + 273.15),
			tolerance: { absolute: 5e-5, basis: "digits", reason: "half of the fourth decimal" },
			source: `${CRAGOE}; that it divides by the gravity, not by its root as public copies do, is from memory`,
			kind: "memory",
		})),
	},
	{
		quantity: "Kinematic viscosity of mineral oil ISO VG 32",
		unit: "mm²/s",
		role: "check",
		rows: (
			[
				[0, 336, 0.5],
				[20, 86, 0.5],
				[60, 15.2, 0.05],
				[80, 8.5, 0.05],
				[120, 3.7, 0.05],
				[150, 2.4, 0.05],
				[200, 1.4, 0.05],
			] as const
		).map(([celsius, published, absolute]) => ({
			name: `${celsius} °C`,
			published,
			computed: () => (1e6 * vg32.viscosity(celsius + 273.15)) / vg32.density(celsius + 273.15),
			tolerance: { absolute, basis: "digits", reason: "half of the last digit" },
			source: WALTHER,
			kind: "formula",
		})),
	},
	{
		quantity: "Viscosity of vegetable oil",
		unit: "Pa s",
		role: "check",
		rows: [
			{
				name: "38 °C, middle of the edible oils measured",
				published: (0.0398 + 0.0296) / 2,
				computed: () => vegetableOil.viscosity(311.15),
				tolerance: {
					absolute: (0.0398 - 0.0296) / 2,
					basis: "source",
					reason: "spread from walnut oil to rice bran oil",
				},
				source:
					"Diamante & Lan, Absolute viscosities of vegetable oils at different temperatures, J. Food Process., 2014, 234583, abstract",
				kind: "print",
			},
		],
	},
];
