import { type CautionRule, type HotFluid, temperature } from "./caution.ts";

/** A receiver in full sun without flow. */
export const pumpStops: CautionRule<HotFluid> = ({ outcome, plant: { loop } }) => {
	const limit = loop.fluid.limits.film.temperature;
	const above = outcome.stagnation > limit;
	return [
		{
			code: "pumpStops",
			severity: above ? "danger" : "warning",
			parameters: {
				fluid: loop.fluid.name,
				stagnationTemperature: temperature(outcome.stagnation),
				limit: temperature(limit),
			},
			message: above
				? "If the pump or the power stops in full sun the receiver reaches {stagnationTemperature}, above the limit of {fluid}, {limit}. The dish must turn away by itself, with stored energy, on loss of flow or power; have a licensed person prove it."
				: "If the pump or the power stops in full sun the receiver reaches {stagnationTemperature}. The dish should turn away by itself on loss of flow or power; have a licensed person prove it.",
		},
	];
};
