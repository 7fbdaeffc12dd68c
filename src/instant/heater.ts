import type { Dish } from "../dish/dish.ts";
import { lightCone } from "../dish/light-cone.ts";
import { apertureArea, dishOptics } from "../dish/optics.ts";
import { receiverAbsorptance } from "../receiver/absorption.ts";
import { hasTube, type Receiver } from "../receiver/receiver.ts";

/** A dish on the sun and what stands in its focus. */
export interface Heater {
	readonly receiver: Receiver;
	readonly apertureArea: number; // facing the sun [m²]
	readonly absorbingArea: number; // light absorbed per W/m² of beam [m²]
	readonly lowestAltitude: number; // of the sun that the dish can face [rad]
	readonly convection: number; // heat the receiver gives the air by convection, over what its correlations say; 1 as they have it
}

const AS_CORRELATED = 1; // [-] the correlations taken at their word

/** @param latitude,declination  [rad]; only an off-axis dish on a polar axis, reshaped by season, asks for them */
export function heaterOf(dish: Dish, receiver: Receiver, latitude: number, declination: number): Heater {
	const area = apertureArea(dish, latitude, declination);
	const { lowestAltitude } = dish;
	if (!hasTube(receiver)) {
		const absorbingArea = area * receiver.opticalEfficiency;
		return { receiver, apertureArea: area, absorbingArea, lowestAltitude, convection: AS_CORRELATED };
	}
	const { shares } = dishOptics(dish, receiver.apertureDiameter, latitude, declination);
	const absorbingArea = area * shares.toReceiver * receiverAbsorptance(receiver, lightCone(dish));
	return { receiver, apertureArea: area, absorbingArea, lowestAltitude, convection: AS_CORRELATED };
}

/** The same heater larger or smaller: every length of dish, receiver and tube grows alike, so that rim angle, spill and
 *  concentration stay. The insulation's thickness and the gap behind a cover stay as they are. A measured line's loss grows with the area.
 *  @param factor  on the aperture's area, above 0 [-] */
export function scaledHeater(heater: Heater, factor: number): Heater {
	return {
		receiver: scaledReceiver(heater.receiver, factor),
		apertureArea: heater.apertureArea * factor,
		absorbingArea: heater.absorbingArea * factor,
		lowestAltitude: heater.lowestAltitude,
		convection: heater.convection,
	};
}

function scaledReceiver(receiver: Receiver, factor: number): Receiver {
	if (!hasTube(receiver))
		return {
			...receiver,
			lossCoefficient: receiver.lossCoefficient * factor,
			heldHeatCapacity: receiver.heldHeatCapacity * factor,
		};
	const stretch = Math.sqrt(factor);
	const apertureDiameter = receiver.apertureDiameter * stretch;
	const tube = {
		innerDiameter: receiver.tube.innerDiameter * stretch,
		outerDiameter: receiver.tube.outerDiameter * stretch,
		length: receiver.tube.length * stretch,
	};
	switch (receiver.kind) {
		case "cavity": {
			const innerDiameter = receiver.innerDiameter * stretch;
			return { ...receiver, apertureDiameter, innerDiameter, depth: receiver.depth * stretch, tube };
		}
		case "openCoil":
		case "glazedCoil":
			return { ...receiver, apertureDiameter, tube };
		default:
			return receiver satisfies never;
	}
}
