import {
	apertureArea,
	apertureMethod,
	type DayAir,
	type Dish,
	designDish,
	designReceiver,
	designReceiverInLight,
	dishMethods,
	dishOptics,
	fluidById,
	handbook,
	hasTube,
	lightCone,
	type Method,
	type Receiver,
	type ReceiverConditions,
	RIM_ANGLE_SOURCE,
	receiverAbsorptance,
	type SurveyPlan,
	stagnationTemperature,
	standardPressure,
	USUAL_RIM_ANGLE,
	unconfirmed,
} from "../../../src/index.ts";
import { wireAssumed } from "../../parts/assumption.ts";
import { airAt } from "../../parts/day-air.ts";
import { declinationOn } from "../../parts/declination.ts";
import { sparseDish, type Dish as WireDish } from "../../parts/dish.ts";
import { sparseReceiver } from "../../parts/receiver.ts";
import { type Completed, sentOr } from "../../wire/defaults.ts";
import { fromSi, toSi } from "../../wire/units.ts";
import type { ReceiverLossesRequest } from "./request.ts";

/** The receiver and the light on it. */
export interface LitReceiver {
	readonly receiver: Receiver;
	readonly dish: Dish | undefined; // undefined where the request states the light instead
	readonly area: number | undefined; // of that dish's aperture [m²]
	readonly entering: number | undefined; // through the receiver aperture [W]; undefined for an efficiency line
	readonly absorbed: number; // [W]
	readonly methods: readonly Method[]; // behind the light
}

/** A receiver in the light of its dish, or in the light that the request states. */
function litReceiver(request: ReceiverLossesRequest): Completed<LitReceiver> {
	return request.dish === undefined
		? receiverInStatedLight(request, request.absorbedPowerW!)
		: receiverInDish(request, request.dish);
}

function receiverInStatedLight(request: ReceiverLossesRequest, absorbed: number): Completed<LitReceiver> {
	const light = absorbed / request.beamIrradianceWPerM2;
	const { design: receiver, assumed } = designReceiverInLight(
		sparseReceiver(request.receiver),
		light,
		fluidById(request.fluid),
		request.elevationM,
	);
	const lit = { receiver, dish: undefined, area: undefined, absorbed, methods: [] };
	if (!hasTube(receiver)) return { value: { ...lit, entering: undefined }, assumed: [] };
	const cone = coneOf(request);
	return {
		value: { ...lit, entering: absorbed / receiverAbsorptance(receiver, toSi.degrees(cone.value)) },
		assumed: [...wireAssumed(assumed), ...cone.assumed],
	};
}

/** Half-angle of the cone of the stated light [°]. */
function coneOf({ rimAngleDeg }: ReceiverLossesRequest): Completed<number> {
	return sentOr(
		rimAngleDeg,
		"/rimAngleDeg",
		fromSi.degrees(USUAL_RIM_ANGLE),
		unconfirmed(
			handbook("usual rim angle of a dish: a flat receiver can be smallest there", RIM_ANGLE_SOURCE),
		),
	);
}

function receiverInDish(request: ReceiverLossesRequest, sent: WireDish): Completed<LitReceiver> {
	const { design: dish, assumed: ofDish } = designDish(sparseDish(sent));
	const { design: receiver, assumed: ofReceiver } = designReceiver(
		sparseReceiver(request.receiver),
		dish,
		fluidById(request.fluid),
		request.elevationM,
	);
	return {
		value: receiverLight(dish, receiver, request),
		assumed: wireAssumed([...ofDish, ...ofReceiver]),
	};
}

function receiverLight(dish: Dish, receiver: Receiver, request: ReceiverLossesRequest): LitReceiver {
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

/** A receiver-losses request in the terms of the core. */
export interface LossesPlan {
	readonly lit: LitReceiver;
	readonly survey: SurveyPlan;
	readonly standstill: Standstill;
	readonly beam: number; // [W/m²]
	readonly basis: number; // power that efficiencies refer to [W]
	readonly weatherproof: boolean;
	readonly air: DayAir;
}

/** @param sent  the request as received */
export function lossesPlan(
	request: ReceiverLossesRequest,
	_designs: unknown,
	sent: unknown,
): Completed<LossesPlan> {
	const { value: lit, assumed } = litReceiver(request);
	const { receiver, beamIrradianceWPerM2: beam } = request;
	return {
		value: {
			lit,
			survey: surveyPlan(request, lit.absorbed),
			standstill: standstill(request, lit),
			beam,
			basis: lit.area === undefined ? lit.absorbed : beam * lit.area,
			weatherproof:
				!hasTube(receiver) || receiver.insulation.thicknessMm === 0 || receiver.insulation.weatherproof,
			air: airAt(["ambientC"], request.ambientC, sent),
		},
		assumed,
	};
}

/** The operating points of the table. */
function surveyPlan(request: ReceiverLossesRequest, absorbed: number): SurveyPlan {
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

function standstill(request: ReceiverLossesRequest, lit: LitReceiver): Standstill {
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
