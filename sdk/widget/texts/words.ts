import type { en } from "./en.ts";

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
