import type { Pipe } from "../loop/loop.ts";
import type { Weather } from "../sky/weather.ts";
import type { Conditions } from "./conditions.ts";
import { directFlow } from "./direct.ts";
import type { Duty } from "./duty.ts";
import type { Heater } from "./heater.ts";
import { type OilVessel, vesselModel } from "./oil-vessel.ts";
import type { Steady } from "./steady.ts";
import { vesselFlow } from "./vessel-flow.ts";

/** How the sun's heat meets the water: in the focus itself, or in a small vessel of oil that the focus heats and that stands at
 *  the tap, without a pipe between. */
export type Arrangement =
	| {
			readonly kind: "direct";
			readonly outlet: Pipe /* from receiver to tap; length 0 where it is drawn at the focus */;
	  }
	| Between;

interface Between {
	readonly kind: "vessel";
	readonly vessel: OilVessel;
	readonly start: number; // temperature of oil and vessel when the sun comes on [K]
}

/** The sun of a day, and when water is wanted of it. */
export interface InstantDay {
	readonly weather: Weather;
	readonly from: number; // unix time [s]
	readonly to: number; // unix time [s]
}

/** What is asked of an instant heater. */
export interface InstantTask {
	readonly duty: Duty;
	readonly wantedFlow: number | undefined; // [kg/s]; undefined where any flow will do
	readonly arrangement: Arrangement;
	readonly levels: readonly Conditions[]; // steady suns to answer for, one or more
	readonly day: InstantDay | undefined;
	readonly largestAperture: number; // bound of the search for a larger dish [m²]
}

/** What a heater gives steadily in either arrangement; none where the water would boil before it is as hot as wanted. */
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

/** The vessel between; undefined where the water goes straight through the focus. */
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

/** The pipe from the receiver to the tap; undefined behind a vessel, which stands at the tap. */
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
