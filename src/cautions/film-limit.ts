import { type CautionRule, type HotFluid, temperature } from "./caution.ts";

/** Fluid above its film limit. */
export const filmLimit: CautionRule<HotFluid> = ({ outcome, plant: { loop } }) => {
	const limit = loop.fluid.limits.film.temperature;
	return outcome.maximumFilm > limit
		? [
				{
					code: "fluidAboveFilmLimit",
					severity: "danger",
					parameters: {
						fluid: loop.fluid.name,
						filmTemperature: temperature(outcome.maximumFilm),
						limit: temperature(limit),
					},
					message:
						"At the receiver's wall {fluid} reaches {filmTemperature}; the limit of its kind there is about {limit}. It chars and clogs the tube: have a licensed fitter raise the flow or lower the oil limit, and follow the maker's data sheet.",
				},
			]
		: [];
};
