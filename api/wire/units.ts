import { z } from "@hono/zod-openapi";

/** The only unit conversions of the service: working units at the edge, coherent SI in the core.
 *  Differences of temperature, watts, metres and metres per second are the same on both sides and have no entry. */
export const toSi = {
	celsius: (celsius: number) => celsius + 273.15, // [K] exact by definition of the degree Celsius
	degrees: (degrees: number) => (degrees * Math.PI) / 180, // [rad]
	milliradians: (milliradians: number) => milliradians / 1000, // [rad]
	millimetres: (millimetres: number) => millimetres / 1000, // [m]
	litres: (litres: number) => litres / 1000, // [m³]
	litresPerMinute: (litresPerMinute: number) => litresPerMinute / 60_000, // [m³/s]
	kilopascals: (kilopascals: number) => kilopascals * 1000, // [Pa]
	kilowatts: (kilowatts: number) => kilowatts * 1000, // [W]
	kilowattHours: (kilowattHours: number) => kilowattHours * 3.6e6, // [J]
	kilojoules: (kilojoules: number) => kilojoules * 1000, // [J]
	minutes: (minutes: number) => minutes * 60, // [s]
	hours: (hours: number) => hours * 3600, // [s]
	squareMillimetresPerSecond: (squareMillimetres: number) => squareMillimetres / 1e6, // [m²/s]
} as const;

/** The same conversions from SI. */
export const fromSi = {
	celsius: (kelvin: number) => kelvin - 273.15,
	degrees: (radians: number) => (radians * 180) / Math.PI,
	milliradians: (radians: number) => radians * 1000,
	millimetres: (metres: number) => metres * 1000,
	litres: (cubicMetres: number) => cubicMetres * 1000,
	litresPerMinute: (cubicMetresPerSecond: number) => cubicMetresPerSecond * 60_000,
	kilopascals: (pascals: number) => pascals / 1000,
	kilowatts: (watts: number) => watts / 1000,
	kilowattHours: (joules: number) => joules / 3.6e6,
	kilojoules: (joules: number) => joules / 1000,
	minutes: (seconds: number) => seconds / 60,
	hours: (seconds: number) => seconds / 3600,
	squareMillimetresPerSecond: (squareMetres: number) => squareMetres * 1e6,
} as const satisfies Record<keyof typeof toSi, (value: number) => number>;

/** A function of a value that may be undefined. */
export const optionally = <A, B>(of: (value: A) => B, value: A | undefined): B | undefined =>
	value === undefined ? undefined : of(value);

type Bounds = readonly [low: number, high: number] | readonly [];

/** A builder of number fields in one unit: with bounds in requests, without in responses.
 *  Zod refuses NaN and the infinities either way. */
function field(unit: string) {
	return (description: string, ...[low, high]: Bounds): z.ZodNumber => {
		const number = z.number();
		const bounded = low === undefined || high === undefined ? number : number.check(z.gte(low), z.lte(high));
		return bounded.register(z.globalRegistry, { description, "x-unit": unit }); // where `meta` would make one more copy
	};
}

export const celsius = field("°C");
export const kelvinDifference = field("K");
export const degrees = field("°");
export const milliradians = field("mrad");
export const metres = field("m");
export const squareMetres = field("m²");
export const millimetres = field("mm");
export const litres = field("L");
export const litresPerMinute = field("L/min");
export const metresPerSecond = field("m/s");
export const watts = field("W");
export const wattsPerMetre = field("W/m");
export const wattsPerKelvin = field("W/K");
export const wattsPerSquareMetre = field("W/m²");
export const wattsPerMetreKelvin = field("W/mK");
export const wattsPerSquareMetreKelvin = field("W/m²K");
export const squareMetreKelvinPerWatt = field("m²K/W");
export const metreKelvinPerWatt = field("mK/W");
export const kilojoulesPerKelvin = field("kJ/K");
export const kilowatts = field("kW");
export const kilowattHours = field("kWh");
export const kilogramsPerCubicMetre = field("kg/m³");
export const joulesPerKilogramKelvin = field("J/kgK");
export const pascalSeconds = field("Pa s");
export const squareMillimetresPerSecond = field("mm²/s");
export const kilopascals = field("kPa");
export const minutes = field("min");
export const hours = field("h");
export const ratio = field("1");
