import {
	cavityFreeCoefficient,
	cavityFreeCoefficientKoenigMarvin,
	effectiveCavityAbsorptance,
} from "../../src/receiver/cavity.ts";
import { receiverLosses } from "../../src/receiver/losses.ts";
import type { CavityReceiver, OpenCoilReceiver } from "../../src/receiver/receiver.ts";
import type { ReferenceRow, ReferenceSet } from "./reference.ts";

const tube = { innerDiameter: 0.013, outerDiameter: 0.015, length: 8 };
const insulation = { material: "mineralWool", thickness: 0.05, moisture: 0, surfaceEmittance: 0.3 };

/** A hollow 0.2 m wide and deep with an aperture of 0.15 m. */
const cavity: CavityReceiver = {
	kind: "cavity",
	apertureDiameter: 0.15,
	innerDiameter: 0.2,
	depth: 0.2,
	absorptance: 0.9,
	emittance: 0.9,
	tube,
	insulation,
};
const hot = (tilt: number) => ({
	wallTemperature: 473.15,
	ambient: 298.15,
	wind: 0,
	pressure: 101_325,
	altitude: (tilt * Math.PI) / 180,
});

const stineMcDonald: readonly ReferenceRow[] = [
	[0, 5.97],
	[30, 4.18],
	[45, 2.54],
	[60, 1.08],
	[90, 0],
].map(
	([tilt, published]): ReferenceRow => ({
		name: `hollow of 0.2 m at 200 °C, looking down by ${tilt}°`,
		published: published!,
		computed: () => cavityFreeCoefficient(cavity, hot(tilt!)),
		tolerance: {
			relative: 0.01,
			absolute: 0.01,
			basis: "digits",
			reason: "three digits, and air properties of another table",
		},
		source: "Stine & McDonald, ISES Solar World Congress, Kobe 1989",
		kind: "memory",
	}),
);

const koenigMarvin: readonly ReferenceRow[] = [
	[0, 4.5],
	[45, 1.5],
	[60, 0.7],
].map(
	([tilt, published]): ReferenceRow => ({
		name: `the same hollow by the second model, ${tilt}°`,
		published: published!,
		computed: () => cavityFreeCoefficientKoenigMarvin(cavity, hot(tilt!)),
		tolerance: { absolute: 0.05, basis: "digits", reason: "half of the last digit" },
		source: "Koenig & Marvin, DOE/EG77-C-04-3985, 1981",
		kind: "memory",
	}),
);

const absorptances: readonly ReferenceRow[] = (
	[
		[0.9, [0.9, 0.947, 0.973, 0.989]],
		[0.85, [0.85, 0.919, 0.958, 0.983]],
	] as const
).flatMap(([surface, values]) =>
	values.map((published, i): ReferenceRow => {
		const ratio = [1, 0.5, 0.25, 0.1][i]!;
		return {
			name: `wall ${surface}, aperture over wall ${ratio}`,
			published,
			computed: () => effectiveCavityAbsorptance(surface, ratio),
			tolerance: { absolute: 0.0005, basis: "digits", reason: "half of the last digit" },
			source: "Duffie & Beckman, Solar Engineering of Thermal Processes: grey diffuse cavity",
			kind: "memory",
		};
	}),
);

const plate: OpenCoilReceiver = {
	kind: "openCoil",
	apertureDiameter: Math.sqrt(4 / Math.PI), // 1 m²
	absorptance: 0.95,
	emittance: 0.9,
	tube,
	insulation,
};
const radiation: readonly ReferenceRow[] = [
	{
		name: "black cavity through an aperture of 0.15 m, 200 °C to 25 °C",
		published: 42.3,
		computed: () => receiverLosses({ ...cavity, emittance: 1 }, hot(30)).radiated,
		tolerance: { absolute: 0.05, basis: "digits", reason: "half of the last digit" },
		source: "Stefan–Boltzmann law",
		kind: "formula",
	},
	{
		name: "the same with a wall of emittance 0.9",
		published: 41.8,
		computed: () => receiverLosses(cavity, hot(30)).radiated,
		tolerance: { absolute: 0.05, basis: "digits", reason: "half of the last digit" },
		source: "Stefan–Boltzmann law with the effective emittance of a grey cavity",
		kind: "formula",
	},
	...[
		[0.05, 68],
		[0.1, 137],
		[0.9, 1233],
	].map(
		([emittance, published]): ReferenceRow => ({
			name: `open face of 1 m² at 150 °C, emittance ${emittance}, to 25 °C`,
			published: published!,
			computed: () =>
				receiverLosses({ ...plate, emittance: emittance! }, { ...hot(30), wallTemperature: 423.15 }).radiated,
			tolerance: { absolute: 0.5, basis: "digits", reason: "half of the last digit" },
			source: "Stefan–Boltzmann law",
			kind: "formula",
		}),
	),
];

export const sets: readonly ReferenceSet[] = [
	{ quantity: "Receiver: free convection from a cavity", unit: "W/m²K", role: "check", rows: stineMcDonald },
	{ quantity: "Receiver: free convection, second model", unit: "W/m²K", role: "check", rows: koenigMarvin },
	{ quantity: "Receiver: effective absorptance of a cavity", unit: "-", role: "check", rows: absorptances },
	{ quantity: "Receiver: radiation", unit: "W", role: "check", rows: radiation },
];
