import { z } from "@hono/zod-openapi";
import { type Site as CoreSite, lookedUp, practice } from "../../src/index.ts";
import { assume, type Completed, sentOr } from "../wire/defaults.ts";
import { isTimeZone, timeZoneAt } from "../wire/time-zone.ts";
import { degrees, metres, ratio, toSi } from "../wire/units.ts";

export const Site = z
	.strictObject({
		latitude: degrees("Latitude in degrees north of the equator; south is negative.", -90, 90),
		longitude: degrees("Longitude in degrees east of Greenwich; west is negative.", -180, 180),
		elevationM: metres(
			"Elevation above sea level. A higher site has thinner air, brighter sun and a lower boiling point.",
			-430,
			6000,
		),
		timeZone: z
			.string()
			.min(1)
			.max(64)
			.refine(isTimeZone, "must be the IANA name of a time zone, such as Africa/Casablanca")
			.meta({
				description:
					"IANA time zone of the clock times in the request. If omitted, it is looked up from the coordinates, which can be wrong near borders. The response states the zone used.",
				examples: ["Africa/Casablanca"],
			})
			.optional(),
		albedo: assume(
			ratio("Share of sunlight that the ground reflects.", 0, 1),
			0.2,
			practice("dry ground and grass"),
		),
	})
	.openapi("Site", {
		description: "Location of the plant.",
		example: { latitude: 31.2, longitude: -7.9, elevationM: 2350 },
	});

export type Site = z.output<typeof Site>;

export function coreSite(site: Site): CoreSite {
	return {
		latitude: toSi.degrees(site.latitude),
		longitude: toSi.degrees(site.longitude),
		elevation: site.elevationM,
		albedo: site.albedo,
	};
}

/** The time zone of a site. */
export function timeZoneOf({ timeZone, latitude, longitude }: Site): Completed<string> {
	return zoneAt(timeZone, "/site/timeZone", latitude, longitude);
}

/** A zone as sent, else the zone at coordinates in degrees.
 *  @param pointer  of the zone in the request */
export function zoneAt(
	sent: string | undefined,
	pointer: string,
	latitude: number,
	longitude: number,
): Completed<string> {
	return sentOr(
		sent,
		pointer,
		sent ?? timeZoneAt(latitude, longitude),
		lookedUp("looked up from the coordinates; near a border it may be the neighbouring zone"),
	);
}
