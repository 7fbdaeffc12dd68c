import { z } from "@hono/zod-openapi";
import {
	equivalentVolume,
	TAPPING_PROFILE_IDS,
	TAPPING_PROFILE_SOURCE,
	type TappingProfileId,
	tappingProfile,
} from "../../src/index.ts";
import { provenance } from "../parts/provenance.ts";
import { NoQuery } from "../wire/query.ts";
import { celsius, fromSi, kilowattHours, litres, litresPerMinute, toSi } from "../wire/units.ts";
import { basicOperation } from "./operation.ts";

const IDS = TAPPING_PROFILE_IDS as readonly [TappingProfileId, ...TappingProfileId[]];
const MAINS_C = 10; // [°C] mains temperature behind the litres, EN 16147 (from memory)

const ProfileDraw = z
	.strictObject({
		time: z.string().meta({ description: "Local time at which the draw starts.", examples: ["07:00"] }),
		energyKwh: kilowattHours("Heat of the draw above mains temperature."),
		flowLPerMin: litresPerMinute("Minimum flow of the draw."),
		usefulTemperatureC: celsius("Temperature from which heat counts as useful."),
		peakTemperatureC: celsius(
			"Temperature to reach during the draw. Absent where the regulation names none.",
		).optional(),
	})
	.openapi("ProfileDraw", { description: "One draw of hot water in a tapping profile." });

const TappingProfile = z
	.strictObject({
		id: z.enum(IDS).meta({ description: "Id of the profile in requests." }),
		referenceEnergyKwh: kilowattHours("Heat of the day Q_ref: the sum of all draws."),
		litresAt40C: litres("Mixed water of 40 °C that carries the heat of the day, with mains of 10 °C."),
		litresAt60C: litres("Hot water of 60 °C that carries the heat of the day, with mains of 10 °C."),
		draws: z.array(ProfileDraw).meta({ description: "Draws of the day in order of time." }),
		validFor: z.string().meta({
			description: "Scope of the profile: the use that it represents, and the use that it does not.",
		}),
		...provenance,
	})
	.openapi("TappingProfile", { description: "A published profile of hot water use over one day." });

const Response = z
	.strictObject({
		profiles: z.array(TappingProfile).meta({ description: "Tapping profiles that requests can name." }),
	})
	.openapi("TappingProfiles");

export const tappingProfiles = basicOperation({
	method: "get",
	path: "/v1/tapping-profiles",
	operationId: "getTappingProfiles",
	tag: "Tank",
	summary: "Published profiles of hot water use",
	description:
		"Lists the load profiles of Regulation (EU) 814/2013, Annex III, from 3XS to 4XL: every draw, the heat of the day and the litres that carry it. Send an id in `draw.profile`.",
	input: NoQuery,
	output: Response,
	examples: { all: { summary: "Request without parameters", value: {} } },
	maxAge: 86_400,
	cost: 1,
	answer: () => ({ profiles: IDS.map(wireProfile) }),
});

const VALID =
	"One household or building of this size on any day, with mains of 10 °C; scale it for several. A profile for tests, not a measured household.";
const two = (whole: number) => String(whole).padStart(2, "0");

function wireProfile(id: TappingProfileId): z.input<typeof TappingProfile> {
	const profile = tappingProfile(id);
	const litresAt = (temperatureC: number) =>
		fromSi.litres(equivalentVolume(profile, toSi.celsius(temperatureC), toSi.celsius(MAINS_C)));
	const draws = profile.map((draw) => ({
		time: `${two(Math.floor(draw.minuteOfDay / 60))}:${two(draw.minuteOfDay % 60)}`,
		energyKwh: fromSi.kilowattHours(draw.energy),
		flowLPerMin: fromSi.litresPerMinute(draw.flow),
		usefulTemperatureC: fromSi.celsius(draw.usefulTemperature),
		...(draw.peakTemperature !== undefined && {
			peakTemperatureC: fromSi.celsius(draw.peakTemperature),
		}),
	}));
	return {
		id,
		referenceEnergyKwh: draws.reduce((sum, { energyKwh }) => sum + energyKwh, 0),
		litresAt40C: litresAt(40),
		litresAt60C: litresAt(60),
		draws,
		validFor: VALID,
		...TAPPING_PROFILE_SOURCE,
	};
}
