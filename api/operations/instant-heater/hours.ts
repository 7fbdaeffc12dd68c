import { z } from "@hono/zod-openapi";
import type { InstantHours as CoreHours } from "../../../src/index.ts";
import { isoText, isoTexts } from "../../wire/time-zone.ts";
import { degrees, fromSi, litresPerMinute, minutes, watts, wattsPerSquareMetre } from "../../wire/units.ts";

const localTime = (description: string) => z.string().openapi({ description, format: "date-time" });

const Interval = z.strictObject({
	from: localTime("Local time at which the interval begins."),
	to: localTime("Local time at which the interval ends."),
});

export const InstantHours = z
	.strictObject({
		timeZone: z.string().meta({ description: "IANA time zone of the local times of this day." }),
		window: Interval.meta({ description: "Interval in which hot water is wanted." }),
		held: z.array(Interval).meta({
			description:
				"Intervals in which the heater meets the request, in order. Their ends are interpolated linearly between rows.",
		}),
		heldMin: minutes("Time during which the heater meets the request, over the whole day."),
		heldInWindowMin: minutes("Time during which the heater meets the request, within the window."),
		series: z
			.strictObject({
				stepMin: minutes("Time between rows; the last interval may be shorter."),
				time: z.array(z.string()).meta({ description: "Local time of each row." }),
				sunAltitudeDeg: z.array(degrees("Altitude of the sun; 0 below the horizon.")),
				beamIrradianceWPerM2: z.array(wattsPerSquareMetre("Beam irradiance on a plane normal to the beam.")),
				flowLPerMin: z.array(litresPerMinute("Flow at the wanted temperature; 0 where none is possible.")),
				powerW: z.array(watts("Power delivered to the water at the tap.")),
				leastFlowLPerMin: z.array(
					litresPerMinute(
						"Lowest flow that does not boil in the receiver; 0 where none boils and with a vessel.",
					),
				),
			})
			.meta({ description: "Time series of the day as columns." }),
	})
	.openapi("InstantHours", { description: "Performance of the heater through the hours of the day." });

/** @param feedLPerMin  flow at the cold feed [L/min] of a mass flow [kg/s] */
export function wireHours(
	{ times, rows, held, window, heldShare }: CoreHours,
	zone: string,
	step: number,
	feedLPerMin: (massFlow: number) => number,
): z.input<typeof InstantHours> {
	const interval = ({ from, to }: { from: number; to: number }) => ({
		from: isoText(from, zone),
		to: isoText(to, zone),
	});
	const whole = held.reduce((sum, { from, to }) => sum + to - from, 0);
	return {
		timeZone: zone,
		window: interval(window),
		held: held.map(interval),
		heldMin: fromSi.minutes(whole),
		heldInWindowMin: fromSi.minutes(heldShare * (window.to - window.from)),
		series: {
			stepMin: fromSi.minutes(step),
			time: isoTexts(times, zone),
			sunAltitudeDeg: rows.map(({ conditions }) => fromSi.degrees(conditions.altitude)),
			beamIrradianceWPerM2: rows.map(({ conditions }) => conditions.beam),
			flowLPerMin: rows.map(({ steady }) => (steady.kind === "flows" ? feedLPerMin(steady.massFlow) : 0)),
			powerW: rows.map(({ steady }) => (steady.kind === "flows" ? steady.power : 0)),
			leastFlowLPerMin: rows.map(({ leastFlow }) => feedLPerMin(leastFlow)),
		},
	};
}
