/**
 * This file was generated from the contract by `npm run openapi`.
 * Do not make direct changes to the file.
 */

import type { Answer, AnswerIn, Body, CallOptions, FormOptions, OtherForm, Query } from "./method.ts";

/** The operations of the service as methods. Each resolves to the response body, or rejects with a RaykettleProblem. */
export interface Raykettle {
	/**
	 * Position of the sun (`GET /v1/sun/position`)
	 *
	 * Computes apparent and true altitude, azimuth, air mass and the irradiance outside the atmosphere, at one instant or several.
	 * Altitude and azimuth are accurate within 0.02° from 1990 to 2050.
	 */
	sunPosition(input: Query<"getSunPosition">, call?: CallOptions): Promise<Answer<"getSunPosition">>;
	/**
	 * Sun on one clear day (`GET /v1/sun/day`)
	 *
	 * Computes sunrise, solar noon, sunset and day length. The series holds the sun's direction, clear-sky beam and diffuse irradiance, and irradiance on a fixed plane.
	 * The response compares the day's beam on a tracked aperture with that plane, and includes the best fixed tilt for day, month, seasons and year.
	 * A polar day or night returns 200 with its `daylight` outcome, not an error.
	 */
	sunDay<F extends OtherForm<"getSunDay"> | undefined = undefined>(input: Query<"getSunDay">, call?: FormOptions<F>): Promise<AnswerIn<"getSunDay", F>>;
	/**
	 * Elevation, air pressure and boiling point (`GET /v1/boiling-point`)
	 *
	 * Converts between elevation, air pressure and boiling point: send exactly one, the response has all three.
	 * The standard atmosphere relates elevation and pressure; the steam tables relate pressure and boiling point.
	 * Weather changes the pressure, so an elevation computed from a boiling point is rough: see `uncertainty`.
	 * `thermometerUncertaintyK` adds the uncertainty of the thermometer. Half a kelvin is about 150 m, and so is ordinary weather.
	 */
	boilingPoint(input?: Query<"getBoilingPoint">, call?: CallOptions): Promise<Answer<"getBoilingPoint">>;
	/**
	 * Optical performance of a dish (`POST /v1/dish/optics`)
	 *
	 * Computes the mirror geometry, the size of the focal spot, the optical losses and the power at the focus. Only the size of the dish is required.
	 * The curve weighs light caught against heat lost over receiver apertures. `bestAperture` has the greatest net power at the given oil temperature.
	 * For an off-axis dish on a polar axis, the response includes its aperture through the year.
	 */
	dishOptics(input: Body<"getDishOptics">, call?: CallOptions): Promise<Answer<"getDishOptics">>;
	/**
	 * Heat balance of a receiver (`POST /v1/receiver/losses`)
	 *
	 * Computes useful heat and losses by path over lists of oil temperatures, winds and tilts. The receiver is a cavity, an open coil, a glazed coil or a measured efficiency line.
	 * The response includes wall and film temperatures, an efficiency line for each wind and tilt, and the stagnation temperature in full sun.
	 * Send either `dish` or `absorbedPowerW`.
	 */
	receiverLosses(input?: Body<"getReceiverLosses">, call?: CallOptions): Promise<Answer<"getReceiverLosses">>;
	/**
	 * Losses of pipes, fittings and pump (`POST /v1/loop/losses`)
	 *
	 * Computes heat loss, pressure drop and electricity of the loop between receiver and tank: supply, return, fittings and pump, per metre and in total.
	 * The response shows what thicker insulation saves, what rain costs with and without a cover, and what the pump delivers with cold, viscous fluid.
	 * Only `supplyTemperatureC` is required. Heat loss per metre is accurate within 10 % for dry insulation.
	 */
	loopLosses(input: Body<"getLoopLosses">, call?: CallOptions): Promise<Answer<"getLoopLosses">>;
	/**
	 * Heat-transfer fluids (`GET /v1/fluids`)
	 *
	 * Lists water, mineral oils of four ISO grades, propylene glycol in water and vegetable oil, with the temperature limits of each and their sources.
	 * These are kinds of fluid, not products: the data sheet of the manufacturer takes precedence.
	 */
	fluids(call?: CallOptions): Promise<Answer<"getFluids">>;
	/**
	 * Properties of a fluid over temperature (`GET /v1/fluids/{id}`)
	 *
	 * Returns density, heat capacity, conductivity, viscosity and Prandtl number of one fluid between two temperatures, and its limits with their sources.
	 */
	fluid(input: Query<"getFluid">, call?: CallOptions): Promise<Answer<"getFluid">>;
	/**
	 * Insulation materials (`GET /v1/insulations`)
	 *
	 * Lists conductivity over temperature, service limit, effect of moisture and hazard when cutting for each insulation material.
	 * These are kinds of insulation, not products. The conductivities are mid-range for products of the named standard: ± 8 %.
	 * Above 60 °C, vapour carries further heat through wet open-cell insulation: two to four times as much in all. That factor is common practice.
	 */
	insulations(call?: CallOptions): Promise<Answer<"getInsulations">>;
	/**
	 * Cooling of a tank at rest (`POST /v1/tank/cooling`)
	 *
	 * Computes the cool-down curve of a stratified tank, its heat loss coefficient and the hours until it falls below given temperatures.
	 * The response includes the standing loss at 45 K and the energy class of EU 812/2013. Only the volume is required.
	 */
	tankCooling<F extends OtherForm<"getTankCooling"> | undefined = undefined>(input: Body<"getTankCooling">, call?: FormOptions<F>): Promise<AnswerIn<"getTankCooling", F>>;
	/**
	 * Published profiles of hot water use (`GET /v1/tapping-profiles`)
	 *
	 * Lists the load profiles of Regulation (EU) 814/2013, Annex III, from 3XS to 4XL: every draw, the heat of the day and the litres that carry it. Send an id in `draw.profile`.
	 */
	tappingProfiles(call?: CallOptions): Promise<Answer<"getTappingProfiles">>;
	/**
	 * Warm-up of a tank through one day (`POST /v1/tank/warm-up`)
	 *
	 * Simulates one day of a plant, from the sun to the tap. The response states when the water reaches the target, its final temperature, whether it boils,
	 * the litres available at the tap, the energy balance and the cautions to observe. Only site, date, dish size and tank volume are required.
	 * A polar night, a sun too low or a target above boiling returns 200 with a `reason`, not an error.
	 */
	warmUpTank<F extends OtherForm<"warmUpTank"> | undefined = undefined>(input: Body<"warmUpTank">, call?: FormOptions<F>): Promise<AnswerIn<"warmUpTank", F>>;
	/**
	 * Feasibility of an instant heater (`POST /v1/instant/feasibility`)
	 *
	 * Assesses a heater that warms water as it flows, through the focus and a pipe or through a small vessel of hot oil. The response states the flow at the wanted temperature
	 * under each beam, whether it is enough, the aperture needed, and what a shower, a basin tap and a kitchen sink need.
	 * A dish of 2 to 3 m² delivers 1 to 2 kW; a shower needs 11 to 20 kW. Such a dish heats a tank, but does not feed a shower directly.
	 * With `date`, the outcome applies to a window of that day; without it, to the beam levels. An infeasible heater returns 200 with its `reasons`.
	 */
	assessInstantHeater(input: Body<"assessInstantHeater">, call?: CallOptions): Promise<Answer<"assessInstantHeater">>;
	/**
	 * Assessment of a measured test run (`POST /v1/test-run`)
	 *
	 * Assesses a measured run: the power stored in the tank, standardised to 700 W/m² as in ASAE S580, and the light collected and heat lost,
	 * fitted by least squares with 95 % intervals. With dish, site, beam and air temperature, the run is compared with the prediction for the plant
	 * as described, and the gap is attributed to optics, losses or the tank. What the rows do not determine is `undetermined`, never guessed;
	 * `unlocks` lists what to measure for it, and `advice` how to narrow wide intervals. The intervals include the thermometer's noise and errors
	 * that persist through the run. They exclude a wrong volume, a dirty beam sensor and a thermometer that misses part of the tank.
	 */
	assessTestRun(input: Body<"assessTestRun">, call?: CallOptions): Promise<Answer<"assessTestRun">>;
	/**
	 * Improvements of a plant, ranked (`POST /v1/sensitivity`)
	 *
	 * Ranks the improvements that a builder can make, each applied alone and by one realistic step. The response states what each gains in minutes to the target, final temperature,
	 * usable litres and heat to the water, and the price per unit gained where prices are sent. Improvements that do not apply to the plant are listed with the reason.
	 * Improvements that lead to a plant outside the models are listed under `refused`. Where the tank reaches its limit there are no litres to gain, and `advice` recommends ranking by minutes.
	 * With `withRange` every gain has a range, computed from the same samples of plant and improved plant, and each place in the ranking states whether it is certain.
	 */
	rankImprovements<F extends OtherForm<"rankImprovements"> | undefined = undefined>(input: Body<"rankImprovements">, call?: FormOptions<F>): Promise<AnswerIn<"rankImprovements", F>>;
	/**
	 * Versions and limits (`GET /v1/meta`)
	 *
	 * Returns the versions of service, contract and data, every limit in force, and the cost of each operation.
	 */
	meta(call?: CallOptions): Promise<Answer<"getMeta">>;
	/**
	 * Liveness of the process (`GET /health/live`)
	 *
	 * Returns 200 as long as the process runs. Restart the process when this fails.
	 */
	liveness(call?: CallOptions): Promise<Answer<"getLiveness">>;
	/**
	 * Readiness of the service (`GET /health/ready`)
	 *
	 * Computes the boiling point of water at 0.1 MPa and compares it with IAPWS R7-97(2012), table 36. Send no traffic while this returns 503.
	 */
	readiness(call?: CallOptions): Promise<Answer<"getReadiness">>;
	/**
	 * Several operations in one request (`POST /v1/batch`)
	 *
	 * Runs up to 100 items, each with an operation and its body. Each item returns its result or its problem, in the same order.
	 * A failed item does not affect the others. The estimated cost of all items is checked before any is computed.
	 * A batch above `computingBudget` is refused as a whole; `/v1/meta` lists the cost of each operation. A batch cannot contain a batch.
	 */
	runBatch(input: Body<"runBatch">, call?: CallOptions): Promise<Answer<"runBatch">>;
	/**
	 * Where to begin (`GET /`)
	 */
	index<F extends OtherForm<"getIndex"> | undefined = undefined>(call?: FormOptions<F>): Promise<AnswerIn<"getIndex", F>>;
	/**
	 * This contract (OpenAPI 3.1) (`GET /openapi.json`)
	 */
	contract(call?: CallOptions): Promise<Answer<"getContract">>;
}

