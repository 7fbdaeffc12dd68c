import { type CautionRule, temperature } from "./caution.ts";

const LOW = 368.15; // [K] 95 °C, about 1500 m; common practice, no source

/** Water that boils at a lower temperature than people expect. */
export const elevation: CautionRule = ({ outcome, plant }) =>
	outcome.boilingPoint < LOW
		? [
				{
					code: "lowBoilingPoint",
					severity: "info",
					parameters: {
						boilingPoint: temperature(outcome.boilingPoint),
						elevation: { kind: "length", value: plant.site.elevation },
					},
					message:
						"At {elevation} water boils at {boilingPoint}. Set limits and choose valves for that, not for sea level, with a licensed fitter.",
				},
			]
		: [];
