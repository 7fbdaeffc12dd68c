import type { MeasuredSky } from "../sky/measured-weather.ts";
import type { Designed } from "./assumption.ts";
import { derived } from "./grounds.ts";

/** Measured sky; without diffuse and global irradiance, diffuse is zero, since a dish uses beam alone. */
export function designMeasuredSky(sky: MeasuredSky): Designed<MeasuredSky> {
	if (!sky.beam || sky.diffuse || sky.global) return { design: sky, assumed: [] };
	const grounds = derived("only beam was stated, and a dish uses nothing else");
	return {
		design: { ...sky, diffuse: new Float64Array(sky.time.length) },
		assumed: [{ subject: "sky.diffuse", value: 0, grounds }],
	};
}
