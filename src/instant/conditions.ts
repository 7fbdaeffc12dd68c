import type { ReceiverSurroundings } from "../receiver/balance.ts";
import { totalReceiverLoss } from "../receiver/loss-paths.ts";
import { receiverLosses } from "../receiver/losses.ts";
import type { TubeReceiver } from "../receiver/receiver.ts";
import type { Heater } from "./heater.ts";

/** Constant sun and air around the heater. */
export interface Conditions extends ReceiverSurroundings {
	readonly beam: number; // [W/m²]
}

/** Light absorbed [W]; zero while the sun is lower than the dish can track. */
export function absorbedLight(heater: Heater, conditions: Conditions): number {
	return conditions.altitude < heater.lowestAltitude ? 0 : heater.absorbingArea * conditions.beam;
}

/** Absorbed light minus losses for a wall temperature [W]; negative where the losses are greater.
 *  @param convection  of the heater relative to its correlations [-] */
export function gainAtWall(
	receiver: TubeReceiver,
	convection: number,
	absorbed: number,
	conditions: Conditions,
	wallTemperature: number,
): number {
	const { ambient, wind, pressure, altitude } = conditions;
	const losses = receiverLosses(receiver, { wallTemperature, ambient, wind, pressure, altitude });
	return absorbed - totalReceiverLoss(losses) - (convection - 1) * losses.convected;
}

/** Whether a wall temperature is possible; a search stops outside these limits. */
export function isWallTemperature(temperature: number): boolean {
	return temperature >= COLDEST_WALL && temperature <= HOTTEST_WALL;
}

const COLDEST_WALL = 100; // [K] colder than any air
export const HOTTEST_WALL = 6000; // [K] about the temperature of the sun, which no absorber exceeds (second law)
