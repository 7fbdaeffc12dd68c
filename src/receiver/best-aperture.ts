import type { Dish } from "../dish/dish.ts";
import { apertureArea } from "../dish/optics.ts";
import { boundedMaximum } from "../numeric/minimize.ts";
import { type ApertureSetting, apertureTrade } from "./aperture-trade.ts";
import type { ReceiverSurroundings } from "./balance.ts";
import type { TubeReceiver } from "./receiver.ts";

/** Conditions for which the aperture is chosen. */
export interface ApertureDuty extends ReceiverSurroundings {
	readonly beam: number; // [W/m²]
	readonly fluidTemperature: number; // mean of the fluid in the receiver [K]
}

const SMALLEST = 0.01; // of the focal length: narrower than the image of the sun
const LARGEST = 0.4; // of the focal length
const LARGEST_BUILT = 5; // [m] limit of the model of a disc's convection
const WIDEST = 0.5; // of the width of the mirror; limits dishes of long focal length
const TOLERANCE = 1e-3; // [m]

/** Aperture diameter of the receiver with the greatest net heat [m]: a wider one spills less light, a narrower one loses less heat.
 *  @param dish      the dish; an off-axis one on a polar axis at equinox
 *  @param receiver  its surfaces, tube and insulation; its size follows from `proportionedReceiver`
 *  @param duty      beam, fluid and air for which it is chosen
 *  @returns  1 to 40 % of the focal length, at most half the width of the mirror and 5 m, within 1 mm of the optimum; the lower bound where no size has a net gain */
export function bestApertureDiameter(dish: Dish, receiver: TubeReceiver, duty: ApertureDuty): number {
	return apertureOfMostHeat(dish, receiver, { ...duty, power: duty.beam * apertureArea(dish, 0, 0) });
}

/** The same for a given beam power on the dish, independent of season. */
export function apertureOfMostHeat(dish: Dish, receiver: TubeReceiver, setting: ApertureSetting): number {
	const trade = apertureTrade(dish, receiver, setting);
	const [low, high] = apertureBounds(dish);
	return boundedMaximum((diameter) => trade(diameter).net, low, high, TOLERANCE);
}

/** Bounds of the search for the best aperture [m]. */
export function apertureBounds(dish: Dish): readonly [low: number, high: number] {
	const high = Math.min(LARGEST * dish.focalLength, WIDEST * mirrorWidth(dish), LARGEST_BUILT);
	return [Math.min(SMALLEST * dish.focalLength, high / 2), high];
}

/** Diameter of the mirror, or of a disc of its area [m]. */
function mirrorWidth(dish: Dish): number {
	switch (dish.kind) {
		case "twoAxis":
			return dish.diameter;
		case "offsetPolar":
			return Math.sqrt((4 * dish.mirrorArea) / Math.PI);
		default:
			return dish satisfies never;
	}
}
