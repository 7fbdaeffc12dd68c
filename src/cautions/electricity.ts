import type { Plant } from "../plant/plant.ts";
import type { CautionRule } from "./caution.ts";

/** Current beside water. */
export const electricity: CautionRule<{ readonly plant: { readonly loop: Pick<Plant["loop"], "pump"> } }> = ({
	plant: { loop },
}) =>
	loop.pump.electricPower > 0
		? [
				{
					code: "electricShock",
					severity: "danger",
					parameters: { power: { kind: "power", value: loop.pump.electricPower } },
					message:
						"The pump and the drives stand in the wet. Use extra-low voltage, or a residual-current device and an earth, wired by a licensed electrician to your local code.",
				},
			]
		: [];
