import { type CautionRule, type HotFluid, temperature } from "./caution.ts";

/** Fluid burnt on at the hot wall. */
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
						"At the receiver's wall {fluid} reaches {filmTemperature}; fluids of its kind bear about {limit} there. It chars and clogs the tube: have a licensed fitter raise the flow or lower the oil limit, and go by the maker's data sheet.",
				},
			]
		: [];
};
