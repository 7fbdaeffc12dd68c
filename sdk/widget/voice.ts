import type { WarmUp } from "../texts/codes.ts";
import type { Page, Plural } from "../texts/dictionary.ts";
import { type Language, WIDGET } from "../texts/languages.ts";
import { type Speech, type Suffix, speech, type Units } from "../texts/speech.ts";
import { type UsUnit, usUnits } from "../us-units.ts";

/** Speaks numbers, times and sentences in one language and one system of units. */
export interface Voice extends Omit<Speech, "number"> {
	readonly language: Language;
	readonly units: Units;
	readonly texts: Page;
	readonly warmUp: WarmUp;
	readonly number: (value: number) => string;
	/** A number as it is typed: without separators of thousands. */
	readonly plain: (value: number, digits: number) => string;
	readonly plural: (forms: Plural, count: number) => string;
	/** A local time of the service by its own clock, such as "at 13:57". */
	readonly at: (time: string) => string;
	readonly hour: (hour: number) => string;
	readonly month: (month: number) => string;
	/** A value in the visitor's units, in the service's. */
	readonly meant: (suffix: Suffix, value: number) => number;
}

const MIDNIGHT = Date.UTC(2000, 0, 1);

export function voice(language: Language, units: Units): Voice {
	const { page: texts, warmUp, names } = WIDGET[language];
	const { number, ...spoken } = speech(language, units, names, WIDGET.en.names);
	const date = (options: Intl.DateTimeFormatOptions) =>
		new Intl.DateTimeFormat(language, { ...options, timeZone: "UTC" });
	const hourCycle = units === "us" ? "h12" : "h23";
	const time = date({ hour: "numeric", minute: "2-digit", hourCycle });
	const hours = units === "us" ? date({ hour: "numeric", hourCycle }) : time;
	const form = (forms: Plural, count: number) =>
		forms[new Intl.PluralRules(language).select(count)] ?? forms.other;
	return {
		...{ ...spoken, language, units, texts, warmUp, number: (value) => number(value) },
		plain: (value, digits) => number(value, { maximumFractionDigits: digits, useGrouping: false }),
		plural: (forms, count) => form(forms, count).replace("{count}", number(count)),
		at: (iso) => {
			const hour = Number(iso.slice(11, 13));
			const clock = time.format(Date.parse(`${iso.slice(0, 16)}Z`));
			return form(texts.at, units === "us" ? hour % 12 : hour).replace("{time}", spoken.isolated(clock));
		},
		hour: (hour) => (hour % 1 ? time : hours).format(MIDNIGHT + hour * 3_600_000),
		month: (month) => date({ month: "long" }).format(Date.UTC(2000, month - 1, 15)),
		meant: (suffix, value) => (units === "us" ? (usUnits[suffix] as UsUnit).to(value) : value),
	};
}
