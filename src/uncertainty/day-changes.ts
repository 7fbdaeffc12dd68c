import { water } from "../fluids/water.ts";
import type { ModelFactors } from "../plant/factors.ts";
import { hasTube } from "../receiver/receiver.ts";
import type { ClearSky } from "../sky/clear-weather.ts";
import type { MeasuredSky } from "../sky/measured-weather.ts";
import type { DayCase } from "./day-case.ts";
import type { DaySpreads } from "./day-spreads.ts";
import { betweenLimits, byFactor } from "./spread.ts";

/** A case with one input changed by a multiple (score) of its standard deviation. */
export type Change = (stated: DayCase, deviation: number, score: number) => DayCase;

type Limits = readonly [low: number, high: number];

const SHARE: Limits = [0, 1];
const TURBIDITY: Limits = [1, 12]; // range of `clearSky`
const IRRADIANCE: Limits = [0, 2000]; // [W/m²] range of `measuredWeather`
const WIND: Limits = [0, 100]; // [m/s] range of `receiverLosses`
const USABLE = 313.15; // [K] reference of usable litres; mains are colder

/** Effect of a change of each input on a case. */
export const CHANGES: Readonly<Record<keyof DaySpreads, Change>> = {
	turbidity: (of, deviation, score) =>
		withSky(of, {
			clear: (sky) => ({ ...sky, turbidity: betweenLimits(sky.turbidity, TURBIDITY, deviation, score) }),
			measured: (sky) => sky,
		}),
	measuredBeam: (of, deviation, score) => {
		const off = (reading: number) => betweenLimits(reading, IRRADIANCE, deviation * reading, score);
		return withSky(of, {
			clear: (sky) => sky,
			measured: (sky) => ({
				...sky,
				beam: sky.beam && Float64Array.from(sky.beam, off),
				diffuse: sky.diffuse && Float64Array.from(sky.diffuse, off),
				global: sky.global && Float64Array.from(sky.global, off),
			}),
		});
	},
	reflectance: (of, deviation, score) =>
		withDish(of, { reflectance: betweenLimits(of.plant.dish.reflectance, SHARE, deviation, score) }),
	cleanliness: (of, deviation, score) =>
		withDish(of, { cleanliness: betweenLimits(of.plant.dish.cleanliness, SHARE, deviation, score) }),
	slopeError: (of, deviation, score) =>
		withDish(of, { slopeError: byFactor(of.plant.dish.slopeError, deviation, score) }),
	absorptance: (of, deviation, score) => {
		const { receiver } = of.plant;
		if (!hasTube(receiver)) return of;
		const absorptance = betweenLimits(receiver.absorptance, SHARE, deviation, score);
		return { ...of, plant: { ...of.plant, receiver: { ...receiver, absorptance } } };
	},
	opticalEfficiency: (of, deviation, score) => {
		const { receiver } = of.plant;
		if (hasTube(receiver)) return of;
		const opticalEfficiency = betweenLimits(receiver.opticalEfficiency, SHARE, deviation, score);
		return { ...of, plant: { ...of.plant, receiver: { ...receiver, opticalEfficiency } } };
	},
	lossCoefficient: (of, deviation, score) => {
		const { receiver } = of.plant;
		if (hasTube(receiver)) return of;
		const lossCoefficient = byFactor(receiver.lossCoefficient, deviation, score);
		return { ...of, plant: { ...of.plant, receiver: { ...receiver, lossCoefficient } } };
	},
	receiverConvection: factor("receiverConvection"),
	coilFilm: factor("coilFilm"),
	laggingLoss: factor("laggingLoss"),
	tankLoss: factor("tankLoss"),
	pumpFlow: (of, deviation, score) => {
		const { pump } = of.plant.loop;
		const flow = byFactor(pump.flow, deviation, score);
		return { ...of, plant: { ...of.plant, loop: { ...of.plant.loop, pump: { ...pump, flow } } } };
	},
	ambient: (of, deviation, score) => {
		const off = deviation * score;
		return withSky(of, {
			clear: (sky) => ({
				...sky,
				ambientMinimum: sky.ambientMinimum + off,
				ambientMaximum: sky.ambientMaximum + off,
			}),
			measured: (sky) => ({ ...sky, ambient: Float64Array.from(sky.ambient, (t) => t + off) }),
		});
	},
	wind: (of, deviation, score) => {
		const off = (wind: number) => betweenLimits(wind, WIND, deviation * wind, score);
		return withSky(of, {
			clear: (sky) => ({ ...sky, wind: off(sky.wind) }),
			measured: (sky) => ({ ...sky, wind: Float64Array.from(sky.wind, off) }),
		});
	},
	coldWater: (of, deviation, score) => {
		const { plant, task } = of;
		const coldestUse = task.draws.reduce((least, { temperature }) => Math.min(least, temperature), USABLE);
		const mains = betweenLimits(task.mains, [water.range[0], coldestUse], deviation, score);
		const startTemperatures = plant.tank.startTemperatures.map((t) =>
			betweenLimits(t, water.range, deviation, score),
		);
		return {
			...of,
			plant: { ...plant, tank: { ...plant.tank, startTemperatures } },
			task: { ...task, mains },
		};
	},
};

function factor(name: keyof ModelFactors): Change {
	return (of, deviation, score) => ({
		...of,
		factors: { ...of.factors, [name]: byFactor(of.factors[name], deviation, score) },
	});
}

function withDish(
	of: DayCase,
	change: { readonly [K in "reflectance" | "cleanliness" | "slopeError"]?: number },
) {
	return { ...of, plant: { ...of.plant, dish: { ...of.plant.dish, ...change } } };
}

/** Change of either kind of sky. */
interface SkyChange {
	readonly clear: (sky: ClearSky) => ClearSky;
	readonly measured: (sky: MeasuredSky) => MeasuredSky;
}

function withSky(of: DayCase, change: SkyChange): DayCase {
	const { sky } = of;
	switch (sky.kind) {
		case "clear":
			return { ...of, sky: { kind: "clear", sky: change.clear(sky.sky) } };
		case "measured":
			return { ...of, sky: { kind: "measured", sky: change.measured(sky.sky) } };
		default:
			return sky satisfies never;
	}
}
