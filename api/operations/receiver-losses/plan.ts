import {
	apertureArea,
	apertureMethod,
	type Dish,
	dishMethods,
	dishOptics,
	fluidById,
	handbook,
	hasTube,
	lightCone,
	type Method,
	type Receiver,
	type ReceiverConditions,
	receiverAbsorptance,
	type SurveyPlan,
	stagnationTemperature,
	standardPressure,
	unconfirmed,
} from "../../../src/index.ts";
import { declinationOn } from "../../parts/declination.ts";
import { coreDish, RIM_ANGLE } from "../../parts/dish.ts";
import { coreReceiver, coreReceiverInLight } from "../../parts/receiver-design.ts";
import type { Fill } from "../../wire/defaults.ts";
import { toSi } from "../../wire/units.ts";
import type { ReceiverLossesRequest } from "./request.ts";

/** The receiver and the light on it. */
export interface LitReceiver {
	readonly receiver: Receiver;
	readonly dish: Dish | undefined; // undefined where its light was given without one
	readonly area: number | undefined; // of that dish's aperture [m²]
	readonly entering: number | undefined; // through the receiver's aperture [W]; an efficiency line does not tell
	readonly absorbed: number; // [W]
	readonly methods: readonly Method[]; // what the light rests on
}

/** A receiver in the light of its dish, or in the light that was given for it. */
export function litReceiver(request: ReceiverLossesRequest, fill: Fill): LitReceiver {
	return request.dish === undefined
		? inGivenLight(request, request.absorbedPowerW!, fill)
		: inDish(request, coreDish(request.dish, fill), fill);
}

function inGivenLight(request: ReceiverLossesRequest, absorbed: number, fill: Fill): LitReceiver {
	const light = absorbed / request.beamIrradianceWPerM2;
	const fluid = fluidById(request.fluid);
	const receiver = coreReceiverInLight(request.receiver, light, fluid, request.elevationM, fill);
	const entering = hasTube(receiver)
		? absorbed / receiverAbsorptance(receiver, givenCone(request, fill))
		: undefined;
	return { receiver, dish: undefined, area: undefined, entering, absorbed, methods: [] };
}

/** Half-angle of the cone in which the given light comes [rad]. */
function givenCone({ rimAngleDeg }: ReceiverLossesRequest, fill: Fill): number {
	return toSi.degrees(
		rimAngleDeg ??
			fill(
				"/rimAngleDeg",
				RIM_ANGLE,
				unconfirmed(
					handbook(
						"as of a dish whose shape nobody gave: where a flat receiver can be smallest",
						"Duffie & Beckman, Solar Engineering of Thermal Processes, ch. 7",
					),
				),
			),
	);
}

function inDish(request: ReceiverLossesRequest, dish: Dish, fill: Fill): LitReceiver {
	const receiver = coreReceiver(request.receiver, dish, fluidById(request.fluid), request.elevationM, fill);
	const latitude = toSi.degrees(request.latitude ?? 0);
	const sun = declinationOn(request.date);
	const area = apertureArea(dish, latitude, sun);
	const power = request.beamIrradianceWPerM2 * area;
	if (!hasTube(receiver)) {
		const absorbed = power * receiver.opticalEfficiency;
		return { receiver, dish, area, entering: undefined, absorbed, methods: [apertureMethod(dish)] };
	}
	const entering = power * dishOptics(dish, receiver.apertureDiameter, latitude, sun).shares.toReceiver;
	const absorbed = entering * receiverAbsorptance(receiver, lightCone(dish));
	return { receiver, dish, area, entering, absorbed, methods: dishMethods(dish) };
}

/** All that the receiver is to be reckoned at. */
export function surveyPlan(request: ReceiverLossesRequest, absorbed: number): SurveyPlan {
	return {
		fluid: fluidById(request.fluid),
		flow: toSi.litresPerMinute(request.flowLPerMin),
		absorbed,
		ambient: toSi.celsius(request.ambientC),
		pressure: standardPressure(request.elevationM),
		fluidTemperatures: request.oilTemperatureC.map(toSi.celsius),
		winds: request.windMPerS,
		altitudes: request.tiltDeg.map(toSi.degrees),
	};
}

/** The receiver with the pump stopped. */
export interface Standstill {
	readonly absorbed: number; // [W]
	readonly conditions: ReceiverConditions;
}

export function standstill(request: ReceiverLossesRequest, lit: LitReceiver): Standstill {
	const { beamIrradianceWPerM2: beam, ambientC, windMPerS, tiltDeg } = request.stagnation;
	const absorbed = (lit.absorbed * beam) / request.beamIrradianceWPerM2;
	const surroundings = {
		ambient: toSi.celsius(ambientC),
		wind: windMPerS,
		pressure: standardPressure(request.elevationM),
		altitude: toSi.degrees(tiltDeg),
	};
	const wallTemperature = stagnationTemperature(lit.receiver, absorbed, surroundings);
	return { absorbed, conditions: { ...surroundings, wallTemperature } };
}
