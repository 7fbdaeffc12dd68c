import { DomainError } from "../errors.ts";
import type { Fluid } from "../fluids/fluid.ts";
import { bracketedRoot } from "../numeric/root.ts";
import type { ReceiverConditions } from "./conditions.ts";
import { receiverFilmConductance } from "./film.ts";
import { type ReceiverLosses, totalReceiverLoss } from "./loss-paths.ts";
import { receiverLosses } from "./losses.ts";
import { hasTube, type Receiver } from "./receiver.ts";

/** Air, wind and sun about a receiver. */
export type ReceiverSurroundings = Omit<ReceiverConditions, "wallTemperature">;

/** A receiver at work. */
export interface ReceiverOperation extends ReceiverSurroundings {
	readonly fluid: Fluid;
	readonly fluidTemperature: number; // mean of the fluid in the tube [K]; of an efficiency line the leaving fluid's
	readonly flow: number; // [m³/s]
	readonly absorbed: number; // light taken up by the absorber [W]
}

/** A receiver's steady state: absorbed = useful + the sum of losses. */
export interface ReceiverBalance {
	readonly useful: number; // to the fluid [W]; negative where the receiver cools it
	readonly losses: ReceiverLosses; // [W]
	readonly wallTemperature: number; // mean of the absorber [K]; of an efficiency line the leaving fluid's
	readonly filmTemperature: number; // of the fluid that touches the tube [K]: the wall's, copper left out
	readonly efficiency: number | undefined; // useful over absorbed; undefined where nothing is absorbed
}

const ROOT_TOLERANCE = 1e-11; // [K] of the wall temperature, so that the balance closes to about 1e-9 W
const HOTTEST = 6000; // [K] no absorber outshines the sun: second law

/** Steady balance of a receiver, solved for its wall temperature.
 *  @param receiver,operation  what it is, and what is done to it
 *  Method  useful = h·A·(T_wall − T_fluid) rises with the wall as the losses do, so that one root lies between the colder of
 *          fluid and air, and the hotter of them plus absorbed/(h·A)
 *  Range   DomainError impossible where even 6000 K does not pass on what is absorbed */
export function receiverBalance(receiver: Receiver, operation: ReceiverOperation): ReceiverBalance {
	const { fluid, fluidTemperature, flow, absorbed, ambient } = operation;
	if (!hasTube(receiver)) {
		const losses = receiverLosses(receiver, { ...operation, wallTemperature: fluidTemperature });
		return balance(absorbed - losses.unresolved, losses, fluidTemperature, absorbed);
	}
	const conductance = receiverFilmConductance(receiver, fluid, fluidTemperature, flow);
	const surplus = (wallTemperature: number): number =>
		conductance * (wallTemperature - fluidTemperature) +
		totalReceiverLoss(receiverLosses(receiver, { ...operation, wallTemperature })) -
		absorbed;
	const coldest = Math.min(fluidTemperature, ambient);
	const hottest = Math.max(fluidTemperature, ambient) + absorbed / conductance;
	if (hottest > HOTTEST && surplus(HOTTEST) < 0)
		throw new DomainError(
			"impossible",
			"receiver.light",
			"neither fluid nor losses carry off so much light: no wall is so hot",
			{ absorbed, hottest: HOTTEST },
		);
	const wallTemperature = bracketedRoot(surplus, coldest, Math.min(HOTTEST, hottest), ROOT_TOLERANCE);
	const losses = receiverLosses(receiver, { ...operation, wallTemperature });
	return balance(conductance * (wallTemperature - fluidTemperature), losses, wallTemperature, absorbed);
}

function balance(
	useful: number,
	losses: ReceiverLosses,
	wallTemperature: number,
	absorbed: number,
): ReceiverBalance {
	return {
		useful,
		losses,
		wallTemperature,
		filmTemperature: wallTemperature,
		efficiency: absorbed > 0 ? useful / absorbed : undefined,
	};
}

/** Wall temperature at which the losses eat up all that is absorbed: the pump has stopped and the dish still faces the sun [K].
 *  @param absorbed      light taken up by the absorber [W], 0 or more; of an efficiency line opticalEfficiency·A·G
 *  @param surroundings  air, wind and sun
 *  Range   at most 6000 K: no absorber outshines the sun (second law), so one that would still gain there stays there
 *  Error   the loss models run far outside their data here: take it as ± 15 % of the rise over the air (common practice, no source) */
export function stagnationTemperature(
	receiver: Receiver,
	absorbed: number,
	surroundings: ReceiverSurroundings,
): number {
	const surplus = (wallTemperature: number): number =>
		totalReceiverLoss(receiverLosses(receiver, { ...surroundings, wallTemperature })) - absorbed;
	if (surplus(HOTTEST) < 0) return HOTTEST;
	return bracketedRoot(surplus, surroundings.ambient, HOTTEST, ROOT_TOLERANCE);
}
