import type { z } from "@hono/zod-openapi";
import { apertureArea, type Dish } from "../../../src/index.ts";
import { declinationOn } from "../../parts/declination.ts";
import { fromSi } from "../../wire/units.ts";
import type { DishOpticsResponse } from "./response.ts";

type Seasons = NonNullable<z.input<typeof DishOpticsResponse>["seasons"]>;

const STEP_DAYS = 5;
const ROWS = 73; // 365 days
const DAY_MS = 86_400_000;

/** Aperture through the year of a date.
 *  @param latitude  [rad] */
export function wireSeasons(dish: Dish, latitude: number, date: string): Seasons {
	const newYear = Date.parse(`${date.slice(0, 4)}-01-01T00:00:00Z`);
	const days = Array.from({ length: ROWS }, (_, i) =>
		new Date(newYear + i * STEP_DAYS * DAY_MS).toISOString().slice(0, 10),
	);
	const declinations = days.map(declinationOn);
	const areas = declinations.map((sun) => apertureArea(dish, latitude, sun));
	return {
		stepDays: STEP_DAYS,
		date: days,
		declinationDeg: declinations.map(fromSi.degrees),
		apertureAreaM2: areas,
		leastApertureAreaM2: Math.min(...areas),
		greatestApertureAreaM2: Math.max(...areas),
		meanApertureAreaM2: areas.reduce((sum, area) => sum + area, 0) / ROWS,
	};
}
