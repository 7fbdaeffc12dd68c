import type { Pipe } from "../loop/loop.ts";
import type { Weather } from "../sky/weather.ts";
import type { Conditions } from "./conditions.ts";
import { directFlow } from "./direct.ts";
import type { Duty } from "./duty.ts";
import type { Heater } from "./heater.ts";
import { type OilVessel, vesselModel } from "./oil-vessel.ts";
import type { Steady } from "./steady.ts";
import { vesselFlow } from "./vessel-flow.ts";

/** Where the water is heated: in the focus, or in a small vessel of oil that is heated by the receiver and placed at
 *  the tap, without a pipe. */
export type Arrangement =
	| {
			readonly kind: "direct";
			readonly outlet: Pipe /* from receiver to tap; length 0 for a tap at the focus */;
	  }
	| Between;

interface Between {
	readonly kind: "vessel";
	readonly vessel: OilVessel;
	readonly start: number; // temperature of oil and vessel at the start [K]
}

/** The sun of a day, and the period in which water is wanted. */
export interface InstantDay {
	readonly weather: Weather;
	readonly from: number; // unix time [s]
	readonly to: number; // unix time [s]
}

/** Demand on an instant heater. */
export interface InstantTask {
	readonly duty: Duty;
	readonly wantedFlow: number | undefined; // [kg/s]; undefined where any flow is acceptable
	readonly arrangement: Arrangement;
	readonly levels: readonly Conditions[]; // constant suns, one or more
	readonly day: InstantDay | undefined;
	readonly largestAperture: number; // bound of the search for a larger dish [m²]
}

/** Steady state of a heater in either arrangement; without flow where the wanted temperature is at or above boiling. */
export function steadyFlow(
	arrangement: Arrangement,
	heater: Heater,
	duty: Duty,
	conditions: Conditions,
): Steady {
	if (duty.wanted >= duty.boiling) return { kind: "none" };
	switch (arrangement.kind) {
		case "direct":
			return directFlow(heater, arrangement.outlet, duty, conditions);
		case "vessel": {
			const { ambient, wind, pressure } = conditions;
			return vesselFlow(heater, vesselModel(arrangement.vessel, ambient, wind, pressure), duty, conditions);
		}
		default:
			return arrangement satisfies never;
	}
}

/** The vessel between receiver and water; undefined where the water flows directly through the focus. */
export function vesselBetween(arrangement: Arrangement): Between | undefined {
	switch (arrangement.kind) {
		case "vessel":
			return arrangement;
		case "direct":
			return undefined;
		default:
			return arrangement satisfies never;
	}
}

/** The pipe from the receiver to the tap; undefined with a vessel, which is at the tap. */
export function outletPipe(arrangement: Arrangement): Pipe | undefined {
	switch (arrangement.kind) {
		case "direct":
			return arrangement.outlet;
		case "vessel":
			return undefined;
		default:
			return arrangement satisfies never;
	}
}
