import { z } from "@hono/zod-openapi";
import type { InstantHours as CoreHours } from "../../../src/index.ts";
import { isoText, isoTexts } from "../../wire/time-zone.ts";
import { degrees, fromSi, litresPerMinute, minutes, watts, wattsPerSquareMetre } from "../../wire/units.ts";

const localTime = (description: string) => z.string().openapi({ description, format: "date-time" });

const Stretch = z.strictObject({ from: localTime("It begins."), to: localTime("It ends.") });

export const InstantHours = z
	.strictObject({
		timeZone: z.string().meta({ description: "Zone of the local times." }),
		window: Stretch.meta({ description: "When the water is wanted." }),
		held: z
			.array(Stretch)
			.meta({ description: "When what was asked is given, in order; between rows on a straight line." }),
		heldMin: minutes("Through the whole day."),
		heldInWindowMin: minutes("Within the window."),
		series: z
			.strictObject({
				stepMin: minutes("Between rows; the last may come sooner."),
				time: z.array(z.string()).meta({ description: "Local time of each row." }),
				sunAltitudeDeg: z.array(degrees("0 below the horizon.")),
				beamIrradianceWPerM2: z.array(wattsPerSquareMetre("On a plane normal to it.")),
				flowLPerMin: z.array(litresPerMinute("At the wanted temperature; 0 where none flows.")),
				powerW: z.array(watts("Heat in the water at the tap.")),
				leastFlowLPerMin: z.array(
					litresPerMinute("Any less boils in the receiver; 0 where none does, and behind a vessel."),
				),
			})
			.meta({ description: "The day in columns." }),
	})
	.openapi("InstantHours", { description: "The heater through the hours of the day." });

/** @param feedLPerMin  litres at the cold feed of a mass flow [kg/s] */
export function wireHours(
	{ times, rows, held, window, heldShare }: CoreHours,
	zone: string,
	step: number,
	feedLPerMin: (massFlow: number) => number,
): z.input<typeof InstantHours> {
	const stretch = ({ from, to }: { from: number; to: number }) => ({
		from: isoText(from, zone),
		to: isoText(to, zone),
	});
	const whole = held.reduce((sum, { from, to }) => sum + to - from, 0);
	return {
		timeZone: zone,
		window: stretch(window),
		held: held.map(stretch),
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
