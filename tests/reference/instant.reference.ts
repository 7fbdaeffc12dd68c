import { water } from "../../src/fluids/water.ts";
import { directFlow } from "../../src/instant/direct.ts";
import { heatedStream } from "../../src/instant/heated-stream.ts";
import { flowOf, powerOf } from "../../src/instant/steady.ts";
import { barePipe, honest, lineStarts, told, waterHeater } from "./published-dishes.ts";
import type { ReferenceRow, ReferenceSet } from "./reference.ts";

const COLD = 288.15; // 15 °C
const FAR = 500; // [K] a boiling point out of the way
const air = { ambient: 293.15, wind: 2, pressure: 101_325, altitude: 0.8 };

const noPipe = barePipe(0);

/** A heater that turns a beam of P W/m² into P watts. */
const ideal = {
	receiver: { kind: "efficiencyLine", opticalEfficiency: 1, lossCoefficient: 0, heldHeatCapacity: 1 },
	apertureArea: 1,
	absorbingArea: 1,
	lowestAltitude: 0,
	convection: 1,
} as const;

const MIXING = "first law: m = P/(cp ΔT) with cp 4186 J/kgK and a kilogram a litre";
const RISES = [20, 25, 30, 35] as const;
const TABLE: readonly (readonly [kilowatts: number, ...flows: number[]])[] = [
	[1, 0.72, 0.57, 0.48, 0.41],
	[1.5, 1.08, 0.86, 0.72, 0.61],
	[2, 1.43, 1.15, 0.96, 0.82],
	[3, 2.15, 1.72, 1.43, 1.23],
	[5, 3.58, 2.87, 2.39, 2.05],
	[10, 7.17, 5.73, 4.78, 4.1],
	[18, 12.9, 10.3, 8.6, 7.37],
	[24, 17.2, 13.8, 11.5, 9.83],
];

const flows: readonly ReferenceRow[] = TABLE.flatMap(([kilowatts, ...row]) =>
	row.map((published, i) => ({
		name: `${kilowatts} kW through ${RISES[i]} K`,
		published,
		computed: () =>
			60 *
			flowOf(
				directFlow(
					ideal,
					noPipe,
					{ cold: COLD, wanted: COLD + RISES[i]!, boiling: FAR },
					{ ...air, beam: 1000 * kilowatts },
				),
			),
		tolerance: {
			absolute: (published < 10 ? 0.005 : 0.05) + 0.002 * published,
			basis: "digits",
			reason: "half of the last digit given, and 0.2 % for water's own heat capacity in place of 4186 J/kgK",
		},
		source: MIXING,
		kind: "formula",
	})),
);

const rise: ReferenceRow = {
	name: "1 kW into 1 L/min",
	published: 14.3,
	computed: () => {
		const stream = heatedStream(
			ideal,
			{ fluid: water, inlet: COLD, massFlow: 1 / 60 },
			{ ...air, beam: 1000 },
		);
		return stream.kind === "heated" ? stream.outlet - COLD : Number.NaN;
	},
	tolerance: { absolute: 0.05, basis: "digits", reason: "half of the last digit" },
	source: MIXING,
	kind: "formula",
};

/** Efficiency of a dish known by its line, leaving fluid 40 K over the air at 800 W/m². */
const lineEfficiency = (opticalEfficiency: number, perArea: number): number => {
	const line = {
		kind: "efficiencyLine",
		opticalEfficiency,
		lossCoefficient: perArea,
		heldHeatCapacity: 1,
	} as const;
	const heater = {
		receiver: line,
		apertureArea: 1,
		absorbingArea: opticalEfficiency,
		lowestAltitude: 0,
		convection: 1,
	};
	return (
		powerOf(
			directFlow(heater, noPipe, { cold: 293.15, wanted: 333.15, boiling: FAR }, { ...air, beam: 800 }),
		) / 800
	);
};

const LINE = "efficiency line η₀ − U·ΔT/G with the coefficients of Chahoud, GSTF J. Eng. Technology 2 (2013)";
const lines: readonly ReferenceRow[] = [
	{
		name: "aluminium strips, 0.59 and 2.9 W/m²K, 40 K over the air at 800 W/m²",
		published: 0.445,
		computed: () => lineEfficiency(0.59, 2.9),
		tolerance: { absolute: 0.0005, basis: "digits", reason: "half of the last digit" },
		source: LINE,
		kind: "formula",
	},
	{
		name: "glass mirrors, 0.71 and 2.1 W/m²K, 40 K over the air at 800 W/m²",
		published: 0.605,
		computed: () => lineEfficiency(0.71, 2.1),
		tolerance: { absolute: 0.0005, basis: "digits", reason: "half of the last digit" },
		source: LINE,
		kind: "formula",
	},
];

const mawire: ReferenceRow = {
	name: "oil-filled cavity in a dish of 1.54 m², 100 K over the air at 900 W/m²",
	published: 260,
	computed: () => {
		const line = {
			kind: "efficiencyLine",
			opticalEfficiency: 0.52,
			lossCoefficient: 4.6,
			heldHeatCapacity: 1,
		} as const;
		const heater = {
			receiver: line,
			apertureArea: 1.539,
			absorbingArea: 0.52 * 1.539,
			lowestAltitude: 0,
			convection: 1,
		};
		return powerOf(
			directFlow(heater, noPipe, { cold: 293.15, wanted: 393.15, boiling: FAR }, { ...air, beam: 900 }),
		);
	},
	tolerance: { absolute: 0.5, basis: "digits", reason: "half of the last digit" },
	source:
		"balance with optical efficiency 0.52 and 4.6 W/K of Mawire & Taole, Energy for Sustainable Development 19 (2014) 162–169 (diameter from memory)",
	kind: "memory",
};

/** Middle of what the model says of a dish whose mirror and paint are taken from the material tables, nothing fitted, and all
 *  that the paper leaves open drawn over its span. */
const materials: readonly ReferenceRow[] = [...lineStarts, waterHeater].map((dish) => ({
	name: dish.name,
	published: (dish.efficiency[0] + dish.efficiency[1]) / 2,
	computed: () => told(dish, honest).middle,
	tolerance: {
		relative: 0.17,
		basis: "claim",
		reason:
			"what the paper leaves open spreads nine dishes in ten by 0.17 to 0.34 either way: the narrowest of these",
	},
	source: dish.source,
	kind: "print",
}));

export const sets: readonly ReferenceSet[] = [
	{ quantity: "Instant heater: flow that a power warms", unit: "L/min", role: "check", rows: flows },
	{ quantity: "Instant heater: rise of a flow", unit: "K", role: "check", rows: [rise] },
	{ quantity: "Instant heater: dishes by their measured lines", unit: "-", role: "check", rows: lines },
	{ quantity: "Instant heater: power of a measured dish", unit: "W", role: "check", rows: [mawire] },
	{
		quantity: "Instant heater: efficiency from the materials",
		unit: "-",
		role: "sanity",
		why: "of three dishes that were measured the papers give the efficiency, but leave most of the plant open",
		rows: materials,
	},
];
