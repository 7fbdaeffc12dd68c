import { z } from "@hono/zod-openapi";
import { type Site as CoreSite, lookedUp, practice } from "../../src/index.ts";
import { assume, type Completed, sentOr } from "../wire/defaults.ts";
import { isTimeZone, timeZoneAt } from "../wire/time-zone.ts";
import { degrees, metres, ratio, toSi } from "../wire/units.ts";

export const Site = z
	.strictObject({
		latitude: degrees("North of the equator, in degrees; south is negative.", -90, 90),
		longitude: degrees("East of Greenwich, in degrees; west is negative.", -180, 180),
		elevationM: metres(
			"Above sea level. It thins the air, brightens the sun and lowers the boiling point.",
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
					"IANA time zone of the clock times in the request. Left out, it is looked up from the coordinates, which errs near borders; the answer tells the zone.",
				examples: ["Africa/Casablanca"],
			})
			.optional(),
		albedo: assume(
			ratio("Share of light that the ground throws back.", 0, 1),
			0.2,
			practice("dry ground and grass"),
		),
	})
	.openapi("Site", {
		description: "Where the plant stands.",
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

/** The zone of a site's clocks. */
export function timeZoneOf({ timeZone, latitude, longitude }: Site): Completed<string> {
	return zoneAt(timeZone, "/site/timeZone", latitude, longitude);
}

/** A zone as sent, else the one at a place given in degrees.
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
		lookedUp("looked up from the coordinates; near a border it may be the neighbour's"),
	);
}
