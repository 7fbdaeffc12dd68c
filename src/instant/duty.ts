import { DomainError } from "../errors.ts";
import { water } from "../fluids/water.ts";

/** What is asked of an instant heater's water. */
export interface Duty {
	readonly cold: number; // of the feed [K]
	readonly wanted: number; // at the tap [K]
	readonly boiling: number; // of water at the pressure of the line [K]
}

/** Heat that each kilogram takes up [J/kg]. A wanted temperature no warmer than the feed is DomainError contradictory. */
export function enthalpyRise({ cold, wanted }: Pick<Duty, "cold" | "wanted">): number {
	const rise = water.enthalpy(wanted) - water.enthalpy(cold);
	if (!(rise > 0))
		throw new DomainError(
			"contradictory",
			"tap.temperature",
			"the water wanted is not warmer than the feed",
			{ cold, wanted },
		);
	return rise;
}