/** Method, path, and whether the operation has an input. */
export const OPERATIONS: Readonly<Record<keyof Raykettle, readonly [method: string, path: string, hasInput: 0 | 1]>> = {
	sunPosition: ["GET", "/v1/sun/position", 1],
	sunDay: ["GET", "/v1/sun/day", 1],
	boilingPoint: ["GET", "/v1/boiling-point", 1],
	dishOptics: ["POST", "/v1/dish/optics", 1],
	receiverLosses: ["POST", "/v1/receiver/losses", 1],
	loopLosses: ["POST", "/v1/loop/losses", 1],
	fluids: ["GET", "/v1/fluids", 0],
	fluid: ["GET", "/v1/fluids/{id}", 1],
	insulations: ["GET", "/v1/insulations", 0],
	tankCooling: ["POST", "/v1/tank/cooling", 1],
	tappingProfiles: ["GET", "/v1/tapping-profiles", 0],
	warmUpTank: ["POST", "/v1/tank/warm-up", 1],
	assessInstantHeater: ["POST", "/v1/instant/feasibility", 1],
	assessTestRun: ["POST", "/v1/test-run", 1],
	rankImprovements: ["POST", "/v1/sensitivity", 1],
	meta: ["GET", "/v1/meta", 0],
	liveness: ["GET", "/health/live", 0],
	readiness: ["GET", "/health/ready", 0],
	runBatch: ["POST", "/v1/batch", 1],
	index: ["GET", "/", 0],
	contract: ["GET", "/openapi.json", 0],
};
