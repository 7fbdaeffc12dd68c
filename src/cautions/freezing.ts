import type { Plant } from "../plant/plant.ts";
import { type CautionRule, type DayAir, temperature } from "./caution.ts";
import { coolsTo, mayFreeze } from "./may-freeze.ts";

/** Frost in the loop. */
export const freezing: CautionRule<{
	readonly plant: { readonly loop: Pick<Plant["loop"], "fluid"> };
	readonly air: DayAir;
}> = ({ plant: { loop }, air }) => {
	const { fluid } = loop;
	if (fluid.freezes && air.source === "assumed") return mayFreeze("loop", air);
	const limit = fluid.limits.coldest.temperature;
	if (!coolsTo(limit, air)) return [];
	const parameters = { fluid: fluid.name, air: temperature(air.coldest), limit: temperature(limit) };
	return [
		fluid.freezes
			? {
					code: "loopFreezes",
					severity: "danger",
					parameters,
					message:
						"{fluid} freezes at {limit}, the air falls to {air}, and a clear night is colder still. Ice bursts the loop, and steam follows: drain it, or use a fluid that bears the frost, as a licensed fitter advises.",
				}
			: {
					code: "loopStiffens",
					severity: "warning",
					parameters,
					message:
						"{fluid} no longer flows below about {limit}, and the air falls to {air}. The pump may not start: choose a thinner fluid, or have a licensed fitter add trace heating.",
				},
	];
};
