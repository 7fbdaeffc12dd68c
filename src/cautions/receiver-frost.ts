import type { Fluid } from "../fluids/fluid.ts";
import { water } from "../fluids/water.ts";
import { outletPipe } from "../instant/task.ts";
import { type Caution, type CautionRule, type DayAir, temperature } from "./caution.ts";
import type { InstantCircumstances } from "./instant.ts";
import { coolsTo, mayFreeze } from "./may-freeze.ts";

/** Frost in an instant heater's water: in its receiver, or in the coil of its vessel. */
export const instantFrost: CautionRule<InstantCircumstances> = ({ task, air }) => {
	if (outletPipe(task.arrangement)) return receiverFrost(water, air);
	if (air.source === "assumed") return mayFreeze("coil", air);
	if (!coolsTo(water.limits.coldest.temperature, air)) return [];
	return [
		{
			code: "coilFreezes",
			severity: "danger",
			parameters: { air: temperature(air.coldest) },
			message:
				"The air falls to {air}, and the vessel cools down by night. Ice bursts the coil and its pipes: drain them or house the vessel, as a licensed plumber advises.",
		},
	];
};

/** Frost in a receiver with a fluid that bursts pipes. */
export function receiverFrost({ freezes, limits }: Fluid, air: DayAir): readonly Caution[] {
	if (!freezes) return [];
	if (air.source === "assumed") return mayFreeze("receiver", air);
	if (!coolsTo(limits.coldest.temperature, air)) return [];
	return [
		{
			code: "receiverFreezes",
			severity: "danger",
			parameters: { air: temperature(air.coldest) },
			message:
				"The air falls to {air}, and a tube under a clear night sky is colder still. Ice bursts the receiver and its pipes: drain them every night by a valve that opens by itself, as a licensed plumber advises.",
		},
	];
}
