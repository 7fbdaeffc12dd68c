import { declination } from "../../src/index.ts";

/** Sun's declination at noon, UTC, of a day [rad]; it changes by at most 0.4° per day. */
export function declinationOn(date: string): number {
	return declination(Date.parse(`${date}T12:00:00Z`) / 1000);
}
