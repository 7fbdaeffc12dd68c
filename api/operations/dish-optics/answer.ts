import type { z } from "@hono/zod-openapi";
import {
	apertureBounds,
	apertureOfMostHeat,
	apertureTrade,
	type Dish,
	depth,
	flatReceiverConcentration,
	focalPeakIrradiance,
	focalSpotCircles,
	lightCone,
	receiverAbsorptance,
	reflectedShare,
	rimAngle,
	sphericalReceiverConcentration,
	thermodynamicConcentrationLimit,
} from "../../../src/index.ts";
import { fromSi } from "../../wire/units.ts";
import type { OpticsPlan } from "./plan.ts";
import type { DishOpticsResponse } from "./response.ts";

type Answer = z.input<typeof DishOpticsResponse>;

const SUN = 4.65e-3; // [rad] half angle of the sun's disc
const SPOT_SHARES = [0.5, 0.9, 0.95, 0.99];
const CURVE_POINTS = 40;
const CURVE_REACH = 2.5; // times the best aperture

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

/** Light caught and heat lost by receiver aperture: the best one, and a curve. */
interface Trade {
	readonly best: ApertureHeat;
	readonly curve: readonly ApertureHeat[];
	readonly geometricConcentration: number; // of the best
	readonly withinSearch: boolean; // whether the best is inside the search range
}

type ApertureHeat = ReturnType<ReturnType<typeof apertureTrade>> & { readonly diameter: number /* [m] */ };

export function tradeOf({ dish, receiver, optics, setting, diameters }: OpticsPlan): Trade {
	const diameter = apertureOfMostHeat(dish, receiver, setting);
	const [low, high] = apertureBounds(dish);
	const trade = apertureTrade(dish, receiver, setting);
	const heatAt = (width: number): ApertureHeat => ({ ...trade(width), diameter: width });
	const widest = Math.min(high, CURVE_REACH * diameter);
	const evenDiameters = () =>
		Array.from({ length: CURVE_POINTS }, (_, i) => (widest * (i + 1)) / CURVE_POINTS);
	return {
		best: heatAt(diameter),
		curve: (diameters ?? evenDiameters()).map(heatAt),
		geometricConcentration: optics.apertureArea / ((Math.PI / 4) * diameter ** 2),
		withinSearch: diameter > low && diameter < high,
	};
}

export function wireTrade({ best, curve, ...rest }: Trade): Pick<Answer, "bestAperture" | "curve"> {
	return {
		bestAperture: {
			apertureDiameterM: best.diameter,
			interceptFactor: best.interceptFactor,
			spilledW: best.spilled,
			lossW: best.lost,
			netPowerW: best.net,
			...rest,
		},
		curve: {
			apertureDiameterM: curve.map(({ diameter }) => diameter),
			interceptFactor: curve.map(({ interceptFactor }) => interceptFactor),
			absorbedW: curve.map(({ absorbed }) => absorbed),
			lossW: curve.map(({ lost }) => lost),
			netPowerW: curve.map(({ net }) => net),
		},
	};
}
