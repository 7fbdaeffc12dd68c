import { water } from "../../src/fluids/water.ts";
import { drawOff } from "../../src/tank/draw-off.ts";
import { standingLossLimit } from "../../src/tank/energy-class.ts";
import { layerEnergy, type TankModel, tankModel, tankState } from "../../src/tank/model.ts";
import { tankStep } from "../../src/tank/stratified.ts";
import { aTank, wallless } from "../unit/tank/a-tank.ts";
import type { ReferenceRow, ReferenceSet } from "./reference.ts";

const CELSIUS = 273.15;

/** A tank of so much water in layers of one temperature, nothing else holding heat. */
function evenTank(mass: number, layers: number, celsius: number): TankModel {
	const temperature = celsius + CELSIUS;
	const fill = mass / water.density(temperature);
	return tankModel(
		aTank({
			...wallless,
			fill,
			height: (fill / (Math.PI * 0.04)) * 1.0001,
			startTemperatures: new Float64Array(layers).fill(temperature),
		}),
	);
}

/** The mixed tank after so many hours [°C]. */
function cooled(mass: number, ua: number, start: number, air: number, hours: number): number {
	const model = evenTank(mass, 1, start);
	let state = tankState(model, new Float64Array([start + CELSIUS]));
	const inputs = {
		coilHeat: new Float64Array(1),
		lossCoefficient: ua,
		surroundings: air + CELSIUS,
		boilingPoint: 373.15,
	};
	for (let minute = 0; minute < hours * 60; minute++) state = tankStep(model, state, inputs, 60).state;
	return state.temperatures[0]! - CELSIUS;
}

/** Hours in which a steady power warms a mixed tank from 15 to 60 °C, air of 20 °C around. */
function warmed(mass: number, power: number, ua: number): number {
	const model = evenTank(mass, 1, 15);
	let state = tankState(model, new Float64Array([15 + CELSIUS]));
	const inputs = {
		coilHeat: new Float64Array([power]),
		lossCoefficient: ua,
		surroundings: 20 + CELSIUS,
		boilingPoint: 373.15,
	};
	for (let minute = 1; ; minute++) {
		const next = tankStep(model, state, inputs, 60).state;
		const over = next.temperatures[0]! - CELSIUS - 60;
		if (over >= 0) return (minute - over / (next.temperatures[0]! - state.temperatures[0]!)) / 60;
		state = next;
	}
}

/** Excess of the outlet's layer over the mains, against the start, after so many tank contents drawn in some steps. */
function outletExcess(layers: number, contents: number, steps: number): number {
	const model = evenTank(150, layers, 60);
	const mains = 10 + CELSIUS;
	let state = tankState(model, new Float64Array(layers).fill(60 + CELSIUS));
	const hot = state.energies[0]!;
	for (let i = 0; i < steps; i++)
		state = drawOff(model, state, (contents * layers * model.layerMass) / steps, mains).state;
	const cold = layerEnergy(model, mains);
	return (state.energies[0]! - cold) / (hot - cold);
}

const cooling: readonly ReferenceRow[] = [
	{
		name: "200 L, 2.0 W/K, 60 °C in air of 20 °C, after 24 h",
		published: 52.45,
		computed: () => cooled(0.2 * 988.05, 2, 60, 20, 24),
		tolerance: {
			absolute: 0.01,
			basis: "digits",
			reason: "two decimals; heat capacity follows the temperature here",
		},
		source: "exact: a mixed store, T_air + ΔT·exp(−UA·t/C), C of 200 L of water at 50 °C",
		kind: "formula",
	},
];

const warming: readonly ReferenceRow[] = (
	[
		[50, 1000, 0, 2.59],
		[50, 1000, 2, 2.69],
		[100, 1000, 0, 5.19],
		[100, 1000, 2, 5.38],
		[100, 1500, 0, 3.46],
		[100, 1500, 2, 3.54],
		[200, 2000, 0, 5.19],
		[200, 2000, 2, 5.28],
	] as const
).map(([mass, power, ua, published]) => ({
	name: `${mass} L by ${power} W, ${ua} W/K, 15 → 60 °C`,
	published,
	computed: () => warmed(mass * 0.992, power, ua),
	tolerance: {
		relative: 0.01,
		basis: "digits",
		reason: "the closed form counts a litre as some 0.99 kg and one heat capacity",
	},
	source: "exact: a mixed store under steady power, t = (C/UA)·ln[(P − UA·ΔT₀)/(P − UA·ΔT₁)] or C·ΔT/P",
	kind: "formula",
}));

// [layers N, contents drawn x, upper incomplete gamma function Q(N, Nx)]
const draws: readonly ReferenceRow[] = (
	[
		[1, 0.5, 0.60653066],
		[1, 1, 0.36787944],
		[2, 0.5, 0.73575888],
		[2, 1, 0.40600585],
		[5, 0.5, 0.89117802],
		[5, 1, 0.44049329],
		[10, 0.5, 0.96817194],
		[10, 1, 0.45792971],
		[20, 0.5, 0.99654566],
		[20, 1, 0.47025727],
	] as const
).flatMap(([layers, contents, published]) =>
	[1, 37].map(
		(steps): ReferenceRow => ({
			name: `${layers} layers, ${contents} contents in ${steps} ${steps === 1 ? "draw" : "draws"}`,
			published,
			computed: () => outletExcess(layers, contents, steps),
			tolerance: { absolute: 1e-7, basis: "numerics", reason: "eight decimals; temperatures solved to 1e-7" },
			source: "tanks in series, e^(−Nx)·Σ (Nx)^k/k!, k < N, by gammaincc of the open library scipy 1.10.1",
			kind: "library",
		}),
	),
);

const CLASSES = ["A+", "A", "B", "C", "D", "E", "F"] as const;
const limits: readonly ReferenceRow[] = (
	[
		[50, 20.6, 28.8, 40.4, 56.5, 70.4, 91.3, 110.7],
		[100, 25.4, 35.3, 49.4, 69.2, 86.2, 112.2, 136.1],
		[150, 28.9, 40.0, 56.0, 78.5, 97.7, 127.4, 154.6],
		[200, 31.8, 43.9, 61.4, 86.0, 107.0, 139.7, 169.7],
		[300, 36.4, 50.1, 70.1, 98.2, 122.1, 159.8, 194.1],
		[500, 43.5, 59.5, 83.2, 116.7, 145.1, 190.1, 231.1],
	] as const
).flatMap(([litres, ...row]) =>
	row.map((published, i) => ({
		name: `${litres} L, class ${CLASSES[i]}`,
		published,
		computed: () => standingLossLimit(CLASSES[i]!, litres / 1000),
		tolerance: { absolute: 0.05, basis: "digits", reason: "half of the only decimal" },
		source: "Regulation (EU) 812/2013, Annex II, table 2: a + b·V^0.4",
		kind: "formula",
	})),
);

export const sets: readonly ReferenceSet[] = [
	{ quantity: "Tank: temperature after a day's cooling", unit: "°C", role: "check", rows: cooling },
	{ quantity: "Tank: time to warm under steady power", unit: "h", role: "check", rows: warming },
	{
		quantity: "Tank: outlet's excess after a draw through mixed layers",
		unit: "-",
		role: "check",
		rows: draws,
	},
	{ quantity: "Tank: most standing loss of an energy class", unit: "W", role: "check", rows: limits },
];
