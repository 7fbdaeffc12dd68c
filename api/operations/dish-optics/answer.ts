import type { z } from "@hono/zod-openapi";
import {
	type ApertureSetting,
	apertureBounds,
	apertureOfMostHeat,
	apertureTrade,
	type Dish,
	type DishOptics,
	depth,
	flatReceiverConcentration,
	focalPeakIrradiance,
	focalSpotCircles,
	lightCone,
	receiverAbsorptance,
	reflectedShare,
	rimAngle,
	sphericalReceiverConcentration,
	type TubeReceiver,
	thermodynamicConcentrationLimit,
} from "../../../src/index.ts";
import { fromSi } from "../../wire/units.ts";
import type { DishOpticsResponse } from "./response.ts";

type Answer = z.input<typeof DishOpticsResponse>;

const SUN = 4.65e-3; // [rad] half angle of the sun's disc
const SPOT_SHARES = [0.5, 0.9, 0.95, 0.99];
const CURVE_POINTS = 40;
const CURVE_REACH = 2.5; // times the best aperture

/** A dish and receiver under one sun, as the core knows them. */
export interface OpticsPlan {
	readonly dish: Dish;
	readonly receiver: TubeReceiver;
	readonly optics: DishOptics;
	readonly beam: number; // [W/m²]
	readonly setting: ApertureSetting;
}

export function wireGeometry({ dish, optics, receiver }: OpticsPlan) {
	return {
		kind: dish.kind,
		apertureAreaM2: optics.apertureArea,
		mirrorAreaM2: optics.mirrorArea,
		focalLengthM: dish.focalLength,
		...(dish.kind === "twoAxis" && {
			apertureDiameterM: dish.diameter,
			rimAngleDeg: fromSi.degrees(rimAngle(dish.diameter, dish.focalLength)),
			depthM: depth(dish.diameter, dish.focalLength),
		}),
		receiverApertureDiameterM: receiver.apertureDiameter,
		geometricConcentration: optics.geometricConcentration,
		interceptFactor: optics.interceptFactor,
	};
}

export function wireLight({ dish, optics, receiver, beam }: OpticsPlan) {
	const { toReceiver, ...before } = optics.shares;
	const absorptance = receiverAbsorptance(receiver, lightCone(dish));
	const power = beam * optics.apertureArea;
	return {
		opticalEfficiency: toReceiver * absorptance,
		beamOnApertureW: power,
		powerAtFocusW: power * toReceiver,
		absorbedW: power * toReceiver * absorptance,
		shares: { ...before, receiver: toReceiver * (1 - absorptance), absorbed: toReceiver * absorptance },
	};
}

export function wireSpot({ dish, receiver, optics, setting }: OpticsPlan): Answer["focalSpot"] {
	const reflected = setting.power * reflectedShare(dish);
	const circles = focalSpotCircles(dish, SPOT_SHARES);
	return {
		share: circles.map(({ share }) => share),
		diameterM: circles.map(({ diameter }) => diameter),
		peakIrradianceWPerM2: focalPeakIrradiance(dish, setting.power),
		meanIrradianceWPerM2:
			(reflected * optics.interceptFactor) / ((Math.PI / 4) * receiver.apertureDiameter ** 2),
	};
}

export function wireLimits(dish: Dish): Answer["concentrationLimits"] {
	const thermodynamic = thermodynamicConcentrationLimit(SUN);
	if (dish.kind !== "twoAxis") return { thermodynamic };
	const rim = rimAngle(dish.diameter, dish.focalLength);
	return {
		thermodynamic,
		...(rim + SUN < Math.PI / 2 && { flatReceiver: flatReceiverConcentration(rim, SUN) }),
		...(rim <= Math.PI / 2 && { ballReceiver: sphericalReceiverConcentration(rim, SUN) }),
	};
}

/** The best aperture, and the curve on which it lies.
 *  @param given  apertures that the curve is asked at [m], or undefined for evenly spaced ones */
export function wireTrade(
	{ dish, receiver, optics, setting }: OpticsPlan,
	given: readonly number[] | undefined,
): Pick<Answer, "bestAperture" | "curve"> {
	const diameter = apertureOfMostHeat(dish, receiver, setting);
	const [low, high] = apertureBounds(dish);
	const trade = apertureTrade(dish, receiver, setting);
	const best = trade(diameter);
	const widest = Math.min(high, CURVE_REACH * diameter);
	const diameters =
		given ?? Array.from({ length: CURVE_POINTS }, (_, i) => (widest * (i + 1)) / CURVE_POINTS);
	const trades = diameters.map(trade);
	return {
		bestAperture: {
			apertureDiameterM: diameter,
			interceptFactor: best.interceptFactor,
			geometricConcentration: optics.apertureArea / ((Math.PI / 4) * diameter ** 2),
			spilledW: best.spilled,
			lossW: best.lost,
			netPowerW: best.net,
			withinSearch: diameter > low && diameter < high,
		},
		curve: {
			apertureDiameterM: [...diameters],
			interceptFactor: trades.map((trade) => trade.interceptFactor),
			absorbedW: trades.map(({ absorbed }) => absorbed),
			lossW: trades.map(({ lost }) => lost),
			netPowerW: trades.map(({ net }) => net),
		},
	};
}
