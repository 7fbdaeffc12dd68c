import { GAS_CONSTANT_DRY_AIR, GRAVITY, STANDARD_PRESSURE } from "../constants.ts";
import { requireWithin } from "../errors.ts";
import { saturationTemperature } from "../fluids/saturation.ts";
import { power } from "../numeric/power.ts";

const SEA_LEVEL_TEMPERATURE = 288.15; // [K] exact by convention, ISO 2533:1975
const LAPSE_RATE = 0.0065; // [K/m] exact by convention, ISO 2533:1975
const EXPONENT = GRAVITY / (GAS_CONSTANT_DRY_AIR * LAPSE_RATE); // 5.2559
const LOWEST_SHORE = -430; // [m] shore of the Dead Sea
const TROPOPAUSE = 11_000; // [m] geopotential, where the constant lapse rate ends, ISO 2533:1975

/** Pressure of the standard atmosphere below the tropopause (ISO 2533).
 *  p = 101 325 Pa · (1 − 0.0065 H/288.15)^5.2559
 *  @param elevation  above sea level [m], taken as geopotential     @returns pressure [Pa]
 *  Range   −430 to 11 000 m, else DomainError out_of_range
 *  Error   geometric taken as geopotential metres: 0.02 % (0.005 K of boiling point) at 3000 m. Weather changes the pressure
 *          by ±20 hPa and more; 1 hPa is about 0.04 K of boiling point
 *  Source  ISO 2533:1975
 *  Check   the standard's own table   tests/reference/boiling.reference.ts */
export function standardPressure(elevation: number): number {
	requireWithin("site.elevation", elevation, LOWEST_SHORE, TROPOPAUSE);
	return STANDARD_PRESSURE * power(1 - (LAPSE_RATE * elevation) / SEA_LEVEL_TEMPERATURE, EXPONENT);
}

const LEAST_PRESSURE = standardPressure(TROPOPAUSE); // 226.3 hPa
const GREATEST_PRESSURE = standardPressure(LOWEST_SHORE); // 1066 hPa

/** Elevation at which the standard atmosphere has a given pressure: inverse of `standardPressure`.
 *  @param pressure [Pa]     @returns elevation above sea level, geopotential [m]
 *  Range   that of −430 to 11 000 m, else DomainError out_of_range
 *  Error   exact inverse; but 1 hPa of weather is about 11 m at 3000 m, so a measured pressure or boiling point gives
 *          an elevation within about ±150 m */
export function elevationAtPressure(pressure: number): number {
	requireWithin("sky.pressure", pressure, LEAST_PRESSURE, GREATEST_PRESSURE);
	const ratio = power(pressure / STANDARD_PRESSURE, 1 / EXPONENT);
	return (SEA_LEVEL_TEMPERATURE / LAPSE_RATE) * (1 - ratio);
}

/** Temperature at which water in an open vessel boils.
 *  @param pressure  of the air above the water [Pa]     @returns boiling point [K]; range, error and source: see
 *  `saturationTemperature` */
export function boilingPoint(pressure: number): number {
	return saturationTemperature(pressure);
}
