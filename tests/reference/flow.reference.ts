import { frictionFactorHelical } from "../../src/heat/helical-coil.ts";
import {
	circuitPressureDrop,
	frictionChurchill,
	type Segment,
	segmentPressureDrop,
} from "../../src/loop/flow.ts";
import type { ReferenceRow, ReferenceSet } from "./reference.ts";

const CHURCHILL = "Churchill, Chemical Engineering 84 (7 Nov. 1977) 91–92, by the open library fluids 1.0.22";
const COLEBROOK = "Colebrook, J. Inst. Civ. Eng. 11 (1939) 133–156, solved by the open library fluids 1.0.22";

// [Reynolds number, relative roughness, Churchill 1977, Colebrook or laminar law]
const points = [
	[1000, 0, 0.064, 0.064],
	[2000, 0, 0.0320433174, 0.032],
	[4e3, 1e-3, 0.041728028, 0.0409103899],
	[1e4, 0, 0.0310021307, 0.0308829503],
	[1e5, 0, 0.0178748216, 0.0179897731],
	[1e5, 1e-4, 0.0184626246, 0.0185138661],
	[1e5, 1e-3, 0.0223432355, 0.0221745359],
	[1e6, 1e-4, 0.0135082027, 0.0134414377],
	[1e7, 1e-6, 0.0082609271, 0.0082131804],
] as const;

const straight: ReferenceSet = {
	quantity: "friction factor of a straight tube (Darcy)",
	unit: "-",
	role: "check",
	rows: points.map(([Re, roughness, published]) => ({
		name: `Re ${Re}, ε/D ${roughness}`,
		published,
		computed: () => frictionChurchill(Re, roughness),
		tolerance: { absolute: 5e-11, basis: "digits", reason: "ten decimals" },
		source: CHURCHILL,
		kind: "library",
	})),
};
const straightByOthers: ReferenceSet = {
	quantity: "friction factor of a straight tube against Colebrook and the laminar law",
	unit: "-",
	role: "sanity",
	why: "one explicit formula for all regimes against those of two of them",
	rows: points.map(([Re, roughness, , published]) => ({
		name: `Re ${Re}, ε/D ${roughness}`,
		published,
		computed: () => frictionChurchill(Re, roughness),
		tolerance: {
			relative: 0.05,
			basis: "practice",
			reason: "friction of real pipes lies within 5 % of Colebrook (common practice, no source)",
		},
		source: Re <= 2000 ? "Hagen–Poiseuille law, 64/Re" : COLEBROOK,
		kind: Re <= 2000 ? "formula" : "library",
	})),
};

const RATIO = 0.04;
const WHITE = "White, Proc. R. Soc. A 123 (1929) 645–663, by the open library fluids";
const helical: ReferenceSet = {
	quantity: "friction of a helical tube over that of a straight one, laminar",
	unit: "-",
	role: "check",
	rows: (
		[
			[12, 1.00009034],
			[50, 1.24593576],
			[100, 1.53022636],
			[500, 2.75249576],
			[1000, 3.63984298],
		] as const
	).map(([Dean, factor]) => ({
		name: `Dean number ${Dean}`,
		published: factor,
		computed: () => frictionFactorHelical(Dean / Math.sqrt(RATIO), RATIO) / (64 / (Dean / Math.sqrt(RATIO))),
		tolerance: { absolute: 5e-9, basis: "digits", reason: "eight decimals" },
		source: `${WHITE} 1.0.22`,
		kind: "library",
	})),
};
const helicalDarcy: ReferenceSet = {
	quantity: "friction factor of a helical tube, laminar (Darcy)",
	unit: "-",
	role: "check",
	rows: [
		{
			name: "Re 250, d/D 0.2",
			published: 0.4063281817830202,
			computed: () => frictionFactorHelical(250, 0.2),
			tolerance: { relative: 1e-9, basis: "digits", reason: "more digits than that" },
			source: `${WHITE}'s own tests`,
			kind: "library",
		},
	],
};

