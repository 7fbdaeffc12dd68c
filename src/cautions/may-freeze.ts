import { type Caution, type DayAir, temperature } from "./caution.ts";

const NIGHT_SKY = 5; // [K] below the air that a pipe under a clear sky can fall; common practice, no source

/** Whether a pipe under a clear night sky falls to a temperature [K]. */
export function coolsTo(limit: number, { coldest }: DayAir): boolean {
	return coldest - NIGHT_SKY <= limit;
}

/** Water out of doors in air that nobody looked up.
 *  @param place  what holds it */
export function mayFreeze(place: "loop" | "receiver" | "coil" | "tank", air: DayAir): readonly Caution[] {
	return [
		{
			code: "mayFreeze",
			severity: "danger",
			parameters: { place, air: temperature(air.coldest) },
			message:
				"Air of {air} was only assumed, and frost bursts the {place}. Look up the site's coldest night; drain, heat or house it as a licensed plumber advises.",
		},
	];
}
