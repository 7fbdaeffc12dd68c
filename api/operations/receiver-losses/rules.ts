import { hasTube } from "../../../src/index.ts";
import { LIMITS } from "../../config/limits.ts";
import { dishFocus, dishOffset, dishSize, hemisphereKnown, type WithDish } from "../../parts/dish.ts";
import {
	hollowBehindOpening,
	receiverTubeWall,
	receiverWithinDish,
	tubeWound,
} from "../../parts/receiver.ts";
import { contradictory, type Rule, tooLarge } from "../../validation/rule.ts";
import type { ReceiverLossesRequest } from "./request.ts";

type LossesRule = Rule<ReceiverLossesRequest, WithDish>;

/** The light comes from a dish or is given. */
const lightOnce: LossesRule = ({ dish, absorbedPowerW }) => {
	if (dish === undefined && absorbedPowerW === undefined)
		return [contradictory("", "nothing lights the receiver: give a dish, or absorbedPowerW")];
	return dish !== undefined && absorbedPowerW !== undefined
		? ["dish", "absorbedPowerW"].map((name) =>
				contradictory(`/${name}`, "dish and absorbedPowerW both light the receiver: give only one"),
			)
		: [];
};

/** A dish has a rim angle of its own. */
const coneOnce: LossesRule = ({ dish, rimAngleDeg }) =>
	dish !== undefined && rimAngleDeg !== undefined
		? [contradictory("/rimAngleDeg", "the dish that is given sets the cone of light: leave rimAngleDeg out")]
		: [];

/** Only a dish can size an aperture. */
const apertureKnown: LossesRule = ({ dish, receiver }) =>
	dish === undefined && hasTube(receiver) && receiver.apertureDiameterM === "auto"
		? [
				contradictory(
					"/receiver/apertureDiameterM",
					"without a dish there is no spot to size the aperture by: give its diameter",
				),
			]
		: [];

/** Temperatures times winds times tilts stay within what one request may ask. */
const rowsBounded: LossesRule = ({ oilTemperatureC, windMPerS, tiltDeg }) => {
	const rows = oilTemperatureC.length * windMPerS.length * tiltDeg.length;
	const most = LIMITS.receiverStates.value;
	const detail = `${rows} combinations of temperature, wind and tilt are more than the ${most} that one request may ask`;
	return rows > most
		? ["oilTemperatureC", "windMPerS", "tiltDeg"].map((name) => tooLarge(`/${name}`, detail))
		: [];
};

/** Rules about the dish, where there is one. */
const dishAlone: LossesRule = ({ dish }, designs) =>
	dish === undefined ? [] : [dishSize, dishFocus].flatMap((rule) => rule({ dish }, designs));

/** What a request for losses must keep to. */
export const LOSSES_RULES: readonly LossesRule[] = [
	lightOnce,
	coneOnce,
	dishAlone,
	dishOffset,
	receiverWithinDish,
	hemisphereKnown,
	apertureKnown,
	hollowBehindOpening,
	tubeWound,
	receiverTubeWall,
	rowsBounded,
];
