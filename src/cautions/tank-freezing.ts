import { type Caution, temperature } from "./caution.ts";

const FREEZING = 273.15; // [K] of water, IAPWS R14-08 (value from memory)

/** Ice in a tank, or in its pipes, which freeze long before it. @param ambient  of the air around it [K] */
export function tankFreezing(ambient: number): readonly Caution[] {
	return ambient > FREEZING
		? []
		: [
				{
					code: "tankFreezes",
					severity: "danger",
					parameters: { air: temperature(ambient) },
					message:
						"The tank stands in air of {air}. Its vent, its relief valve and its pipes freeze long before the tank does, and a blocked vent bursts it: house it, or trace-heat what is thin, as a licensed plumber advises.",
				},
			];
}
