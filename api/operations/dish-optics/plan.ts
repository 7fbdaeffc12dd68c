import {
	type ApertureSetting,
	type Dish,
	type DishOptics,
	designDish,
	designReceiver,
	dishOptics,
	fluidById,
	standardPressure,
	type TubeReceiver,
} from "../../../src/index.ts";
import { wireAssumed } from "../../parts/assumption.ts";
import { declinationOn } from "../../parts/declination.ts";
import { sparseDish } from "../../parts/dish.ts";
import { sparseReceiver } from "../../parts/receiver.ts";
import type { Completed } from "../../wire/defaults.ts";
import { toSi } from "../../wire/units.ts";
import type { DishOpticsRequest } from "./request.ts";

/** A dish and its receiver in the terms of the core, at one position of the sun. */
export interface OpticsPlan {
	readonly dish: Dish;
	readonly receiver: TubeReceiver;
	readonly optics: DishOptics;
	readonly beam: number; // [W/m²]
	readonly latitude: number; // [rad]
	readonly setting: ApertureSetting;
	readonly diameters: readonly number[] | undefined; // apertures of the curve, where the request sends them [m]
}

export function opticsPlan(request: DishOpticsRequest): Completed<OpticsPlan> {
	const { elevationM, beamIrradianceWPerM2: beam } = request;
	const { design: dish, assumed } = designDish(sparseDish(request.dish));
	const sized = designReceiver(sparseReceiver(request.receiver), dish, fluidById(request.fluid), elevationM);
	const receiver = sized.design as TubeReceiver; // the rules refuse an efficiency line
	const latitude = toSi.degrees(request.latitude ?? 0);
	const optics = dishOptics(dish, receiver.apertureDiameter, latitude, declinationOn(request.date));
	return {
		value: {
			...{ dish, receiver, optics, beam, latitude },
			setting: {
				power: beam * optics.apertureArea,
				fluidTemperature: toSi.celsius(request.oilTemperatureC),
				ambient: toSi.celsius(request.ambientC),
				wind: request.windMPerS,
				pressure: standardPressure(elevationM),
				altitude: toSi.degrees(request.sunAltitudeDeg),
			},
			diameters: request.curveApertureDiameterM,
		},
		assumed: wireAssumed([...assumed, ...sized.assumed]),
	};
}
