import { coilConductances } from "../../src/coil/conductance.ts";
import { coilShares } from "../../src/coil/geometry.ts";
import type { Fluid } from "../../src/fluids/fluid.ts";
import { water } from "../../src/fluids/water.ts";
import { effectivenessUniform } from "../../src/heat/exchanger.ts";
import { aCoil } from "../unit/coil/a-coil.ts";
import type { ReferenceRow, ReferenceSet } from "./reference.ts";

const JANSSEN =
	"Janssen & Hoogendoorn, Int. J. Heat Mass Transfer 21 (1978) 1197–1206, for engine oil of Incropera & DeWitt, table A.5; 0.05 kg/s, 12 mm tube, 0.3 m helix";
const OIL = { massFlow: 0.05, density: 830, conductivity: 0.135 };

/** Inside Nusselt number found back from whole conductances: with coil and water of one temperature the outside film is the
 *  same whatever flows inside, and a perfect conductor inside leaves the film's resistance as the difference. */
function insideNusselt(Re: number, Pr: number): number {
	const viscosity = (4 * OIL.massFlow) / (Math.PI * 0.012 * Re);
	const fluid: Fluid = {
		...water,
		density: () => OIL.density,
		conductivity: () => OIL.conductivity,
		viscosity: () => viscosity,
		heatCapacity: () => (Pr * OIL.conductivity) / viscosity,
	};
	const resistance = (inside: Fluid) => {
		const ua = new Float64Array(1);
		const coil = aCoil({ innerDiameter: 0.012, outerDiameter: 0.014, coilDiameter: 0.3, length: 1 });
		const flow = OIL.massFlow / OIL.density;
		coilConductances(coil, 1, new Float64Array([1]), inside, 350, flow, new Float64Array([350]), ua);
		return 1 / ua[0]!;
	};
	const film = resistance(fluid) - resistance({ ...fluid, conductivity: () => 1e12 });
	return 1 / (Math.PI * OIL.conductivity * film);
}

/** Effectiveness of the oil's way through ten layers of one temperature, at so many transfer units in all. */
function marchedEffectiveness(ntu: number): number {
	const coil = aCoil({});
	const conductances = (layers: number) => {
		const out = new Float64Array(layers);
		const even = new Float64Array(layers).fill(320);
		coilConductances(coil, 1, coilShares(coil, layers), water, 340, 1e-4, even, out);
		return out;
	};
	const capacityRate = conductances(1)[0]! / ntu;
	return 1 - conductances(10).reduce((kept, ua) => kept * (1 - effectivenessUniform(ua / capacityRate)), 1);
}

const inside: readonly ReferenceRow[] = (
	[
		[73, 1057, 11.3],
		[232, 361, 15.5],
		[517, 176, 19.4],
		[997, 98, 23.4],
	] as const
).map(([Re, Pr, published]) => ({
	name: `Re ${Re}, Pr ${Pr}`,
	published,
	computed: () => insideNusselt(Re, Pr),
	tolerance: { relative: 0.01, basis: "digits", reason: "three digits of Nu, two or three of Re and Pr" },
	source: JANSSEN,
	kind: "memory",
}));

const effectiveness: readonly ReferenceRow[] = (
	[
		[0.5, 0.3935],
		[1, 0.6321],
		[2, 0.8647],
		[3, 0.9502],
	] as const
).map(([ntu, published]) => ({
	name: `ten layers, NTU ${ntu}`,
	published,
	computed: () => marchedEffectiveness(ntu),
	tolerance: {
		relative: 0.005,
		basis: "numerics",
		reason: "the outside film of ten layers is found a little closer than that of one",
	},
	source: "exact: ε = 1 − exp(−NTU), a tank of one temperature",
	kind: "formula",
}));

export const sets: readonly ReferenceSet[] = [
	{
		quantity: "Coil: inside film out of the whole conductance, Nusselt number",
		unit: "-",
		role: "check",
		rows: inside,
	},
	{ quantity: "Coil: effectiveness through the layers", unit: "-", role: "check", rows: effectiveness },
];
