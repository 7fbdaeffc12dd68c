import type { CautionRule } from "./caution.ts";
import { tankFreezing } from "./tank-freezing.ts";

/** Frost around the tank in the coldest hour of a run. */
export const tankFrost: CautionRule = ({ plant: { tank }, weather }) => {
	if (tank.surroundings.kind === "indoors") return tankFreezing(tank.surroundings.temperature);
	let coldest = Number.POSITIVE_INFINITY;
	for (const air of weather.ambient) coldest = Math.min(coldest, air);
	return tankFreezing(coldest);
};
