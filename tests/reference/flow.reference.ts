import { frictionFactorHelical } from "../../src/heat/helical-coil.ts";
import {
	circuitPressureDrop,
	frictionChurchill,
	type Segment,
	segmentPressureDrop,
} from "../../src/loop/flow.ts";
import type { ReferenceSet } from "./reference.ts";

const CHURCHILL =
	"Churchill, Chemical Engineering 84 (7 Nov. 1977) 91–92, as evaluated by the open library fluids 1.1.0";
const COLEBROOK =
	"Colebrook, J. Inst. Civ. Eng. 11 (1939) 133–156, solved exactly by the open library fluids 1.1.0";

const points = [
	[1000, 0, 0.064, 0.064],
	[2000, 0, 0.03204, 0.032],
	[4e3, 1e-3, 0.04173, 0.04091],
	[1e4, 0, 0.031, 0.030883],
	[1e5, 0, 0.01787, 0.01799],
	[1e5, 1e-4, 0.01846, 0.018514],
	[1e5, 1e-3, 0.02234, 0.022175],
	[1e6, 1e-4, 0.01351, 0.013441],
	[1e7, 1e-6, 0.00826, 0.008213],
] as const;

const straight: ReferenceSet = {
	quantity: "friction factor of a straight tube (Darcy)",
	unit: "-",
	rows: points.flatMap(([Re, roughness, own, exact]) => [
		{
			name: `Re ${Re}, ε/D ${roughness}`,
			published: own,
			computed: () => frictionChurchill(Re, roughness),
			tolerance: { absolute: 6e-6, reason: "printed to five decimals" },
			source: CHURCHILL,
			fromMemory: false,
		},
		{
			name: `Re ${Re}, ε/D ${roughness}, against ${Re <= 2000 ? "64/Re" : "Colebrook"}`,
			published: exact,
			computed: () => frictionChurchill(Re, roughness),
			tolerance: {
				relative: 0.025,
				reason: "an explicit formula for all regimes; Colebrook itself is ± 5 % of pipes",
			},
			source: Re <= 2000 ? "Hagen–Poiseuille law, exact for laminar flow" : COLEBROOK,
			fromMemory: false,
		},
	]),
};

const RATIO = 0.04;
const helical: ReferenceSet = {
	quantity: "friction of a helical tube over that of a straight one, laminar",
	unit: "-",
	rows: [
		...(
			[
				[12, 1],
				[50, 1.25],
				[100, 1.54],
				[500, 2.77],
				[1000, 3.67],
			] as const
		).map(([Dean, factor]) => ({
			name: `Dean number ${Dean}`,
			published: factor,
			computed: () =>
				frictionFactorHelical(Dean / Math.sqrt(RATIO), RATIO) / (64 / (Dean / Math.sqrt(RATIO))),
			tolerance: {
				relative: 0.012,
				reason: "printed to two decimals with the exponent 1/0.45 rounded to 2.2",
			},
			source: "White, Proc. R. Soc. A 123 (1929) 645–663",
			fromMemory: true,
		})),
		{
			name: "Re 250, d/D 0.2: Darcy factor",
			published: 0.40633,
			computed: () => frictionFactorHelical(250, 0.2),
			tolerance: { absolute: 6e-6, reason: "printed to five decimals" },
			source: "White, Proc. R. Soc. A 123 (1929) 645–663, as evaluated in the open library fluids' tests",
			fromMemory: false,
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
	rows: [
		{
			name: "oil line 0.3 m × 200 m at 2 m/s",
			published: 1.14e5,
			computed: () => segmentPressureDrop(lakePipe, lakeFlow),
			tolerance: { relative: 0.003, reason: "printed to three digits" },
			source: CENGEL,
			fromMemory: true,
		},
		{
			name: "the same as a circuit: pumping power, W",
			published: 16_100,
			computed: () => circuitPressureDrop([lakePipe], 0, lakeFlow) * lakeFlow,
			tolerance: { relative: 0.003, reason: "printed to three digits" },
			source: CENGEL,
			fromMemory: true,
		},
		...(
			[
				[60, 865, 83.3e-6, 82_900],
				[90, 846, 27.2e-6, 32_600],
				[120, 828, 12.3e-6, 18_900],
				[150, 810, 6.57e-6, 12_600],
			] as const
		).map(([t, density, kinematic, drop]) => ({
			name: `engine oil ${t} °C, 0.05 kg/s in 10 m of helical tube`,
			published: drop,
			computed: () => segmentPressureDrop(coil(density, kinematic), 0.05 / density),
			tolerance: { relative: 0.05, reason: "oil properties read between the rows of the table by hand" },
			source:
				"White, Proc. R. Soc. A 123 (1929) 645–663 with Incropera 6e, table A.5; worked out apart from this project",
			fromMemory: true,
		})),
		...(
			[
				[20, 86e-6, 141_000],
				[0, 336e-6, 556_000],
			] as const
		).map(([t, kinematic, drop]) => ({
			name: `VG 32 oil ${t} °C, 4 L/min in 20 m of 13 mm`,
			published: drop,
			computed: () => segmentPressureDrop(coldPipe(kinematic, 870), 4e-3 / 60),
			tolerance: {
				relative: 0.02,
				reason: "viscosity printed to two or three digits, density near 870 kg/m³",
			},
			source: "Hagen–Poiseuille law with ASTM D341 viscosity; worked out apart from this project",
			fromMemory: true,
		})),
	],
};

export const sets: readonly ReferenceSet[] = [straight, helical, pressure];
