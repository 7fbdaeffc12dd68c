import { ar } from "./ar.ts";
import { en } from "./en.ts";
import { es } from "./es.ts";
import type { Texts } from "./words.ts";

/** The one dictionary. */
export const TEXTS: Readonly<Record<string, Texts>> = { en, es, ar };

/** The dictionary's language for a wish such as "es-MX": its own, else English. */
export function languageFor(wish: string | null | undefined): string {
	const language = (wish ?? "").toLowerCase().split("-")[0]!;
	return Object.hasOwn(TEXTS, language) ? language : "en";
}
