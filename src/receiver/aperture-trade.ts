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
import { outsideRangeInAny, receiverMethods } from "./methods.ts";
import { proportionedReceiver } from "./proportions.ts";
import type { TubeReceiver } from "./receiver.ts";

/** Sun, fluid and air under which apertures are compared. */
export interface ApertureSetting extends ReceiverSurroundings {
	readonly power: number; // beam on the dish's aperture [W]
	readonly fluidTemperature: number; // mean of the fluid in the receiver [K]
}

/** Heat absorbed and lost with one aperture of the receiver. */
export interface ApertureTrade {
	readonly interceptFactor: number;
	readonly spilled: number; // reflected light that misses the aperture [W]
	readonly absorbed: number; // [W]
	readonly lost: number; // through all paths [W]
	readonly net: number; // absorbed less lost [W]; negative where the receiver cools the fluid
}

const WALL_OVER_FLUID = 15; // [K] of the absorber, assumed; common practice, no source. 15 K more changes the best aperture by 1–2 %

/** Light absorbed and heat lost by a receiver with a given aperture and proportions that follow from it.
 *  @param receiver          its surfaces, tube and insulation; its size follows from `proportionedReceiver`
 *  @returns  a function of the aperture's diameter [m]: the spots of the mirror are computed once for all diameters
 *  Assumes  the absorber is 15 K above the fluid for every size: a full balance would need the flow and change the result little */
export function apertureTrade(
	dish: Dish,
	receiver: TubeReceiver,
	setting: ApertureSetting,
): (apertureDiameter: number) => ApertureTrade {
	const spots = dishSpots(dish);
	const reflected = setting.power * reflectedShare(dish);
	const cone = lightCone(dish);
	const state = workingConditions(setting);
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

function workingConditions(setting: ApertureSetting): ReceiverConditions {
	return { ...setting, wallTemperature: setting.fluidTemperature + WALL_OVER_FLUID };
}

/** Methods behind a comparison of apertures; the smallest and the largest are sufficient.
 *  @param diameters  [m] */
export function tradeMethods(
	dish: Dish,
	receiver: TubeReceiver,
	setting: ApertureSetting,
	diameters: readonly [number, ...(readonly number[])],
): readonly Method[] {
	const state = workingConditions(setting);
	return [
		...dishMethods(dish),
		...outsideRangeInAny(diameters.map((d) => receiverMethods(proportionedReceiver(receiver, d), [state]))),
	];
}
