import { DomainError } from "../errors.ts";
import type { Fluid } from "../fluids/fluid.ts";
import { bracketedRoot } from "../numeric/root.ts";
import type { ReceiverConditions } from "./conditions.ts";
import { receiverFilmConductance } from "./film.ts";
import { type ReceiverLosses, totalReceiverLoss } from "./loss-paths.ts";
import { receiverLosses } from "./losses.ts";
import { hasTube, type Receiver } from "./receiver.ts";

/** Air, wind and sun around a receiver. */
export type ReceiverSurroundings = Omit<ReceiverConditions, "wallTemperature">;

/** Operating conditions of a receiver. */
export interface ReceiverOperation extends ReceiverSurroundings {
	readonly fluid: Fluid;
	readonly fluidTemperature: number; // mean of the fluid in the tube [K]; for an efficiency line that of the leaving fluid
	readonly flow: number; // [m³/s]
	readonly absorbed: number; // light absorbed [W]
}

/** Steady state of a receiver: absorbed = useful + sum of losses. */
export interface ReceiverBalance {
	readonly useful: number; // to the fluid [W]; negative where the receiver cools it
	readonly losses: ReceiverLosses; // [W]
	readonly wallTemperature: number; // mean of the absorber [K]; for an efficiency line that of the leaving fluid
	readonly filmTemperature: number; // of the fluid at the tube wall [K]: that of the wall, with the resistance of the copper neglected
	readonly efficiency: number | undefined; // useful over absorbed; undefined where nothing is absorbed
}

const ROOT_TOLERANCE = 1e-11; // [K] of the wall temperature, with which the balance closes to about 1e-9 W
const HOTTEST = 6000; // [K] about the temperature of the sun, which no absorber exceeds (second law)

/** Steady balance of a receiver, solved for its wall temperature.
 *  @param receiver,operation  the receiver and its operating conditions
 *  Method  useful = h·A·(T_wall − T_fluid) and the losses increase with wall temperature, so there is one root between the colder of
 *          fluid and air and the hotter of them plus absorbed/(h·A)
 *  Range   DomainError impossible where the absorbed heat is not removed even at 6000 K */
export function receiverBalance(receiver: Receiver, operation: ReceiverOperation): ReceiverBalance {
	const { fluid, fluidTemperature, flow, absorbed, ambient } = operation;
	if (!hasTube(receiver)) {
		const losses = receiverLosses(receiver, { ...operation, wallTemperature: fluidTemperature });
		return balance(absorbed - losses.unresolved, losses, fluidTemperature, absorbed);
	}
	const conductance = receiverFilmConductance(receiver, fluid, fluidTemperature, flow);
	const excess = (wallTemperature: number): number =>
		conductance * (wallTemperature - fluidTemperature) +
		totalReceiverLoss(receiverLosses(receiver, { ...operation, wallTemperature })) -
		absorbed;
	const coldest = Math.min(fluidTemperature, ambient);
	const hottest = Math.max(fluidTemperature, ambient) + absorbed / conductance;
	if (hottest > HOTTEST && excess(HOTTEST) < 0)
		throw new DomainError(
			"impossible",
			"receiver.light",
			"fluid and losses cannot remove this much absorbed light at any wall temperature",
			{ absorbed, hottest: HOTTEST },
		);
	const wallTemperature = bracketedRoot(excess, coldest, Math.min(HOTTEST, hottest), ROOT_TOLERANCE);
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

/** Wall temperature at which the losses equal the absorbed light [K]: the pump has stopped and the dish still faces the sun.
 *  @param absorbed      light absorbed [W], 0 or more; of an efficiency line opticalEfficiency·A·G
 *  @param surroundings  air, wind and sun
 *  Range   limited to 6000 K, which no absorber exceeds (second law)
 *  Error   the loss models are far outside their data here: ± 15 % of the rise above the air (common practice, no source) */
export function stagnationTemperature(
	receiver: Receiver,
	absorbed: number,
	surroundings: ReceiverSurroundings,
): number {
	const excess = (wallTemperature: number): number =>
		totalReceiverLoss(receiverLosses(receiver, { ...surroundings, wallTemperature })) - absorbed;
	if (excess(HOTTEST) < 0) return HOTTEST;
	return bracketedRoot(excess, surroundings.ambient, HOTTEST, ROOT_TOLERANCE);
}
