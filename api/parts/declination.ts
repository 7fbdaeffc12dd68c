import { declination } from "../../src/index.ts";

/** Sun's declination at noon, UTC, of a day [rad]: it moves by 0.4° a day at most. */
export function declinationOn(date: string): number {
	return declination(Date.parse(`${date}T12:00:00Z`) / 1000);
}
