import { type UsUnit, usUnits } from "../us-units.ts";
import type { Names } from "./codes.ts";
import type { Language } from "./languages.ts";

export type Units = "metric" | "us";
export type Suffix = keyof typeof usUnits;
export type Values = Readonly<Record<string, unknown>>;

/** Symbols of the service's units where a name does not end in them. */
const METRIC: Readonly<Record<string, string>> = {
	...{ C: "°C", M: "m", M2: "m²", Kpa: "kPa", Kwh: "kWh", Min: "min" },
	...{ LPerMin: "L/min", WPerM2: "W/m²", Deg: "°" },
};
const SUFFIX = /(?<=[a-z0-9])(C|K|L|M2|M|W|Kpa|Kwh|LPerMin|WPerM2|Deg|Min)$/;
const [LEFT_TO_RIGHT, RIGHT_TO_LEFT, AS_IT_BEGINS] = ["\u2066", "\u2067", "\u2068"]; // isolates of Unicode
/** Metric units that Arabic writes out, by their names in Intl. */
const ARABIC: Readonly<Record<string, string>> = { L: "liter", M: "meter", Min: "minute" };

/** What a language does with values: writes them, in one system of units, into sentences. */
export interface Speech {
	readonly number: (value: number, options?: Intl.NumberFormatOptions) => string;
	/** A sentence with its `{names}` filled in. A number is written in the unit that its name ends in, or as a percentage where the
	 *  name has none; a text that is a name of the service's in the language's own word. */
	readonly say: (template: string, values?: Values) => string;
	/** Keeps a text in its own order within a text that may run the other way. */
	readonly isolated: (text: string) => string;
	/** A value in the reader's units. */
	readonly shown: (suffix: Suffix, value: number) => number;
	readonly symbol: (suffix: Suffix) => string;
}

/** @param names    of things in that language
 *  @param english  the same names as the service sends them */
export function speech(language: Language, units: Units, names: Names, english: Names): Speech {
	const isArabic = language === "ar";
	const number = (value: number, options: Intl.NumberFormatOptions = { maximumFractionDigits: 0 }) =>
		new Intl.NumberFormat(language, options).format(value);
	const usUnit = (suffix: string): UsUnit | undefined =>
		units === "us" ? usUnits[suffix as Suffix] : undefined; // the minute is the same in both
	const symbol = (suffix: string) => usUnit(suffix)?.symbol ?? METRIC[suffix] ?? suffix;
	const shown = (suffix: string, value: number) => usUnit(suffix)?.from(value) ?? value;
	const isolated = (text: string, mark = AS_IT_BEGINS) => (isArabic ? `${mark}${text}\u2069` : text);

	function measured(suffix: string | undefined, value: number): string {
		if (suffix === undefined)
			return isolated(number(value, { style: "percent", maximumSignificantDigits: 2 }), LEFT_TO_RIGHT);
		const inUnit = shown(suffix, value);
		const digits =
			Math.abs(inUnit) < 10 && suffix !== "C"
				? { maximumSignificantDigits: 2 }
				: { maximumFractionDigits: 0 };
		const unit = isArabic && !usUnit(suffix) && ARABIC[suffix];
		if (!unit) {
			const space = suffix === "Deg" ? "" : "\u00a0";
			return isolated(number(inUnit, digits) + space + symbol(suffix), LEFT_TO_RIGHT);
		}
		const unitDisplay = unit === "minute" ? "short" : "long"; // the dual of minutes would need a case
		return isolated(number(inUnit, { ...digits, style: "unit", unit, unitDisplay }), RIGHT_TO_LEFT);
	}

	/** What the service names in English, in the language's own word. */
	function translated(value: string): string {
		for (const kind of Object.keys(english) as (keyof Names)[])
			for (const [id, word] of Object.entries<string>(english[kind]))
				if (word === value) return (names[kind] as Readonly<Record<string, string>>)[id]!;
		return value;
	}

	function say(template: string, values: Values = {}): string {
		return template.replace(/\{(\w+)\}/g, (whole, name: string) => {
			const value = values[name];
			if (typeof value === "number") return measured(SUFFIX.exec(name)?.[1], value);
			return typeof value === "string" ? isolated(translated(value)) : whole;
		});
	}
	return { number, symbol, shown, isolated, say };
}
