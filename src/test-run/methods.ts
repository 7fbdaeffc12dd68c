import type { Method } from "../methods.ts";
import { measuredSkyMethods } from "../sky/methods.ts";
import type { PredictedRun } from "./predicted-run.ts";
import type { StandardLine } from "./standardised-power.ts";

/** Methods behind the answers about a run. */
export function testRunMethods(
	standard: StandardLine,
	prediction: PredictedRun | undefined,
): readonly Method[] {
	const line = standard.outcome === "undetermined" ? undefined : standard;
	return [
		{
			name: "Power from the tank's heat content, water by its enthalpy",
			source: "IAPWS R7-97(2012), region 1; reading uncertainty by JCGM 100:2008 (GUM), 4.3.7",
			confirmed: true,
			outsideRange: false,
		},
		{
			name: "Power standardised to 700 W/m² and its regression on the excess of the water above the air",
			source: "ASAE S580",
			confirmed: false, // its bounds on beam, air, water, points and r²
			outsideRange: line !== undefined && !line.asInStandard,
		},
		{
			name: "Optical factor and losses of one lump, by generalised least squares on its integrated heat balance",
			source:
				"Mullick, Kandpal & Kumar, Solar Energy 46 (1991) 139–143; restricted likelihood: Patterson & Thompson, Biometrika 58 (1971) 545–554",
			confirmed: false,
			outsideRange: false,
		},
		...(prediction ? [...measuredSkyMethods("measured"), ...prediction.outcome.methods] : []),
	];
}
