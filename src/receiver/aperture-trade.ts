import type { Dish } from "../dish/dish.ts";
import { dishSpots, shareWithin } from "../dish/intercept.ts";
import { lightCone } from "../dish/light-cone.ts";
import { dishMethods } from "../dish/methods.ts";
import { reflectedShare } from "../dish/optics.ts";
import type { Method } from "../methods.ts";
import { receiverAbsorptance } from "./absorption.ts";
import type { ReceiverSurroundings } from "./balance.ts";
import type { ReceiverConditions } from "./conditions.ts";
import { totalReceiverLoss } from "./loss-paths.ts";
import { receiverLosses } from "./losses.ts";
import { receiverMethods, stretchedByAny } from "./methods.ts";
import { proportionedReceiver } from "./proportions.ts";
import type { TubeReceiver } from "./receiver.ts";

/** Sun, fluid and air under which apertures are compared. */
export interface ApertureSetting extends ReceiverSurroundings {
	readonly power: number; // beam on the dish's aperture [W]
	readonly fluidTemperature: number; // mean of the fluid in the receiver [K]
}

/** What one aperture of the receiver takes and loses. */
export interface ApertureTrade {
	readonly interceptFactor: number;
	readonly spilled: number; // reflected light that misses the aperture [W]
	readonly absorbed: number; // [W]
	readonly lost: number; // by all paths [W]
	readonly net: number; // absorbed less lost [W]; negative where the receiver cools the fluid
}

const WALL_OVER_FLUID = 15; // [K] assumed of the absorber; common practice, no source. 15 K more moves the best aperture by 1–2 %

/** Light caught against heat lost by a receiver with this aperture and all else in proportion to it.
 *  @param receiver          its surfaces, tube and lagging; its size is set here by `proportionedReceiver`
 *  @returns  a function of the aperture's diameter [m]: the mirror's spots are worked out once for all of them
 *  Assumes  the absorber 15 K over the fluid whatever the size: a full balance would need the flow and move little */
export function apertureTrade(
	dish: Dish,
	receiver: TubeReceiver,
	setting: ApertureSetting,
): (apertureDiameter: number) => ApertureTrade {
	const spots = dishSpots(dish);
	const reflected = setting.power * reflectedShare(dish);
	const cone = lightCone(dish);
	const state = atWork(setting);
	return (apertureDiameter) => {
		const sized = proportionedReceiver(receiver, apertureDiameter);
		const intercept = shareWithin(spots, apertureDiameter / 2);
		const absorbed = reflected * intercept * receiverAbsorptance(sized, cone);
		const lost = totalReceiverLoss(receiverLosses(sized, state));
		return {
			interceptFactor: intercept,
			spilled: reflected * (1 - intercept),
			absorbed,
			lost,
			net: absorbed - lost,
		};
	};
}

function atWork(setting: ApertureSetting): ReceiverConditions {
	return { ...setting, wallTemperature: setting.fluidTemperature + WALL_OVER_FLUID };
}

/** What a comparison of these apertures rests on; the smallest and the largest of them are enough.
 *  @param diameters  [m] */
export function tradeMethods(
	dish: Dish,
	receiver: TubeReceiver,
	setting: ApertureSetting,
	diameters: readonly [number, ...(readonly number[])],
): readonly Method[] {
	const state = atWork(setting);
	return [
		...dishMethods(dish),
		...stretchedByAny(diameters.map((d) => receiverMethods(proportionedReceiver(receiver, d), [state]))),
	];
}
