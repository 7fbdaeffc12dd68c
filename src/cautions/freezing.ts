import type { Plant } from "../plant/plant.ts";
import type { Weather } from "../sky/weather.ts";
import { type CautionRule, temperature } from "./caution.ts";

const NIGHT_SKY = 5; // [K] below the air that a pipe under a clear sky can fall; common practice, no source

/** Frost in the loop. */
export const freezing: CautionRule<{
	readonly plant: { readonly loop: Pick<Plant["loop"], "fluid"> };
	readonly weather: Pick<Weather, "ambient">;
}> = ({ plant: { loop }, weather }) => {
	let coldest = Number.POSITIVE_INFINITY;
	for (const air of weather.ambient) coldest = Math.min(coldest, air);
	const limit = loop.fluid.limits.coldest.temperature;
	if (coldest - NIGHT_SKY > limit) return [];
	const parameters = { fluid: loop.fluid.name, air: temperature(coldest), limit: temperature(limit) };
	return [
		loop.fluid.freezes
			? {
					code: "loopFreezes",
					severity: "danger",
					parameters,
					message:
						"{fluid} freezes at {limit}, the air falls to {air} in this run, and a clear night is colder still. Ice bursts the loop, and steam follows: drain it, or use a fluid that bears the frost, as a licensed fitter advises.",
				}
			: {
					code: "loopStiffens",
					severity: "warning",
					parameters,
					message:
						"{fluid} no longer flows below about {limit}, and the air falls to {air} in this run. The pump may not start: choose a thinner fluid, or have a licensed fitter add trace heating.",
				},
	];
};
