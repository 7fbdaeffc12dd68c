import { z } from "@hono/zod-openapi";
import {
	type Draw as CoreDraw,
	derived,
	practice,
	profileDraws,
	standard,
	TAPPING_PROFILE_IDS,
	type TappingProfileId,
	tappingProfile,
	unconfirmed,
} from "../../src/index.ts";
import { clock } from "../wire/clock-time.ts";
import { assume, type Fill } from "../wire/defaults.ts";
import { instantOf } from "../wire/time-zone.ts";
import { celsius, kilowattHours, litres, litresPerMinute, toSi } from "../wire/units.ts";
import type { Run } from "./run.ts";

const MOST_DRAWS = 200;
const PROFILES = TAPPING_PROFILE_IDS as readonly [TappingProfileId, ...TappingProfileId[]];

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
		flowLPerMin: assume(litresPerMinute("At the tap.", 0.1, 500), 6, practice("a thrifty shower")),
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
			practice("nobody draws while the tank warms"),
		),
		profile: z
			.enum(PROFILES)
			.meta({
				description:
					"A household's day of use, Regulation (EU) 814/2013, Annex III, table 1, drawn besides `draws`. What falls outside the run is left out.",
			})
			.optional(),
		scale: assume(
			z.number().min(0.01).max(1000).meta({ description: "Households of the profile.", "x-unit": "1" }),
			1,
			practice("one household"),
		),
		mainsTemperatureC: assume(
			celsius("Of the cold feed.", 0, 35),
			10,
			unconfirmed(
				standard("the cold feed that water heaters are rated with", "EN 16147; Regulation (EU) 812/2013"),
			),
		),
		mixedTemperatureC: assume(
			celsius("At the tap, hot and cold mixed.", 5, 95),
			40,
			standard(
				"a warm shower, and the mixed water that water heaters are rated by",
				"Regulation (EU) 814/2013, Annex I",
			),
		),
	})
	.openapi("Draw", { description: "The cold feed, and what is drawn at the taps." });

export type Draw = z.output<typeof Draw>;

/** The day's draws, each at its instant: those listed, and those of the profile that begin within the run. */
export function coreDraws(draw: Draw, date: string, run: Run, fill: Fill): CoreDraw[] {
	const listed = draw.draws.map(
		(single, i): CoreDraw => ({
			time: instantOf(date, single.time, run.zone),
			demand:
				single.litres === undefined
					? { kind: "energy", energy: toSi.kilowattHours(single.energyKwh!) }
					: { kind: "volume", volume: toSi.litres(single.litres) },
			temperature: toSi.celsius(
				single.temperatureC ??
					fill(
						`/draw/draws/${i}/temperatureC`,
						draw.mixedTemperatureC,
						derived("the mixed temperature of all draws"),
					),
			),
			flow: toSi.litresPerMinute(single.flowLPerMin),
		}),
	);
	if (draw.profile === undefined) return listed;
	const midnight = instantOf(date, "00:00", run.zone);
	const mixed = toSi.celsius(draw.mixedTemperatureC);
	const usual = profileDraws(tappingProfile(draw.profile), midnight, draw.scale, mixed);
	return [...listed, ...usual.filter(({ time }) => time >= run.start && time < run.end)];
}
