import type { Dish } from "../dish/dish.ts";
import { lightCone } from "../dish/light-cone.ts";
import { apertureArea, dishOptics } from "../dish/optics.ts";
import { receiverAbsorptance } from "../receiver/absorption.ts";
import { hasTube, type Receiver } from "../receiver/receiver.ts";

/** A dish that faces the sun, with a receiver in its focus. */
export interface Heater {
	readonly receiver: Receiver;
	readonly apertureArea: number; // normal to the beam [m²]
	readonly absorbingArea: number; // light absorbed per W/m² of beam [m²]
	readonly lowestAltitude: number; // lowest altitude of the sun that the dish can track [rad]
	readonly convection: number; // convective loss of the receiver relative to its correlations; 1 for the correlations themselves
}

const AS_CORRELATED = 1; // [-] for the correlations themselves

/** The heater of a dish and a receiver.
 *  @param latitude,declination  [rad]; they matter only for an off-axis dish on a polar axis, which is reshaped by season */
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

/** The same heater at another size: all lengths of dish, receiver and tube are scaled, so that rim angle, spillage and
 *  concentration do not change. Insulation thickness and the gap behind a cover do not change. The loss of an efficiency line is proportional to area.
 *  @param factor  ratio of aperture areas, above 0 [-] */
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
	const scale = Math.sqrt(factor);
	const apertureDiameter = receiver.apertureDiameter * scale;
	const tube = {
		innerDiameter: receiver.tube.innerDiameter * scale,
		outerDiameter: receiver.tube.outerDiameter * scale,
		length: receiver.tube.length * scale,
	};
	switch (receiver.kind) {
		case "cavity": {
			const innerDiameter = receiver.innerDiameter * scale;
			return { ...receiver, apertureDiameter, innerDiameter, depth: receiver.depth * scale, tube };
		}
		case "openCoil":
		case "glazedCoil":
			return { ...receiver, apertureDiameter, tube };
		default:
			return receiver satisfies never;
	}
}
