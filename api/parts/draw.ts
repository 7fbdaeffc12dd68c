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
import { contradictory, fourDigits, type Rule } from "../validation/rule.ts";
import { clock } from "../wire/clock-time.ts";
import { assume, type Completed, sentOr } from "../wire/defaults.ts";
import { instantOf, isoText } from "../wire/time-zone.ts";
import { celsius, kilowattHours, litres, litresPerMinute, toSi } from "../wire/units.ts";
import type { Run } from "./run.ts";

const MOST_DRAWS = 200;
const PROFILES = TAPPING_PROFILE_IDS as readonly [TappingProfileId, ...TappingProfileId[]];

const SingleDraw = z
	.strictObject({
		time: clock("Local time at which the tap opens."),
		litres: litres(
			"Volume of water drawn at the tap. Send either this or `energyKwh`.",
			0.01,
			20_000,
		).optional(),
		energyKwh: kilowattHours(
			"Heat drawn at the tap, above the mains temperature. Send either this or `litres`.",
			0.001,
			2000,
		).optional(),
		temperatureC: celsius(
			"Temperature wanted at the tap. If omitted: `draw.mixedTemperatureC`.",
			5,
			95,
		).optional(),
		flowLPerMin: assume(
			litresPerMinute("Flow rate at the tap.", 0.1, 500),
			6,
			practice("a water-saving shower"),
		),
	})
	.openapi("SingleDraw", { description: "One draw of hot water.", example: { time: "07:30", litres: 40 } });

export const Draw = z
	.strictObject({
		draws: assume(
			z
				.array(SingleDraw)
				.max(MOST_DRAWS)
				.meta({ description: "Draws of hot water during the run, in any order." }),
			[],
			practice("no hot water is drawn while the tank warms up"),
		),
		profile: z
			.enum(PROFILES)
			.meta({
				description:
					"Daily tapping profile of a household, drawn in addition to `draws`: Regulation (EU) 814/2013, Annex III, table 1. Draws outside the run are ignored.",
			})
			.optional(),
		scale: assume(
			z
				.number()
				.min(0.01)
				.max(1000)
				.meta({ description: "Number of households that follow the tapping profile.", "x-unit": "1" }),
			1,
			practice("one household"),
		),
		mainsTemperatureC: assume(
			celsius("Temperature of the cold mains water.", 0, 35),
			10,
			unconfirmed(
				standard("the cold water that water heaters are rated with", "EN 16147; Regulation (EU) 812/2013"),
			),
		),
		mixedTemperatureC: assume(
			celsius("Temperature at the tap, with hot and cold water mixed.", 5, 95),
			40,
			standard(
				"a warm shower, and the mixed temperature that water heaters are rated at",
				"Regulation (EU) 814/2013, Annex I",
			),
		),
	})
	.openapi("Draw", { description: "The cold mains water, and the hot water drawn at the taps." });

export type Draw = z.output<typeof Draw>;

/** The day's draws, each with its instant: those listed, and those of the profile that begin within the run. */
export function coreDraws(draw: Draw, date: string, run: Run): Completed<readonly CoreDraw[]> {
	const listed = draw.draws.map((_, i) => listedDraw(draw, i, date, run));
	const draws = listed.map(({ value }) => value);
	const assumed = listed.flatMap((one) => one.assumed);
	if (draw.profile === undefined) return { value: draws, assumed };
	const midnight = instantOf(date, "00:00", run.timeZone);
	const mixed = toSi.celsius(draw.mixedTemperatureC);
	const usual = profileDraws(tappingProfile(draw.profile), midnight, draw.scale, mixed);
	const within = usual.filter(({ time }) => time >= run.start && time < run.end);
	return { value: [...draws, ...within], assumed };
}

function listedDraw(draw: Draw, i: number, date: string, run: Run): Completed<CoreDraw> {
	const single = draw.draws[i]!;
	const { value: temperatureC, assumed } = sentOr(
		single.temperatureC,
		`/draw/draws/${i}/temperatureC`,
		draw.mixedTemperatureC,
		derived("the mixed temperature of the request, for all draws"),
	);
	const value: CoreDraw = {
		time: instantOf(date, single.time, run.timeZone),
		demand:
			single.litres === undefined
				? { kind: "energy", energy: toSi.kilowattHours(single.energyKwh!) }
				: { kind: "volume", volume: toSi.litres(single.litres) },
		temperature: toSi.celsius(temperatureC),
		flow: toSi.litresPerMinute(single.flowLPerMin),
	};
	return { value, assumed };
}

type DrawRule = Rule<{ readonly draw: Draw }>;

/** A draw has either a volume or a heat. */
export const drawDemand: DrawRule = ({ draw }) =>
	draw.draws.flatMap(({ litres, energyKwh }, i) => {
		if ((litres === undefined) !== (energyKwh === undefined)) return [];
		const problem = litres === undefined ? "neither litres nor energyKwh" : "both litres and energyKwh";
		return [contradictory(`/draw/draws/${i}`, `draw.draws[${i}] has ${problem}; send one of them`)];
	});

/** A scale applies to a profile. */
export const scaleOfProfile: DrawRule = ({ draw }) =>
	draw.scale !== 1 && draw.profile === undefined
		? [
				contradictory(
					"/draw/scale",
					`draw.scale of ${fourDigits(draw.scale)} has no profile to apply to; send draw.profile, or omit draw.scale`,
				),
			]
		: [];

/** Tap water is warmer than the mains. */
export const tapAboveMains: DrawRule = ({ draw }) => {
	const mains = draw.mainsTemperatureC;
	const wanted = [
		["/draw/mixedTemperatureC", draw.mixedTemperatureC] as const,
		...draw.draws.map(({ temperatureC }, i) => [`/draw/draws/${i}/temperatureC`, temperatureC] as const),
	];
	return wanted.flatMap(([pointer, temperature]) =>
		temperature !== undefined && temperature <= mains
			? [
					contradictory(
						pointer,
						`must be above draw.mainsTemperatureC (${fourDigits(mains)} °C); ${fourDigits(temperature)} °C is not`,
					),
				]
			: [],
	);
};

/** Every draw begins within the run. */
export const drawsWithinRun: Rule<{ readonly draw: Draw; readonly date: string }, { readonly run: Run }> = (
	{ draw, date },
	{ run: { start, end, timeZone } },
) => {
	if (end <= start) return [];
	return draw.draws.flatMap(({ time }, i) => {
		const opens = instantOf(date, time, timeZone);
		return opens >= start && opens < end
			? []
			: [
					contradictory(
						`/draw/draws/${i}/time`,
						`must be within the run, from ${isoText(start, timeZone)} to ${isoText(end, timeZone)}; ${time} is not`,
					),
				];
	});
};
