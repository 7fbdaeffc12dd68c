import type { ReceiverSurroundings } from "../receiver/balance.ts";
import { totalReceiverLoss } from "../receiver/loss-paths.ts";
import { receiverLosses } from "../receiver/losses.ts";
import type { TubeReceiver } from "../receiver/receiver.ts";
import type { Heater } from "./heater.ts";

/** Sun and air about the heater, steady. */
export interface Conditions extends ReceiverSurroundings {
	readonly beam: number; // [W/m²]
}

/** Light that the absorber takes up [W]; none while the sun stands lower than the dish can face. */
export function absorbedLight(heater: Heater, conditions: Conditions): number {
	return conditions.altitude < heater.lowestAltitude ? 0 : heater.absorbingArea * conditions.beam;
}

/** What is left of the light when the absorber stands at a temperature [W]; negative where it loses more than it takes up.
 *  @param convection  of the heater, over what the correlations say [-] */
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

/** Whether a wall can be so hot or cold: a search that strays beyond gives up. */
export function isWall(temperature: number): boolean {
	return temperature >= COLDEST_WALL && temperature <= HOTTEST_WALL;
}

const COLDEST_WALL = 100; // [K] no air is as cold
export const HOTTEST_WALL = 6000; // [K] no absorber outshines the sun: second law
