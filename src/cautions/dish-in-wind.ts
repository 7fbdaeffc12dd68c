import type { CautionRule } from "./caution.ts";
import type { InstantCircumstances } from "./instant.ts";

/** Wind load on a dish. */
export const dishInWind: CautionRule<{
	readonly heater: Pick<InstantCircumstances["heater"], "apertureArea">;
}> = ({ heater }) => [
	{
		code: "dishInWind",
		severity: "warning",
		parameters: { aperture: { kind: "area", value: heater.apertureArea } },
		message:
			"A dish of {aperture} is a sail. A structural engineer must prove roof, mast and anchors for wind, snow and quake to your local building code; the dish must stow itself in a storm.",
	},
];
