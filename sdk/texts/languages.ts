import * as ar from "./ar.ts";
import type { AnswerTexts, WidgetTexts } from "./dictionary.ts";
import * as en from "./en.ts";
import * as es from "./es.ts";

// Two tables of plain references, so that a bundler leaves out of the widget what only `ANSWERS` holds.
export const WIDGET = { en: en.widget, es: es.widget, ar: ar.widget } satisfies Record<string, WidgetTexts>;
export type Language = keyof typeof WIDGET;
export const ANSWERS: Readonly<Record<Language, AnswerTexts>> = {
	en: en.answers,
	es: es.answers,
	ar: ar.answers,
};

/** The dictionary's language for a wish such as "es-MX": its own, else English. */
export function languageFor(wish: string | null | undefined): Language {
	const language = (wish ?? "").toLowerCase().split("-")[0]!;
	return Object.hasOwn(WIDGET, language) ? (language as Language) : "en";
}
