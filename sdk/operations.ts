/**
 * This file was generated from the contract by `npm run openapi`.
 * Do not make direct changes to the file.
 */

import type { Method } from "./method.ts";

/** The service's operations as functions. */
export interface Raykettle {
	/**
	 * Where the sun stands (`GET /v1/sun/position`)
	 *
	 * Apparent and true altitude, azimuth, air mass and the irradiance outside the atmosphere, at one instant or many.
	 * Altitude and azimuth hold within 0.02° for 1990 to 2050.
	 */
	readonly sunPosition: Method<"getSunPosition">;
	/**
	 * One clear day of sun (`GET /v1/sun/day`)
	 *
	 * Sunrise, noon, sunset and day length; through the day the sun's direction, clear-sky beam and diffuse and what falls on a fixed plane;
	 * the day's beam on a tracked aperture against that plane; the best fixed tilt for the day, month, seasons and year.
	 * A polar day or night is an answer, not an error.
	 */
	readonly sunDay: Method<"getSunDay">;
	/**
	 * Elevation, air pressure and boiling point (`GET /v1/boiling-point`)
	 *
	 * Takes exactly one of elevation, air pressure and boiling point, and answers all three.
	 * Elevation and pressure are joined by the standard atmosphere, pressure and boiling point by the steam tables.
	 * Weather moves the pressure, so an elevation found from a boiling point is rough: see `uncertainty`.
	 */
	readonly boilingPoint: Method<"getBoilingPoint">;
	/**
	 * When is the tank hot? (`POST /v1/tank/warm-up`)
	 *
	 * One day of a plant, from the sun to the tap: when the water reaches the target, how hot it ends, whether it boils, how many litres it gives,
	 * where the sun's energy went, and what to be careful of. Only site, date, the dish's size and the tank's volume are needed.
	 * A polar night, a sun too low or a target above boiling is an answer with its `reason`, not an error.
	 */
	readonly warmUpTank: Method<"warmUpTank">;
	/**
	 * Versions and limits (`GET /v1/meta`)
	 *
	 * The versions of service, contract and data, and every limit in force.
	 */
	readonly meta: Method<"getMeta">;
	/**
	 * Whether the process answers (`GET /health/live`)
	 *
	 * Answers as long as the process runs. Restart it when this fails.
	 */
	readonly liveness: Method<"getLiveness">;
	/**
	 * Whether the service computes rightly (`GET /health/ready`)
	 *
	 * Computes the boiling point of water at 0.1 MPa and compares it with the release of IAPWS R7-97(2012), table 36. Send no traffic while this answers 503.
	 */
	readonly readiness: Method<"getReadiness">;
	/**
	 * Where to begin (`GET /`)
	 */
	readonly index: Method<"getIndex">;
	/**
	 * This contract (OpenAPI 3.1) (`GET /openapi.json`)
	 */
	readonly contract: Method<"getContract">;
}

/** Method, path, and whether there is anything to ask. */
export const OPERATIONS: Readonly<Record<keyof Raykettle, readonly [method: string, path: string, asks: 0 | 1]>> = {
	sunPosition: ["get", "/v1/sun/position", 1],
	sunDay: ["get", "/v1/sun/day", 1],
	boilingPoint: ["get", "/v1/boiling-point", 1],
	warmUpTank: ["post", "/v1/tank/warm-up", 1],
	meta: ["get", "/v1/meta", 0],
	liveness: ["get", "/health/live", 0],
	readiness: ["get", "/health/ready", 0],
	index: ["get", "/", 0],
	contract: ["get", "/openapi.json", 0],
};
