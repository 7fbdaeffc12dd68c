import { type CautionRule, type HotFluid, temperature } from "./caution.ts";

/** Fluid hotter than it lasts. */
export const bulkLimit: CautionRule<HotFluid> = ({ outcome, plant: { loop } }) => {
	const limit = loop.fluid.limits.bulk.temperature;
	return outcome.maximumOil > limit
		? [
				{
					code: "fluidAboveBulkLimit",
					severity: "danger",
					parameters: {
						fluid: loop.fluid.name,
						fluidTemperature: temperature(outcome.maximumOil),
						limit: temperature(limit),
					},
					message:
						"{fluid} reaches {fluidTemperature}; fluids of its kind bear about {limit}. It breaks down, thickens and can catch fire: have a licensed fitter lower the oil limit, and go by the maker's data sheet.",
				},
			]
		: [];
};
