import type { Plant } from "../plant/plant.ts";
import type { CautionRule } from "./caution.ts";

/** Electricity near water. */
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
						"Pump and drives are in a wet location. Use extra-low voltage, or a residual-current device and an earth, wired by a licensed electrician to your local code.",
				},
			]
		: [];
