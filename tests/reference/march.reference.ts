import { circulatingStep } from "../../src/plant/circulating-loop.ts";
import type { LinearisedLoss, LoopCoefficients } from "../../src/plant/coefficients.ts";
import type { ReferenceRow, ReferenceSet } from "./reference.ts";

// A plant whose warm-up has a closed form: constant sun, a measured dish (an efficiency line), nothing held in the loop,
// constant properties and one mixed layer. Then the tank follows C·dT/dt = a − b·(T − T_air), an exponential.
const AIR = 293.15; // [K]
const START = 288.15; // [K]
const HEAT_CAPACITY = 100 * 4182; // [J/K] 100 kg of water
const TANK_LOSS = 2; // [W/K]

function coefficients(coil: number, tank: number): LoopCoefficients {
	return {
		capacityRate: 100,
		ambient: AIR,
		absorbed: 3 * 800 * 0.7,
		film: Number.POSITIVE_INFINITY,
		supplyPipe: 0,
		returnPipe: 0,
		fittings: 0,
		casing: 0,
		pumpHeat: 0,
		coil: Float64Array.of(coil),
		layerTemperatures: Float64Array.of(tank),
		layerCapacities: Float64Array.of(HEAT_CAPACITY),
	};
}

// U = 8 W/K against the temperature of the fluid that leaves the dish
const LOSS: LinearisedLoss = {
	refersTo: "outlet",
	at: AIR,
	radiated: 0,
	convected: 0,
	conducted: 0,
	unresolved: 0,
	radiatedSlope: 0,
	convectedSlope: 0,
	conductedSlope: 0,
	unresolvedSlope: 8,
};

/** Hours until the mixed tank reaches a temperature, marched at one minute. */
function marchedHours(coil: number, target: number): number {
	const held = new Float64Array(4);
	let loop = new Float64Array(4).fill(START);
	let tank = START;
	const dt = 60;
	for (let step = 0; step < 10_000; step++) {
		const fluxes = circulatingStep(held, loop, coefficients(coil, tank), LOSS, dt);
		const next = tank + ((fluxes.toWater - TANK_LOSS * (tank - AIR)) * dt) / HEAT_CAPACITY;
		if (next >= target) return ((step + (target - tank) / (next - tank)) * dt) / 3600;
		tank = next;
		loop = fluxes.temperatures as Float64Array<ArrayBuffer>;
	}
	return Number.NaN;
}

const row = (coil: number, celsius: number, published: number): ReferenceRow => ({
	name: `coil ${coil} W/K, tank from 15 to ${celsius} °C`,
	published,
	computed: () => marchedHours(coil, celsius + 273.15),
	tolerance: { relative: 0.005, basis: "numerics", reason: "first-order march at one minute" },
	source: "exact: lumped tank, T(t) = T_air + a/b − (…)·exp(−b·t/C)",
	kind: "formula",
});

export const sets: readonly ReferenceSet[] = [
	{
		quantity: "Time to target against the closed form",
		unit: "h",
		role: "check",
		rows: [
			row(200, 40, 1.983),
			row(200, 60, 3.833),
			row(200, 80, 6.006),
			row(25, 60, 4.812),
			row(50, 60, 4.234),
			row(100, 60, 3.956),
			row(400, 60, 3.793),
		],
	},
];
