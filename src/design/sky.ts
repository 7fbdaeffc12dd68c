import type { MeasuredSky } from "../sky/measured-weather.ts";
import type { Designed } from "./assumption.ts";
import { derived } from "./grounds.ts";

/** Readings that a beam alone completes: a dish uses nothing else of the sky. */
export function designMeasuredSky(sky: MeasuredSky): Designed<MeasuredSky> {
	if (!sky.beam || sky.diffuse || sky.global) return { design: sky, assumed: [] };
	const grounds = derived("only beam was given, and a dish uses nothing else");
	return {
		design: { ...sky, diffuse: new Float64Array(sky.time.length) },
		assumed: [{ subject: "sky.diffuse", value: 0, grounds }],
	};
}
