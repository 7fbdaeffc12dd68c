import { ar } from "./ar.ts";
import { en } from "./en.ts";
import { es } from "./es.ts";

type Plural = Readonly<Partial<Record<Intl.LDMLPluralRule, string>> & { other: string }>;
type Words<T> = {
	readonly [K in keyof T]: T[K] extends string
		? string
		: T[K] extends { one: string; other: string }
			? Plural
			: Words<T[K]>;
};

/** Everything the widget says, in one language. */
export type Texts = Words<typeof en>;

/** The one dictionary. */
export const TEXTS: Readonly<Record<string, Texts>> = { en, es, ar };

/** The dictionary's language for a wish such as "es-MX": its own, else English. */
export function languageFor(wish: string | null | undefined): string {
	const language = (wish ?? "").toLowerCase().split("-")[0]!;
	return Object.hasOwn(TEXTS, language) ? language : "en";
}
