import { ICE_POINT } from "../constants.ts";
import { DomainError } from "../errors.ts";
import type { Draw } from "./draw.ts";
import { PUBLISHED_PROFILES, type PublishedDraw } from "./published-profiles.ts";

export type TappingProfileId = keyof typeof PUBLISHED_PROFILES;

/** One draw of a day's profile. */
export interface ProfileDraw {
	readonly minuteOfDay: number; // [min] after midnight
	readonly energy: number; // useful heat above mains of 10 °C [J]
	readonly flow: number; // minimum at the tap [m³/s]
	readonly usefulTemperature: number; // from which heat counts [K]
	readonly peakTemperature: number | undefined; // to be reached during the draw [K], where the regulation sets one
}

const JOULES_PER_KILOWATT_HOUR = 3.6e6;
const LITRES_PER_MINUTE = 1e-3 / 60; // [m³/s]
const SECONDS_PER_MINUTE = 60;

export const TAPPING_PROFILE_IDS = Object.keys(PUBLISHED_PROFILES) as readonly TappingProfileId[];

/** A published daily profile of hot water use.
 *  Source  Regulation (EU) 814/2013, Annex III, table 1
 *  Check   daily sums Q_ref, tests/reference/tap.reference.ts */
export function tappingProfile(id: string): readonly ProfileDraw[] {
	if (!Object.hasOwn(PUBLISHED_PROFILES, id))
		throw new DomainError("contradictory", "tap.profile", "this tapping profile is not in the table", {
			profile: id,
		});
	return PUBLISHED_PROFILES[id as TappingProfileId].map(profileDraw);
}

function profileDraw(published: PublishedDraw): ProfileDraw {
	const [clock, energy, flow, useful, peak] = published;
	const [hours, minutes] = clock.split(":");
	return {
		minuteOfDay: 60 * Number(hours) + Number(minutes),
		energy: energy * JOULES_PER_KILOWATT_HOUR,
		flow: flow * LITRES_PER_MINUTE,
		usefulTemperature: useful + ICE_POINT,
		peakTemperature: peak === undefined ? undefined : peak + ICE_POINT,
	};
}

/** A profile as draws of one day. Each is mixed to its peak temperature, or to its useful temperature where it has no peak, but to
 *  no less than the temperature that the household mixes to: the useful temperatures of the regulation are minimum values.
 *  @param midnight  start of the day, unix time [s]     @param scale  number of households, multiplies heat and flow
 *  @param mixed     lowest temperature at the tap [K], above the mains */
export function profileDraws(
	profile: readonly ProfileDraw[],
	midnight: number,
	scale: number,
	mixed: number,
): readonly Draw[] {
	return profile.map((row) => ({
		time: midnight + row.minuteOfDay * SECONDS_PER_MINUTE,
		demand: { kind: "energy", energy: row.energy * scale },
		temperature: Math.max(row.peakTemperature ?? row.usefulTemperature, mixed),
		flow: row.flow * scale,
	}));
}
