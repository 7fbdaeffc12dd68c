import type { Dish } from "../dish/dish.ts";
import { apertureArea } from "../dish/optics.ts";
import { boundedMaximum } from "../numeric/minimize.ts";
import { type ApertureSetting, apertureTrade } from "./aperture-trade.ts";
import type { ReceiverSurroundings } from "./balance.ts";
import type { TubeReceiver } from "./receiver.ts";

/** What the aperture is chosen for. */
export interface ApertureDuty extends ReceiverSurroundings {
	readonly beam: number; // [W/m²]
	readonly fluidTemperature: number; // mean of the fluid in the receiver [K]
}

const SMALLEST = 0.01; // of the focal length: tighter than the sun's own image
const LARGEST = 0.4; // of the focal length, and
const LARGEST_BUILT = 5; // [m] beyond it the convection of a disc is not known
const WIDEST = 0.5; // of the mirror's own width: for dishes of long focal length
const TOLERANCE = 1e-3; // [m]

/** Aperture diameter of the receiver that leaves most heat: wider, less light spills past; narrower, less heat is lost [m].
 *  @param dish      the dish; an off-axis one on a polar axis at equinox
 *  @param receiver  its surfaces, tube and lagging; its size is set here by `proportionedReceiver`
 *  @param duty      beam, fluid and air it is chosen for
 *  @returns  between 1 and 40 % of the focal length but no wider than half the mirror and 5 m, within 1 mm of the best; the lower end where nothing is ever gained */
export function bestApertureDiameter(dish: Dish, receiver: TubeReceiver, duty: ApertureDuty): number {
	return apertureOfMostHeat(dish, receiver, { ...duty, power: duty.beam * apertureArea(dish, 0, 0) });
}

/** The same for a given power of beam on the dish, of whatever season. */
export function apertureOfMostHeat(dish: Dish, receiver: TubeReceiver, setting: ApertureSetting): number {
	const trade = apertureTrade(dish, receiver, setting);
	const [low, high] = apertureBounds(dish);
	return boundedMaximum((diameter) => trade(diameter).net, low, high, TOLERANCE);
}

/** Where the best aperture is looked for [m]. */
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
