import { water } from "../../src/fluids/water.ts";
import { tankModel } from "../../src/tank/model.ts";
import { tapDemand } from "../../src/tap/demand.ts";
import { equivalentVolume } from "../../src/tap/equivalent.ts";
import { type TappingProfileId, tappingProfile } from "../../src/tap/profiles.ts";
import { usableVolume } from "../../src/tap/usable.ts";
import { aTank } from "../unit/tank/a-tank.ts";
import type { ReferenceRow, ReferenceSet } from "./reference.ts";

const CELSIUS = 273.15;
const MAINS = 10 + CELSIUS;
const REGULATION = "Regulation (EU) 814/2013, Annex III, table 1";

/** Litres at 40 °C from a tank of one temperature, mains of 10 °C. */
function v40(litres: number, celsius: number): number {
	const fill = litres / 1000;
	const startTemperatures = new Float64Array(10).fill(celsius + CELSIUS);
	const tank = aTank({ fill, height: (fill / (Math.PI * 0.04)) * 1.0001, startTemperatures });
	return 1000 * usableVolume(tankModel(tank), startTemperatures, 40 + CELSIUS, MAINS);
}

/** Water of one temperature that carries a day's heat [kg]. */
function equivalent(id: TappingProfileId, celsius: number): number {
	const temperature = celsius + CELSIUS;
	return equivalentVolume(tappingProfile(id), temperature, MAINS) * water.density(temperature);
}

const usable: readonly ReferenceRow[] = (
	[
		[80, 60, 133.3],
		[100, 55, 150],
	] as const
).map(([litres, celsius, published]) => ({
	name: `${litres} L at ${celsius} °C`,
	published,
	computed: () => v40(litres, celsius),
	tolerance: {
		relative: 0.01,
		reason: "the ideal volume takes one density; a litre at 60 °C shrinks by 0.9 % when mixed to 40 °C",
	},
	source:
		"ideal V40 = V·(T − 10 °C)/30 K by the definition of Regulation (EU) 814/2013, Annex I(24), EN 16147",
	fromMemory: false,
}));

const heat: readonly ReferenceRow[] = (
	[
		["3XS", 0.345],
		["XXS", 2.1],
		["XS", 2.1],
		["S", 2.1],
		["M", 5.845],
		["L", 11.655],
		["XL", 19.07],
		["XXL", 24.53],
		["3XL", 46.76],
		["4XL", 93.52],
	] as const
).map(([id, published]) => ({
	name: `Q_ref of profile ${id}`,
	published,
	computed: () => tappingProfile(id).reduce((sum, { energy }) => sum + energy, 0) / 3.6e6,
	tolerance: { absolute: 1e-9, reason: "a sum of the regulation's own decimals" },
	source: REGULATION,
	fromMemory: false,
}));

const numbers: readonly ReferenceRow[] = (
	[
		["3XS", 23],
		["XXS", 20],
		["XS", 3],
		["S", 11],
		["M", 23],
		["L", 24],
		["XL", 30],
		["XXL", 30],
		["3XL", 10],
		["4XL", 10],
	] as const
).map(([id, published]) => ({
	name: `draws of profile ${id}`,
	published,
	computed: () => tappingProfile(id).length,
	tolerance: { absolute: 1e-9, reason: "a count" },
	source: REGULATION,
	fromMemory: false,
}));

const equivalents: readonly ReferenceRow[] = (
	[
		["S", 60, 36],
		["M", 168, 101],
		["L", 334, 201],
		["XL", 547, 328],
		["XXL", 703, 422],
	] as const
).flatMap(([id, at40, at60]) =>
	(
		[
			[40, at40],
			[60, at60],
		] as const
	).map(([celsius, published]) => ({
		name: `profile ${id} at ${celsius} °C`,
		published,
		computed: () => equivalent(id, celsius),
		tolerance: {
			absolute: 0.6,
			relative: 0.003,
			reason: "whole litres, a litre taken as a kilogram, one heat capacity",
		},
		source: `Q_ref of ${REGULATION}, over 4.186 kJ/kgK and the rise from 10 °C`,
		fromMemory: false,
	})),
);

const durations: readonly ReferenceRow[] = (
	[
		[1.4, 6, 6.7],
		[3.605, 10, 10.3],
		[4.42, 10, 12.7],
	] as const
).map(([energy, flow, published]) => ({
	name: `${energy} kWh at ${flow} L/min, 40 °C`,
	published,
	computed: () => {
		const draw = {
			time: 0,
			demand: { kind: "energy", energy: energy * 3.6e6 },
			temperature: 40 + CELSIUS,
			flow: flow / 60_000,
		} as const;
		const perMinute = tapDemand([draw], 0, 60, MAINS)[0]!.mass;
		return tapDemand([draw], 0, 1e6, MAINS)[0]!.mass / perMinute;
	},
	tolerance: { relative: 0.012, reason: "one decimal, and a litre at 40 °C is 0.992 kg" },
	source: `heat and flow of ${REGULATION}; 6 L/min over 30 K carry 12.56 kW`,
	fromMemory: false,
}));

export const sets: readonly ReferenceSet[] = [
	{ quantity: "Tap: usable water at 40 °C", unit: "L", rows: usable },
	{ quantity: "Tap: heat of a tapping profile", unit: "kWh", rows: heat },
	{ quantity: "Tap: number of draws of a tapping profile", unit: "-", rows: numbers },
	{ quantity: "Tap: water that carries a profile's heat", unit: "kg", rows: equivalents },
	{ quantity: "Tap: time that a draw takes", unit: "min", rows: durations },
];
