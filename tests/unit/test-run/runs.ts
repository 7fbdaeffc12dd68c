import { water } from "../../../src/fluids/water.ts";
import { normalStream } from "../../../src/numeric/random.ts";
import type { Tank } from "../../../src/tank/tank.ts";
import { storeOf } from "../../../src/test-run/heat-content.ts";
import type { RunSky } from "../../../src/test-run/predicted-run.ts";
import type { TestRun } from "../../../src/test-run/run.ts";

export const START = Date.UTC(2026, 0, 15, 9, 30) / 1000;
export const AREA = Math.PI; // [m²] a dish of 2 m

/** A hundred litres in one layer, 17 °C at the start. */
export const tank: Tank = {
	fill: 0.1,
	height: 0.9,
	diameter: 0.377,
	wallThickness: 0.002,
	wallConductivity: 15,
	wallHeatCapacity: 3.9e6,
	insulation: { material: "polyurethane", thickness: 0.08, moisture: 0, surfaceEmittance: 0.9 },
	fittingsFactor: 1,
	inletHeight: 0.05,
	outletHeight: 1,
	startTemperatures: new Float64Array([290.15]),
	reliefPressure: 0,
	surroundings: { kind: "outdoors" },
};

/** What the made-up plant truly is. */
export interface Truth {
	readonly optical: number; // share of the beam that reaches the water at no loss
	readonly loss: number; // while running [W/K]
	readonly tankLoss: number; // at rest [W/K]
}

export interface Plan {
	readonly rows: number;
	readonly step: number; // [s]
	readonly beam: (time: number) => number; // [W/m²], time from the start [s]
	readonly resting: (time: number) => boolean;
}

export const AIR = (time: number) => 285.15 + time / 3600; // [K] a morning that warms

/** Beam of a morning with a bank of cloud in it that comes and goes within six minutes. */
export const MORNING = (time: number) => {
	const cloud = Math.min(1, Math.max(0, (900 - Math.abs(time - 6000)) / 360));
	return (760 + 130 * Math.sin((Math.PI * time) / 14_400)) * (1 - 0.7 * cloud);
};

const DUSK = 14_400; // [s]
const FADING = 900; // [s]

/** Four hours of sun that fade in a quarter of an hour, then four of night with the pump at rest, by the minute. */
export const sunsetDay: Plan = {
	rows: 481,
	step: 60,
	beam: (time) => MORNING(time) * Math.min(1, Math.max(0, (DUSK - time) / FADING)),
	resting: (time) => time >= DUSK,
};

export const threeHours: Plan = { rows: 181, step: 60, beam: MORNING, resting: () => false };

/** Water temperatures of a lump that obeys C·dT/dt = F·A·G − U·(T − T_air), by Runge–Kutta at 5 s, row by row [K]. */
export function trajectory(truth: Truth, plan: Plan): Float64Array {
	const { waterMass, wallCapacity } = storeOf(runOf(plan, new Float64Array(plan.rows).fill(290)));
	const slope = (time: number, t: number, rests: boolean) => {
		const capacity = waterMass * water.heatCapacity(t) + wallCapacity;
		const heat = rests ? 0 : truth.optical * AREA * plan.beam(time);
		return (heat - (rests ? truth.tankLoss : truth.loss) * (t - AIR(time))) / capacity;
	};
	const fine = 5;
	const rows = new Float64Array(plan.rows);
	let t = tank.startTemperatures[0]!;
	for (let row = 0; row < plan.rows; row++) {
		rows[row] = t;
		const rests = plan.resting(row * plan.step);
		for (let time = row * plan.step; time < (row + 1) * plan.step; time += fine) {
			const k1 = slope(time, t, rests);
			const k2 = slope(time + fine / 2, t + (k1 * fine) / 2, rests);
			const k3 = slope(time + fine / 2, t + (k2 * fine) / 2, rests);
			const k4 = slope(time + fine, t + k3 * fine, rests);
			t += ((k1 + 2 * k2 + 2 * k3 + k4) * fine) / 6;
		}
	}
	return rows;
}

/** A run with these water temperatures and everything measured but the oil. */
export function runOf(plan: Plan, temperatures: Float64Array): TestRun {
	const times = Float64Array.from({ length: plan.rows }, (_, row) => row * plan.step);
	return {
		time: times.map((time) => START + time),
		thermometers: [temperatures],
		beam: times.map(plan.beam),
		ambient: times.map(AIR),
		wind: undefined,
		oilIn: undefined,
		oilOut: undefined,
		pumpOn: undefined,
		tank,
		aperture: AREA,
		resolution: 0.1,
	};
}

/** Readings of a thermometer that errs by so much, standard deviation [K]. */
export function noisy(temperatures: Float64Array, deviation: number, seed: number): Float64Array {
	const normal = normalStream(seed);
	return temperatures.map((t) => t + deviation * normal());
}

/** The sky of a run with everything measured, a light air throughout. */
export function skyOf(run: TestRun): RunSky {
	return { beam: run.beam!, ambient: run.ambient!, wind: new Float64Array(run.time.length).fill(1) };
}
