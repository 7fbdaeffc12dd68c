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
		relative: 0.012,
		basis: "source",
		reason: "one density: by IAPWS a litre at 60 °C shrinks by 0.9 % when mixed to 40 °C; and heat capacity",
	},
	source: "V·(T − 10 °C)/30 K, by the definition of V40 in Regulation (EU) 814/2013, Annex I(24)",
	kind: "formula",
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
	tolerance: { absolute: 1e-9, basis: "digits", reason: "a sum of the regulation's own decimals" },
	source: REGULATION,
	kind: "print",
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
	tolerance: { absolute: 1e-9, basis: "digits", reason: "a count" },
	source: REGULATION,
	kind: "print",
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
			basis: "digits",
			reason: "whole litres, a litre taken as a kilogram, one heat capacity",
		},
		source: `Q_ref of ${REGULATION}, over 4.186 kJ/kgK and the rise from 10 °C`,
		kind: "formula",
	})),
);

const durations: readonly ReferenceRow[] = (
	[
		[1.4, 6, 6.689],
		[3.605, 10, 10.335],
		[4.42, 10, 12.671],
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
	tolerance: {
		relative: 0.012,
		basis: "source",
		reason: "by IAPWS a litre at 40 °C is 0.992 kg, and its heat capacity 0.2 % off 4.186 kJ/kgK",
	},
	source: `heat over flow of ${REGULATION}, 4.186 kJ/K a litre and 30 K`,
	kind: "formula",
}));

export const sets: readonly ReferenceSet[] = [
	{ quantity: "Tap: usable water at 40 °C", unit: "L", role: "check", rows: usable },
	{ quantity: "Tap: heat of a tapping profile", unit: "kWh", role: "check", rows: heat },
	{ quantity: "Tap: number of draws of a tapping profile", unit: "-", role: "check", rows: numbers },
	{ quantity: "Tap: water that carries a profile's heat", unit: "kg", role: "check", rows: equivalents },
	{ quantity: "Tap: time that a draw takes", unit: "min", role: "check", rows: durations },
];
