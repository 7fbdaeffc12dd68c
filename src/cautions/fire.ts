import { type CautionRule, type HotFluid, temperature } from "./caution.ts";

/** A fluid that burns. */
export const fire: CautionRule<HotFluid> = ({ outcome, plant: { loop } }) => {
	const flash = loop.fluid.limits.flash?.temperature;
	if (flash === undefined) return [];
	const above = Math.max(outcome.maximumOil, outcome.stagnation) >= flash;
	return [
		{
			code: above ? "fluidAboveFlashPoint" : "fluidBurns",
			severity: above ? "danger" : "warning",
			parameters: {
				fluid: loop.fluid.name,
				flashPoint: temperature(flash),
				stagnationTemperature: temperature(outcome.stagnation),
			},
			message: above
				? "{fluid} flashes at about {flashPoint}, and the receiver reaches {stagnationTemperature} when the flow stops in full sun. A leak can catch fire: turn the dish away by itself on any fault, keep leaks out of the insulation, keep a fire extinguisher for oil at hand, and follow your local fire code."
				: "{fluid} burns, with a flash point of about {flashPoint}. Keep leaks out of the insulation and a fire extinguisher for oil at hand, and follow your local fire code.",
		},
	];
};