/** 10 m of 12 mm tube on a 0.3 m helix with 0.05 kg/s of engine oil of Incropera's table A.5. */
const coil = (density: number, kinematic: number): Segment => ({
	length: 10,
	innerDiameter: 0.012,
	roughness: 1.5e-6,
	helixRatio: 0.04,
	density,
	viscosity: density * kinematic,
});

/** Oil line of Çengel's example 8-3. */
const lakePipe: Segment = {
	length: 200,
	innerDiameter: 0.3,
	roughness: 0,
	helixRatio: 0,
	density: 888,
	viscosity: 888 * 901e-6,
};
const lakeFlow = 2 * (Math.PI / 4) * 0.3 ** 2;

/** Straight pipe with VG 32 oil of 32 and 5.4 mm²/s at 40 and 100 °C, at 4 L/min. */
const coldPipe = (kinematic: number, density: number): Segment => ({
	length: 20,
	innerDiameter: 0.013,
	roughness: 1.5e-6,
	helixRatio: 0,
	density,
	viscosity: density * kinematic,
});

const CENGEL = "Çengel, Heat Transfer: A Practical Approach, 2e, McGraw-Hill 2003, example 8-3";
const pressure: ReferenceSet = {
	quantity: "pressure drop",
	unit: "Pa",
	role: "check",
	rows: [
		{
			name: "oil line 0.3 m × 200 m at 2 m/s",
			published: 1.14e5,
			computed: () => segmentPressureDrop(lakePipe, lakeFlow),
			tolerance: { absolute: 500, basis: "digits", reason: "half of the third digit" },
			source: CENGEL,
			kind: "memory",
		},
		...(
			[
				[60, 865, 83.3e-6, 82_900],
				[90, 846, 27.2e-6, 32_600],
				[120, 828, 12.3e-6, 18_900],
				[150, 810, 6.57e-6, 12_600],
			] as const
		).map(
			([t, density, kinematic, drop]): ReferenceRow => ({
				name: `engine oil ${t} °C, 0.05 kg/s in 10 m of helical tube`,
				published: drop,
				computed: () => segmentPressureDrop(coil(density, kinematic), 0.05 / density),
				tolerance: {
					relative: 0.05,
					basis: "digits",
					reason: "oil properties read between the rows of the table by hand",
				},
				source: "White, Proc. R. Soc. A 123 (1929) 645–663 with engine oil of Incropera 6e, table A.5",
				kind: "formula",
			}),
		),
		...(
			[
				[20, 86e-6, 141_000],
				[0, 336e-6, 556_000],
			] as const
		).map(
			([t, kinematic, drop]): ReferenceRow => ({
				name: `VG 32 oil ${t} °C, 4 L/min in 20 m of 13 mm`,
				published: drop,
				computed: () => segmentPressureDrop(coldPipe(kinematic, 870), 4e-3 / 60),
				tolerance: {
					relative: 0.02,
					basis: "digits",
					reason: "viscosity to two or three digits, density near 870 kg/m³",
				},
				source: "Hagen–Poiseuille law with ASTM D341 viscosity",
				kind: "formula",
			}),
		),
	],
};
const pumping: ReferenceSet = {
	quantity: "pumping power of a circuit",
	unit: "W",
	role: "check",
	rows: [
		{
			name: "oil line 0.3 m × 200 m at 2 m/s",
			published: 16_100,
			computed: () => circuitPressureDrop([lakePipe], 0, lakeFlow) * lakeFlow,
			tolerance: { absolute: 50, basis: "digits", reason: "half of the third digit" },
			source: CENGEL,
			kind: "memory",
		},
	],
};

export const sets: readonly ReferenceSet[] = [
	straight,
	straightByOthers,
	helical,
	helicalDarcy,
	pressure,
	pumping,
];
