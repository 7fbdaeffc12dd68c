import { requireWithin } from "../errors.ts";

const LOWEST = 273.15; // [K] lower end of the equation
const CRITICAL = 647.096; // [K] critical temperature, IAPWS R2-83
const MEGAPASCAL = 1e6; // [Pa]

// IAPWS-IF97, Table 34
const N1 = 1167.0521452767;
const N2 = -724213.16703206;
const N3 = -17.073846940092;
const N4 = 12020.82470247;
const N5 = -3232555.0322333;
const N6 = 14.91510861353;
const N7 = -4823.2657361591;
const N8 = 405113.40542057;
const N9 = -0.23855557567849;
const N10 = 650.17534844798;

/** Pressure at which water boils at a given temperature (IAPWS-IF97 region 4).
 *  ps = [2C/(−B + √(B² − 4AC))]⁴ with A, B, C quadratic in ϑ = T + n₉/(T − n₁₀)
 *  @param temperature  of the liquid [K]     @returns saturation pressure [Pa]
 *  Range   273.15–647.096 K, else DomainError out_of_range
 *  Error   0.03 % or less against the scientific formulation IAPWS-95
 *  Source  IAPWS R7-97(2012), eq. 30; Wagner et al., J. Eng. Gas Turbines Power 122 (2000) 150–184
 *  Check   IAPWS R7-97, Table 35   tests/reference/boiling.reference.ts */
export function saturationPressure(temperature: number): number {
	requireWithin("water.temperature", temperature, LOWEST, CRITICAL);
	const theta = temperature + N9 / (temperature - N10); // eq. 29b
	const a = (theta + N1) * theta + N2;
	const b = (N3 * theta + N4) * theta + N5;
	const c = (N6 * theta + N7) * theta + N8;
	const root = (2 * c) / (-b + Math.sqrt(b * b - 4 * a * c));
	const square = root * root;
	return square * square * MEGAPASCAL;
}

const LOWEST_PRESSURE = saturationPressure(LOWEST); // 611.21 Pa
const CRITICAL_PRESSURE = saturationPressure(CRITICAL); // 22.064 MPa

/** Temperature at which water boils under a given pressure (IAPWS-IF97 region 4, backward).
 *  Ts = ½·[n₁₀ + D − √((n₁₀ + D)² − 4(n₉ + n₁₀D))], D = 2G/(−F − √(F² − 4EG)), E, F, G quadratic in β = p^¼
 *  @param pressure  absolute [Pa]     @returns saturation temperature [K]
 *  Range   611.21 Pa to 22.064 MPa (273.15–647.096 K), else DomainError out_of_range
 *  Error   exact inverse of `saturationPressure`, to rounding
 *  Source  IAPWS R7-97(2012), eq. 31
 *  Check   IAPWS R7-97, Table 36   tests/reference/boiling.reference.ts */
export function saturationTemperature(pressure: number): number {
	requireWithin("water.pressure", pressure, LOWEST_PRESSURE, CRITICAL_PRESSURE);
	const beta = Math.sqrt(Math.sqrt(pressure / MEGAPASCAL)); // eq. 29a
	const e = (beta + N3) * beta + N6;
	const f = (N1 * beta + N4) * beta + N7;
	const g = (N2 * beta + N5) * beta + N8;
	const d = (2 * g) / (-f - Math.sqrt(f * f - 4 * e * g));
	const sum = N10 + d;
	return (sum - Math.sqrt(sum * sum - 4 * (N9 + N10 * d))) / 2;
}
