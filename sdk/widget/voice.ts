import { usUnits } from "../us-units.ts";
import { TEXTS } from "./texts/texts.ts";
import type { Texts } from "./texts/words.ts";

export type Units = "metric" | "us";
type Suffix = keyof typeof usUnits;
type Values = Readonly<Record<string, number | string | undefined>>;
type Plural = Texts["showers"];

/** Speaks numbers, times and sentences in one language and one system of units. */
export interface Voice {
	readonly language: string;
	readonly units: Units;
	readonly texts: Texts;
	readonly number: (value: number, digits?: number) => string;
	/** A number as it is typed: without separators of thousands. */
	readonly plain: (value: number, digits: number) => string;
	/** A sentence with its `{names}` filled in; a name that ends in a unit is spoken in the visitor's units. */
	readonly say: (template: string, values?: Values) => string;
	/** Keeps words in their own order within a text that runs from right to left. */
	readonly isolated: (text: string) => string;
	readonly plural: (forms: Plural, count: number) => string;
	/** A local time of the service, by its own clock. */
	readonly clock: (time: string) => string;
	readonly hour: (hour: number) => string;
	readonly month: (month: number) => string;
	/** A value in the visitor's units: what to show in a field, and the way back. */
	readonly shown: (suffix: Suffix, value: number) => number;
	readonly meant: (suffix: Suffix, value: number) => number;
	readonly symbol: (suffix: Suffix) => string;
}

const METRIC: Readonly<Partial<Record<Suffix, string>>> = {
	...{ C: "°C", K: "K", L: "L", M: "m", M2: "m²", W: "W", Kpa: "kPa", WPerM2: "W/m²" },
};
const SUFFIX = /(?<=[a-z0-9])(C|K|L|M2|M|W|Kpa|Deg|Min)$/;
const MIDNIGHT = Date.UTC(2000, 0, 1);

export function voice(language: string, units: Units): Voice {
	const texts = TEXTS[language] ?? TEXTS.en!;
	const number = (value: number, digits = 0) =>
		new Intl.NumberFormat(language, { maximumFractionDigits: digits }).format(value);
	const plain = (value: number, digits: number) =>
		new Intl.NumberFormat(language, { maximumFractionDigits: digits, useGrouping: false }).format(value);
	const date = (options: Intl.DateTimeFormatOptions) =>
		new Intl.DateTimeFormat(language, { ...options, timeZone: "UTC" });
	const hourCycle = units === "us" ? "h12" : "h23";
	const time = date({ hour: "numeric", minute: "2-digit", hourCycle });
	const hours = units === "us" ? date({ hour: "numeric", hourCycle }) : time;
	const symbol = (suffix: Suffix) => (units === "us" ? usUnits[suffix].symbol : (METRIC[suffix] ?? ""));
	const shown = (suffix: Suffix, value: number) => (units === "us" ? usUnits[suffix].from(value) : value);
	const meant = (suffix: Suffix, value: number) => (units === "us" ? usUnits[suffix].to(value) : value);

	const isolated = (text: string) => (language === "ar" ? `\u2068${text}\u2069` : text);

	function spoken(name: string, value: number | string): string {
		if (typeof value === "string") return isolated(named(value, texts));
		const suffix = SUFFIX.exec(name)?.[1];
		if (suffix === undefined) return number(value, 2);
		if (suffix === "Deg") return isolated(`${number(value, 1)}°`);
		if (suffix === "Min") return isolated(`${number(Math.round(value))}\u00a0min`);
		const inUnit = shown(suffix as Suffix, value);
		const digits = Math.abs(inUnit) < 10 && suffix !== "C" ? 1 : 0;
		return isolated(`${number(inUnit, digits)}\u00a0${symbol(suffix as Suffix)}`);
	}

	const say = (template: string, values: Values = {}) =>
		template.replace(/\{(\w+)\}/g, (whole, name: string) => {
			const value = values[name];
			return value === undefined ? whole : spoken(name, value);
		});
	return {
		...{ language, units, texts, number, plain, say, isolated, symbol, shown, meant },
		plural: (forms, count) =>
			(forms[new Intl.PluralRules(language).select(count)] ?? forms.other).replace("{count}", number(count)),
		clock: (iso) => time.format(Date.parse(`${iso.slice(0, 16)}Z`)),
		hour: (hour) => (hour % 1 ? time : hours).format(MIDNIGHT + hour * 3_600_000),
		month: (month) => date({ month: "long" }).format(Date.UTC(2000, month - 1, 15)),
	};
}

/** What the service names in English, in the visitor's words where the dictionary has them. */
function named(value: string, { names }: Texts): string {
	for (const [name, words] of Object.entries(names))
		if (value === name || value.startsWith(`${name} `)) return words + value.slice(name.length);
	return value;
}
