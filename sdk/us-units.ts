/** A US customary unit and its conversion from the service's unit. */
export interface UsUnit {
	/** Symbol as people write it. */
	readonly symbol: string;
	/** Converts from the service's unit. */
	readonly from: (value: number) => number;
	/** Converts to the service's unit. */
	readonly to: (value: number) => number;
}

const scaled = (symbol: string, factor: number): UsUnit => ({
	symbol,
	from: (value) => value / factor,
	to: (value) => value * factor,
});

const INCH = 25.4; // [mm] exact, international yard and pound agreement of 1959
const FOOT = 0.3048; // [m] exact, the same
const POUND = 0.45359237; // [kg] exact, the same
const GALLON = 3.785411784; // [L] exact, 231 cubic inches
const BTU = 1055.05585262 / 3.6e6; // [kWh] exact, International Table, ISO 31-4
const PSI = (POUND * 9.80665) / (INCH / 1000) ** 2 / 1000; // [kPa] exact, from the pound, the inch and standard gravity
const BTU_PER_HOUR = BTU * 1000; // [W]

/** US customary units by the suffix of the service's field names: `usUnits.C` for `temperatureC`. For display only. */
export const usUnits = {
	C: { symbol: "°F", from: (celsius) => celsius * 1.8 + 32, to: (fahrenheit) => (fahrenheit - 32) / 1.8 },
	K: scaled("°F", 1 / 1.8),
	M: scaled("ft", FOOT),
	Mm: scaled("in", INCH),
	M2: scaled("ft²", FOOT ** 2),
	L: scaled("gal", GALLON),
	LPerMin: scaled("gal/min", GALLON),
	MPerS: scaled("mph", (5280 * FOOT) / 3600),
	Kg: scaled("lb", POUND),
	Kpa: scaled("psi", PSI),
	Kwh: scaled("kBTU", BTU * 1000),
	W: scaled("BTU/h", BTU_PER_HOUR),
	WPerM2: scaled("BTU/h·ft²", BTU_PER_HOUR / FOOT ** 2),
	WPerK: scaled("BTU/h·°F", BTU_PER_HOUR * 1.8),
} as const satisfies Readonly<Record<string, UsUnit>>;

/** A value in the US customary unit of its suffix: `inUs("C", 60)` is `{ value: 140, symbol: "°F" }`. */
export function inUs(suffix: keyof typeof usUnits, value: number): { value: number; symbol: string } {
	const { from, symbol }: UsUnit = usUnits[suffix];
	return { value: from(value), symbol };
}
