/**
 * This file was generated from the contract by `npm run openapi`.
 * Do not make direct changes to the file.
 */

import type { Answer, AnswerIn, Body, CallOptions, FormOptions, OtherForm, Query } from "./method.ts";

/** The service's operations as functions. Each resolves to its answer, or rejects with a RaykettleProblem when the service refuses. */
export interface Raykettle {
	/**
	 * Where the sun stands (`GET /v1/sun/position`)
	 *
	 * Apparent and true altitude, azimuth, air mass and the irradiance outside the atmosphere, at one instant or many.
	 * Altitude and azimuth hold within 0.02° for 1990 to 2050.
	 */
	sunPosition(input: Query<"getSunPosition">, call?: CallOptions): Promise<Answer<"getSunPosition">>;
	/**
	 * One clear day of sun (`GET /v1/sun/day`)
	 *
	 * Sunrise, noon, sunset and day length; through the day the sun's direction, clear-sky beam and diffuse and what falls on a fixed plane;
	 * the day's beam on a tracked aperture against that plane; the best fixed tilt for the day, month, seasons and year.
	 * A polar day or night is an answer, not an error.
	 */
	sunDay<F extends OtherForm<"getSunDay"> | undefined = undefined>(input: Query<"getSunDay">, call?: FormOptions<F>): Promise<AnswerIn<"getSunDay", F>>;
	/**
	 * Elevation, air pressure and boiling point (`GET /v1/boiling-point`)
	 *
	 * Takes exactly one of elevation, air pressure and boiling point, and answers all three.
	 * Elevation and pressure are joined by the standard atmosphere, pressure and boiling point by the steam tables.
	 * Weather moves the pressure, so an elevation found from a boiling point is rough: see `uncertainty`.
	 * With the ± of the thermometer that is counted as well: half a kelvin is about 150 m, and so is ordinary weather.
	 */
	boilingPoint(input?: Query<"getBoilingPoint">, call?: CallOptions): Promise<Answer<"getBoilingPoint">>;
	/**
	 * What a dish makes of the beam (`POST /v1/dish/optics`)
	 *
	 * Geometry of the mirror, size of the focal spot, where the light goes, and the power at the focus. Only the dish's size is needed.
	 * The curve weighs light caught against heat lost over receiver apertures, and names the aperture that nets most at a given oil temperature.
	 * Of an off-axis dish on a polar axis also its aperture through the year.
	 */
	dishOptics(input: Body<"getDishOptics">, call?: CallOptions): Promise<Answer<"getDishOptics">>;
	/**
	 * What a receiver keeps and loses (`POST /v1/receiver/losses`)
	 *
	 * Balance of a cavity, an open coil, a glazed coil or a measured efficiency line, by path, over lists of oil temperatures, winds and tilts;
	 * its straight efficiency line for each wind and tilt; wall and film temperature; and how hot it gets when the pump stops in full sun.
	 * Give the dish that lights it, or `absorbedPowerW`.
	 */
	receiverLosses(input?: Body<"getReceiverLosses">, call?: CallOptions): Promise<Answer<"getReceiverLosses">>;
	/**
	 * What pipes, fittings and pump lose (`POST /v1/loop/losses`)
	 *
	 * Heat, pressure and electricity of the loop between receiver and tank, per metre and whole: supply, return, fittings and pump.
	 * What each further centimetre of lagging saves, what rain costs with and without a cover, and what the pump gives when the fluid is cold and thick.
	 * Only the temperature of the fluid is needed. The losses of a metre hold within 10 % dry.
	 */
	loopLosses(input: Body<"getLoopLosses">, call?: CallOptions): Promise<Answer<"getLoopLosses">>;
	/**
	 * What can fill a loop (`GET /v1/fluids`)
	 *
	 * Water, mineral oils of four ISO grades, propylene glycol in water and vegetable oil: how hot and how cold each may get, with the source.
	 * Kinds of fluid, not products: a maker's data sheet comes before these figures.
	 */
	fluids(call?: CallOptions): Promise<Answer<"getFluids">>;
	/**
	 * A fluid's properties over temperature (`GET /v1/fluids/{id}`)
	 *
	 * Density, heat capacity, conductivity, viscosity and Prandtl number of one fluid between two temperatures, and its limits, each with its source.
	 */
	fluid(input: Query<"getFluid">, call?: CallOptions): Promise<Answer<"getFluid">>;
	/**
	 * Lagging of the trade (`GET /v1/insulations`)
	 *
	 * Conductivity over temperature, service limit, what moisture does to it, and what it does to whoever cuts it.
	 * Kinds of lagging, not products. The conductivities lie in the middle of what products of the named standard declare: ± 8 %.
	 * Above 60 °C vapour carries further heat through wet open-cell lagging, two to four times as much in all (common practice, no source).
	 */
	insulations(call?: CallOptions): Promise<Answer<"getInsulations">>;
	/**
	 * How a tank cools while it stands (`POST /v1/tank/cooling`)
	 *
	 * The cool-down curve of a layered tank, its heat loss coefficient, the hours until it falls under a temperature,
	 * and its standing loss at 45 K with the energy class of EU 812/2013. Only the volume is needed.
	 */
	tankCooling<F extends OtherForm<"getTankCooling"> | undefined = undefined>(input: Body<"getTankCooling">, call?: FormOptions<F>): Promise<AnswerIn<"getTankCooling", F>>;
	/**
	 * Published days of hot water use (`GET /v1/tapping-profiles`)
	 *
	 * The load profiles of Regulation (EU) 814/2013, Annex III, from 3XS to 4XL, row by row, with the day's heat and the litres that carry it. Name one in `draw.profile`.
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
	 * The versions of service, contract and data, and every limit in force.
	 */
	meta(call?: CallOptions): Promise<Answer<"getMeta">>;
	/**
	 * Whether the process answers (`GET /health/live`)
	 *
	 * Answers as long as the process runs. Restart it when this fails.
	 */
	liveness(call?: CallOptions): Promise<Answer<"getLiveness">>;
	/**
	 * Whether the service computes rightly (`GET /health/ready`)
	 *
	 * Computes the boiling point of water at 0.1 MPa and compares it with the release of IAPWS R7-97(2012), table 36. Send no traffic while this answers 503.
	 */
	readiness(call?: CallOptions): Promise<Answer<"getReadiness">>;
	/**
	 * Many operations in one request (`POST /v1/batch`)
	 *
	 * Up to 100 items, each with an operation and its body; per item its result or its problem, in the same order.
	 * An item that fails leaves the others as they are. Their estimated cost is counted before anything is computed:
	 * beyond `computingBudget` of /v1/meta, which also lists what each operation costs, nothing is answered. A batch holds no batch.
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
