import { mineralOil } from "../../src/fluids/mineral-oil.ts";
import { insulationConductivity, insulationMaterial } from "../../src/heat/insulation.ts";
import { coldStart } from "../../src/loop/cold-start.ts";
import { rainHeatLoss } from "../../src/loop/insulation-effects.ts";
import type { Loop, Pipe } from "../../src/loop/loop.ts";
import { aLoop, aPipe, celsius } from "../unit/loop/a-loop.ts";
import type { ReferenceSet } from "./reference.ts";

/** Twenty metres of 13 mm bore, no bends, and a pump that nothing stops at 4 L/min. */
const strong: Loop = aLoop({
	fluid: mineralOil(32),
	fittingsLossFactor: 0,
	pump: { flow: 4 / 60_000, electricPower: 2000, efficiency: 0.9, maximumPressure: 2e6 },
});
const HAGEN_POISEUILLE =
	"Hagen–Poiseuille, 128 µ L Q/(π d⁴), with 86 and 336 mm²/s of ISO VG 32 by ASTM D341 and 867 and 880 kg/m³";

const cold: ReferenceSet = {
	quantity: "pressure around a loop of cold VG 32 oil",
	unit: "kPa",
	role: "check",
	rows: (
		[
			[20, 141],
			[0, 556],
		] as const
	).map(([t, published]) => ({
		name: `20 m of 13 mm at 4 L/min, ${t} °C`,
		published,
		computed: () => coldStart(strong, [], celsius(t)).duty.pressure / 1000,
		tolerance: { relative: 0.02, basis: "digits", reason: "viscosity to two digits, density ± 1.5 %" },
		source: HAGEN_POISEUILLE,
		kind: "formula",
	})),
};

/** Lagging of 0.05 W/mK at 120 °C between radii of 50 and 100 mm, its faces at 220 and 20 °C. */
const washed = (): number => {
	const wool = insulationMaterial("mineralWool");
	const moisture = Math.log(0.05 / insulationConductivity(wool, celsius(120), 0)) / wool.moistureFactor;
	const pipe: Pipe = {
		...aPipe({ innerDiameter: 0.0999, outerDiameter: 0.1, wallConductivity: 1e6 }),
		insulation: { material: "mineralWool", thickness: 0.05, moisture, surfaceEmittance: 0.9 },
	};
	return rainHeatLoss(pipe, 1e9, celsius(220), celsius(20));
};
const rain: ReferenceSet = {
	quantity: "heat through lagging whose skin rain keeps at the air's temperature",
	unit: "W/m",
	role: "check",
	rows: [
		{
			name: "radii 50 and 100 mm, 0.05 W/mK, 200 K",
			published: 90.6472,
			computed: washed,
			tolerance: { relative: 1e-4, basis: "numerics", reason: "conductivity at the mean of the two faces" },
			source: "conduction through a hollow cylinder, 2πkΔT/ln(r₂/r₁)",
			kind: "formula",
		},
	],
};

export const sets: readonly ReferenceSet[] = [cold, rain];
