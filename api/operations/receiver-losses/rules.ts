import { hasTube } from "../../../src/index.ts";
import { LIMITS } from "../../config/limits.ts";
import { dishFocus, dishOffset, dishSize, hemisphereKnown, type WithDish } from "../../parts/dish.ts";
import {
	openingWithinCavity,
	receiverTubeWall,
	receiverWithinDish,
	tubeWindable,
} from "../../parts/receiver.ts";
import { contradictory, type Rule, tooLarge } from "../../validation/rule.ts";
import type { ReceiverLossesRequest } from "./request.ts";

type LossesRule = Rule<ReceiverLossesRequest, WithDish>;

/** The light comes from a dish or is stated, never both. */
const oneLightSource: LossesRule = ({ dish, absorbedPowerW }) => {
	if (dish === undefined && absorbedPowerW === undefined)
		return [contradictory("", "the request has no light on the receiver; send dish or absorbedPowerW")];
	return dish !== undefined && absorbedPowerW !== undefined
		? ["dish", "absorbedPowerW"].map((name) =>
				contradictory(
					`/${name}`,
					"dish and absorbedPowerW both set the light on the receiver; send only one of them",
				),
			)
		: [];
};

/** A dish has a rim angle of its own. */
const oneCone: LossesRule = ({ dish, rimAngleDeg }) =>
	dish !== undefined && rimAngleDeg !== undefined
		? [contradictory("/rimAngleDeg", "dish already sets the cone of light; omit rimAngleDeg")]
		: [];

/** Only a dish can size an aperture. */
const apertureKnown: LossesRule = ({ dish, receiver }) =>
	dish === undefined && hasTube(receiver) && receiver.apertureDiameterM === "auto"
		? [
				contradictory(
					"/receiver/apertureDiameterM",
					"receiver.apertureDiameterM auto needs a dish to size the aperture; send dish or the diameter",
				),
			]
		: [];

/** Temperatures times winds times tilts stay within the limit of one request. */
const rowsBounded: LossesRule = ({ oilTemperatureC, windMPerS, tiltDeg }) => {
	const rows = oilTemperatureC.length * windMPerS.length * tiltDeg.length;
	const most = LIMITS.receiverStates.value;
	const detail = `oilTemperatureC, windMPerS and tiltDeg make ${rows} combinations, more than the limit of ${most}; send fewer values`;
	return rows > most
		? ["oilTemperatureC", "windMPerS", "tiltDeg"].map((name) => tooLarge(`/${name}`, detail))
		: [];
};

/** Rules about the dish, where there is one. */
const dishAlone: LossesRule = ({ dish }, designs) =>
	dish === undefined ? [] : [dishSize, dishFocus].flatMap((rule) => rule({ dish }, designs));

/** Rules of a receiver-losses request. */
export const LOSSES_RULES: readonly LossesRule[] = [
	oneLightSource,
	oneCone,
	dishAlone,
	dishOffset,
	receiverWithinDish,
	hemisphereKnown,
	apertureKnown,
	openingWithinCavity,
	tubeWindable,
	receiverTubeWall,
	rowsBounded,
];
