import { water } from "../fluids/water.ts";
import type { Conditions } from "./conditions.ts";
import { enthalpyRise } from "./duty.ts";
import type { Heater } from "./heater.ts";
import { type NeededAperture, neededAperture } from "./needed-aperture.ts";
import { vesselModel } from "./oil-vessel.ts";
import type { Steady } from "./steady.ts";
import { type InstantTask, steadyFlow, vesselBetween } from "./task.ts";
import { USES, type Use } from "./uses.ts";
import { type ChargedDraw, chargedDraw } from "./vessel-charge.ts";

/** Demand of a use, and what this heater delivers for it. */
export interface ServedUse {
	readonly use: Use;
	readonly modestFlow: number; // [kg/s]
	readonly modestPower: number; // [W]
	readonly lavishFlow: number; // [kg/s]
	readonly lavishPower: number; // [W]
	readonly steady: Steady; // at the modest temperature
	readonly needed: NeededAperture; // for the modest end
	readonly fromCharge: ChargedDraw | undefined; // the modest end, from a charged vessel
}

/** Basin, sink and shower under one sun. Flows are volumes at feed temperature.
 *  @param charge  temperature of the charged vessel [K]; ignored without a vessel */
export function servedUses(
	heater: Heater,
	task: InstantTask,
	conditions: Conditions,
	charge: number,
): readonly ServedUse[] {
	const { arrangement } = task;
	const between = vesselBetween(arrangement);
	const { cold } = task.duty;
	const density = water.density(cold);
	return USES.map((use) => {
		const modest = { ...task.duty, wanted: use.modest.temperature };
		const modestFlow = use.modest.flow * density;
		const lavishFlow = use.lavish.flow * density;
		const { ambient, wind, pressure } = conditions;
		return {
			use,
			modestFlow,
			modestPower: modestFlow * enthalpyRise(modest),
			lavishFlow,
			lavishPower: lavishFlow * enthalpyRise({ cold, wanted: use.lavish.temperature }),
			steady: steadyFlow(arrangement, heater, modest, conditions),
			needed: neededAperture(arrangement, heater, modest, modestFlow, task.largestAperture, conditions),
			fromCharge: between
				? chargedDraw(
						heater,
						vesselModel(between.vessel, ambient, wind, pressure),
						charge,
						modest,
						modestFlow,
						conditions,
					)
				: undefined,
		};
	});
}
