import { ICE_POINT } from "../constants.ts";

/** The variable of every property fit in this folder: hundreds of kelvins above the ice point [100 K]. */
export const SCALE = 100; // [K]

/** Scaled temperature x = (T − 273.15 K)/100 K, limited to the range; NaN stays NaN.
 *  @param temperature [K]     @param low,high  range of the fit [K] */
export function boundedScaled(temperature: number, low: number, high: number): number {
	const bounded = Math.min(Math.max(temperature, low), high);
	return (bounded - ICE_POINT) / SCALE;
}
