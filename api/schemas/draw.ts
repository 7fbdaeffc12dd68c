import { z } from "@hono/zod-openapi";
import type { Draw as CoreDraw } from "../../src/index.ts";
import { assume, type Fill } from "../assumed.ts";
import { instantOf } from "../time-zone.ts";
import { celsius, kilowattHours, litres, litresPerMinute, toSi } from "../units.ts";
import { clock } from "./clock.ts";

const MOST_DRAWS = 200;

const SingleDraw = z
	.strictObject({
		time: clock("When the tap opens, local time."),
		litres: litres("Water at the tap. Give this or energyKwh.", 0.01, 20_000).optional(),
		energyKwh: kilowattHours(
			"Heat at the tap, above the mains. Give this or litres.",
			0.001,
			2000,
		).optional(),
		temperatureC: celsius("Wanted at the tap. Left out: draw.mixedTemperatureC.", 5, 95).optional(),
		flowLPerMin: assume(
			litresPerMinute("At the tap.", 0.1, 500),
			6,
			"a thrifty shower; common practice, no source",
		),
	})
	.openapi("SingleDraw", { description: "One use of hot water.", example: { time: "07:30", litres: 40 } });

export const Draw = z
	.strictObject({
		draws: assume(
			z
				.array(SingleDraw)
				.max(MOST_DRAWS)
				.meta({ description: "Uses of hot water through the run, in any order." }),
			[],
			"nobody draws while the tank warms",
		),
		mainsTemperatureC: assume(
			celsius("Of the cold feed.", 0, 40),
			10,
			"EN 16147 and EU 812/2013 reckon with 10 °C (from memory)",
		),
		mixedTemperatureC: assume(
			celsius("At the tap, hot and cold mixed.", 5, 95),
			40,
			"a warm shower; EU 812/2013 counts mixed water at 40 °C (from memory)",
		),
	})
	.openapi("Draw", { description: "The cold feed, and what is drawn at the taps." });

export type Draw = z.output<typeof Draw>;

/** The day's draws, each at its instant. */
export function coreDraws(draw: Draw, date: string, zone: string, fill: Fill): CoreDraw[] {
	return draw.draws.map((single, i) => ({
		time: instantOf(date, single.time, zone),
		demand:
			single.litres === undefined
				? { kind: "energy", energy: toSi.kilowattHours(single.energyKwh!) }
				: { kind: "volume", volume: toSi.litres(single.litres) },
		temperature: toSi.celsius(
			single.temperatureC ??
				fill(`/draw/draws/${i}/temperatureC`, draw.mixedTemperatureC, "the mixed temperature of all draws"),
		),
		flow: toSi.litresPerMinute(single.flowLPerMin),
	}));
}
