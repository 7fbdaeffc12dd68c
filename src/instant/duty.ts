import { DomainError } from "../errors.ts";
import { water } from "../fluids/water.ts";

/** Required temperatures of an instant heater. */
export interface Duty {
	readonly cold: number; // of the feed [K]
	readonly wanted: number; // at the tap [K]
	readonly boiling: number; // of water at the pressure of the line [K]
}

/** Heat per kilogram of water [J/kg]; DomainError contradictory where the wanted temperature is not warmer than the feed. */
export function enthalpyRise({ cold, wanted }: Pick<Duty, "cold" | "wanted">): number {
	const rise = water.enthalpy(wanted) - water.enthalpy(cold);
	if (!(rise > 0))
		throw new DomainError(
			"contradictory",
			"tap.temperature",
			"the wanted temperature is not warmer than the feed",
			{ cold, wanted },
		);
	return rise;
}
