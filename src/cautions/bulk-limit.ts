import { type CautionRule, type HotFluid, temperature } from "./caution.ts";

/** Fluid above its bulk limit. */
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
						"{fluid} reaches {fluidTemperature}; the limit of its kind is about {limit}. It breaks down, thickens and can catch fire: have a licensed fitter lower the oil limit, and follow the maker's data sheet.",
				},
			]
		: [];
};
