import type { Further, Names, WarmUp } from "./codes.ts";
import type { page } from "./en.ts";

export type Plural = Readonly<Partial<Record<Intl.LDMLPluralRule, string>> & { other: string }>;
type Words<T> = {
	readonly [K in keyof T]: T[K] extends string
		? string
		: T[K] extends { other: string }
			? Plural
			: Words<T[K]>;
};

/** What the widget says around the answer: labels, states, headlines. */
export type Page = Words<typeof page>;

/** All that the widget says in one language. */
export interface WidgetTexts {
	readonly page: Page;
	readonly warmUp: WarmUp;
	readonly names: Names;
}

/** All that a front end can say of an answer in one language. */
export interface AnswerTexts {
	readonly warmUp: WarmUp;
	readonly names: Names;
	readonly further: Further;
}
