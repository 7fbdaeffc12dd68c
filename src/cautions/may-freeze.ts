import { type Caution, type DayAir, temperature } from "./caution.ts";

const NIGHT_SKY = 5; // [K] below air temperature that a pipe under a clear sky can reach; common practice, no source

/** Whether a pipe under a clear night sky cools to a temperature [K]. */
export function coolsTo(limit: number, { coldest }: DayAir): boolean {
	return coldest - NIGHT_SKY <= limit;
}

/** Outdoor water in air of assumed temperature.
 *  @param place  part that contains it */
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
