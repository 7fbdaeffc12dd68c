import type { Dish } from "../dish/dish.ts";
import { hasTube } from "../receiver/receiver.ts";
import type { DayCase } from "../uncertainty/day-case.ts";
import type { Changed } from "./changed.ts";

export function withDish(of: DayCase, dish: Dish): DayCase {
	return { ...of, plant: { ...of.plant, dish } };
}

/** A larger mirror of the same shape: the rim angle does not change, so the spot grows; the receiver does not change. */
export function largerAperture(of: DayCase, more: number): Changed {
	const { dish } = of.plant;
	const scale = Math.sqrt(1 + more);
	const focalLength = dish.focalLength * scale;
	switch (dish.kind) {
		case "twoAxis":
			return withDish(of, { ...dish, diameter: dish.diameter * scale, focalLength });
		case "offsetPolar":
			return withDish(of, { ...dish, mirrorArea: dish.mirrorArea * (1 + more), focalLength });
		default:
			return dish satisfies never;
	}
}

export function newMirror(of: DayCase, reflectance: number): Changed {
	const { dish, receiver } = of.plant;
	if (!hasTube(receiver)) return "measuredWhole";
	return dish.reflectance < reflectance ? withDish(of, { ...dish, reflectance }) : "alreadySo";
}

export function washedMirror(of: DayCase, cleanliness: number): Changed {
	const { dish, receiver } = of.plant;
	if (!hasTube(receiver)) return "measuredWhole";
	return dish.cleanliness < cleanliness ? withDish(of, { ...dish, cleanliness }) : "alreadySo";
}

export function truerMirror(of: DayCase, less: number): Changed {
	const { dish, receiver } = of.plant;
	if (!hasTube(receiver)) return "measuredWhole";
	if (dish.slopeError === 0) return "alreadySo";
	return withDish(of, { ...dish, slopeError: dish.slopeError * (1 - less) });
}
