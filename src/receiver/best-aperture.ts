import type { Dish } from "../dish/dish.ts";
import { dishOptics } from "../dish/optics.ts";
import { boundedMaximum } from "../numeric/minimize.ts";
import { receiverAbsorptance } from "./absorption.ts";
import type { ReceiverSurroundings } from "./balance.ts";
import { receiverLosses, totalReceiverLoss } from "./losses.ts";
import { proportionedReceiver } from "./proportions.ts";
import type { TubeReceiver } from "./receiver.ts";

/** What the aperture is chosen for. */
export interface ApertureDuty extends ReceiverSurroundings {
	readonly beam: number; // [W/m²]
	readonly fluidTemperature: number; // mean of the fluid in the receiver [K]
}

const WALL_OVER_FLUID = 15; // [K] assumed of the absorber; common practice, no source. 15 K more moves the best aperture by 1–2 %
const SMALLEST = 0.01; // of the focal length: tighter than the sun's own image
const LARGEST = 0.4; // of the focal length
const TOLERANCE = 1e-3; // [m]

/** Aperture diameter of the receiver that leaves most heat: wider, less light spills past; narrower, less heat is lost [m].
 *  @param dish      the dish; a fixed-focus one at equinox
 *  @param receiver  its surfaces, tube and lagging; its size is set here by `proportionedReceiver`
 *  @param duty      beam, fluid and air it is chosen for
 *  @returns  between 1 and 40 % of the focal length, within 1 mm of the best; the lower end where nothing is ever gained */
export function bestApertureDiameter(dish: Dish, receiver: TubeReceiver, duty: ApertureDuty): number {
	const conditions = { ...duty, wallTemperature: duty.fluidTemperature + WALL_OVER_FLUID };
	const net = (apertureDiameter: number): number => {
		const sized = proportionedReceiver(receiver, apertureDiameter);
		const optics = dishOptics(dish, apertureDiameter, 0, 0);
		const entering = duty.beam * optics.apertureArea * optics.shares.toReceiver;
		return entering * receiverAbsorptance(sized) - totalReceiverLoss(receiverLosses(sized, conditions));
	};
	return boundedMaximum(net, SMALLEST * dish.focalLength, LARGEST * dish.focalLength, TOLERANCE);
}
