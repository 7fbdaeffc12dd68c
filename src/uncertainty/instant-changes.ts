import { water } from "../fluids/water.ts";
import { hasTube } from "../receiver/receiver.ts";
import { absoluteAirMass } from "../sky/air-mass.ts";
import { clearSky } from "../sky/clear-sky.ts";
import type { DaySpreads } from "./day-spreads.ts";
import type { InstantCase } from "./instant-case.ts";
import { betweenLimits, byFactor } from "./spread.ts";

/** Standard deviations of the uncertain inputs of an instant heater, as for a day. */
export type InstantSpreads = Omit<DaySpreads, "coilFilm"> & {
	readonly coilTransfer: number; // heat transfer of the coil in hot oil, both films, relative [-]
};

type Change = (stated: InstantCase, deviation: number, score: number) => InstantCase;
type Limits = readonly [low: number, high: number];

const SHARE: Limits = [0, 1];
const TURBIDITY: Limits = [1, 12];
const IRRADIANCE: Limits = [0, 2000]; // [W/m²]
const WIND: Limits = [0, 100]; // [m/s]

/** Effect of a change of each input on a case. */
export const INSTANT_CHANGES: Readonly<Record<keyof InstantSpreads, Change>> = {
	turbidity: (of, deviation, score) => {
		const { beam, conditions } = of;
		switch (beam.kind) {
			case "clear": {
				if (conditions.beam === 0) return of;
				const off = betweenLimits(beam.turbidity, TURBIDITY, deviation, score);
				return withBeam(
					of,
					(conditions.beam * beamUnder(of, beam.elevation, off)) /
						beamUnder(of, beam.elevation, beam.turbidity),
				);
			}
			case "stated":
			case "measured":
				return of;
			default:
				return beam satisfies never;
		}
	},
	measuredBeam: (of, deviation, score) =>
		withBeam(of, betweenLimits(of.conditions.beam, IRRADIANCE, deviation * of.conditions.beam, score)),
	reflectance: (of, deviation, score) =>
		withDish(of, "reflectance", betweenLimits(of.dish.reflectance, SHARE, deviation, score)),
	cleanliness: (of, deviation, score) =>
		withDish(of, "cleanliness", betweenLimits(of.dish.cleanliness, SHARE, deviation, score)),
	slopeError: (of, deviation, score) =>
		withDish(of, "slopeError", byFactor(of.dish.slopeError, deviation, score)),
	absorptance: (of, deviation, score) => {
		const { receiver } = of;
		if (!hasTube(receiver)) return of;
		return {
			...of,
			receiver: { ...receiver, absorptance: betweenLimits(receiver.absorptance, SHARE, deviation, score) },
		};
	},
	opticalEfficiency: (of, deviation, score) => {
		const { receiver } = of;
		if (hasTube(receiver)) return of;
		const opticalEfficiency = betweenLimits(receiver.opticalEfficiency, SHARE, deviation, score);
		return { ...of, receiver: { ...receiver, opticalEfficiency } };
	},
	lossCoefficient: (of, deviation, score) => {
		const { receiver } = of;
		if (hasTube(receiver)) return of;
		return {
			...of,
			receiver: { ...receiver, lossCoefficient: byFactor(receiver.lossCoefficient, deviation, score) },
		};
	},
	receiverConvection: (of, deviation, score) => ({
		...of,
		convection: byFactor(of.convection, deviation, score),
	}),
	laggingLoss: (of, deviation, score) => {
		const { arrangement } = of;
		switch (arrangement.kind) {
			case "direct": {
				const length = byFactor(arrangement.outlet.length, deviation, score); // its loss is proportional to its length
				return { ...of, arrangement: { ...arrangement, outlet: { ...arrangement.outlet, length } } };
			}
			case "vessel":
				return of;
			default:
				return arrangement satisfies never;
		}
	},
	coilTransfer: (of, deviation, score) =>
		withVessel(of, (vessel) => ({
			...vessel,
			coil: { ...vessel.coil, length: byFactor(vessel.coil.length, deviation, score) }, // its heat transfer is proportional to its length
		})),
	tankLoss: (of, deviation, score) =>
		withVessel(of, (vessel) => ({
			...vessel,
			fittingsFactor: byFactor(vessel.fittingsFactor, deviation, score),
		})),
	pumpFlow: (of, deviation, score) =>
		withVessel(of, (vessel) => ({ ...vessel, circulation: byFactor(vessel.circulation, deviation, score) })),
	ambient: (of, deviation, score) => ({
		...of,
		conditions: { ...of.conditions, ambient: of.conditions.ambient + deviation * score },
	}),
	wind: (of, deviation, score) => {
		const wind = betweenLimits(of.conditions.wind, WIND, deviation * of.conditions.wind, score);
		return { ...of, conditions: { ...of.conditions, wind } };
	},
	coldWater: (of, deviation, score) => {
		const cold = betweenLimits(of.duty.cold, [water.range[0], of.duty.wanted], deviation, score);
		return { ...of, duty: { ...of.duty, cold } };
	},
};

/** Beam of a clear sky at the sun of the case, relative to the extraterrestrial [-]. */
function beamUnder({ conditions }: InstantCase, elevation: number, turbidity: number): number {
	const airMass = absoluteAirMass(conditions.altitude, conditions.pressure);
	return clearSky(turbidity, elevation, conditions.altitude, airMass, 1).beam;
}

function withBeam(of: InstantCase, beam: number): InstantCase {
	return { ...of, conditions: { ...of.conditions, beam } };
}

function withDish(
	of: InstantCase,
	name: "reflectance" | "cleanliness" | "slopeError",
	value: number,
): InstantCase {
	return { ...of, dish: { ...of.dish, [name]: value } };
}

type Vessel = Extract<InstantCase["arrangement"], { kind: "vessel" }>["vessel"];

function withVessel(of: InstantCase, change: (vessel: Vessel) => Vessel): InstantCase {
	const { arrangement } = of;
	switch (arrangement.kind) {
		case "vessel":
			return { ...of, arrangement: { ...arrangement, vessel: change(arrangement.vessel) } };
		case "direct":
			return of;
		default:
			return arrangement satisfies never;
	}
}
