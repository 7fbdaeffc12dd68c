import { z } from "@hono/zod-openapi";
import {
	equivalentVolume,
	TAPPING_PROFILE_IDS,
	TAPPING_PROFILE_SOURCE,
	type TappingProfileId,
	tappingProfile,
} from "../../src/index.ts";
import { NoQuery } from "../wire/query.ts";
import { celsius, fromSi, kilowattHours, litres, litresPerMinute, toSi } from "../wire/units.ts";
import { basicOperation } from "./operation.ts";

const IDS = TAPPING_PROFILE_IDS as readonly [TappingProfileId, ...TappingProfileId[]];
const MAINS_C = 10; // [°C] that the litres count from, EN 16147 (from memory)

const ProfileDraw = z
	.strictObject({
		time: z.string().meta({ description: "When the tap opens, local time.", examples: ["07:00"] }),
		energyKwh: kilowattHours("Heat above the mains."),
		flowLPerMin: litresPerMinute("Least flow."),
		usefulTemperatureC: celsius("From which heat counts."),
		peakTemperatureC: celsius(
			"To be reached during the draw. Absent where the regulation names none.",
		).optional(),
	})
	.openapi("ProfileDraw");

const TappingProfile = z
	.strictObject({
		id: z.enum(IDS).meta({ description: "Its name in requests." }),
		referenceEnergyKwh: kilowattHours("Heat of the day: Q_ref, the sum of the draws."),
		litresAt40C: litres("Mixed water of 40 °C that carries that heat, mains of 10 °C."),
		litresAt60C: litres("Hot water of 60 °C that carries it, mains of 10 °C."),
		draws: z.array(ProfileDraw),
		validFor: z.string().meta({ description: "What it stands for, and for what it does not." }),
		source: z.string(),
	})
	.openapi("TappingProfile", { description: "A published day of hot water use." });

const Response = z.strictObject({ profiles: z.array(TappingProfile) }).openapi("TappingProfiles");

export const tappingProfiles = basicOperation({
	method: "get",
	path: "/v1/tapping-profiles",
	operationId: "getTappingProfiles",
	tag: "Tank",
	summary: "Published days of hot water use",
	description:
		"The load profiles of Regulation (EU) 814/2013, Annex III, from 3XS to 4XL, row by row, with the day's heat and the litres that carry it. Name one in `draw.profile`.",
	input: NoQuery,
	output: Response,
	examples: { all: { summary: "No parameters", value: {} } },
	maxAge: 86_400,
	cost: 1,
	answer: () => ({ profiles: IDS.map(wireProfile) }),
});

const VALID =
	"One user of the size, household or building, on any day, mains of 10 °C; scale it for several. A type for tests, not a measured household.";
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
		source: TAPPING_PROFILE_SOURCE,
	};
}
