import type { Further, Names, WarmUp } from "./codes.ts";

export type Plural = Readonly<Partial<Record<Intl.LDMLPluralRule, string>> & { other: string }>;

/** A text of the widget itself: a label, a state, a headline. */
type Label =
	| "title"
	| "place"
	| "ownPlace"
	| "locate"
	| "locating"
	| "noLocation"
	| "roughElevation"
	| "noElevation"
	| "latitude"
	| "longitude"
	| "elevationM"
	| "dish"
	| "tank"
	| "month"
	| "need"
	| "people"
	| "litres"
	| "perPerson"
	| "units"
	| "metric"
	| "us"
	| "ask"
	| "empty"
	| "loading"
	| "slow"
	| "stale"
	| "again"
	| "fill"
	| "twoWays"
	| "fillFirst"
	| "hot"
	| "notHot"
	| "ends"
	| "hotEnds"
	| "gives"
	| "enough"
	| "short"
	| "boils"
	| "chart"
	| "chartSays"
	| "beam"
	| "mean"
	| "top"
	| "targetLine"
	| "boilLine"
	| "hotAt"
	| "cautions"
	| "danger"
	| "warning"
	| "info"
	| "assumedHint"
	| "disclaimer"
	| "airAssumed"
	| "airListed"
	| "faultyList"
	| "refused"
	| "barred"
	| "tooOften"
	| "busy"
	| "failed"
	| "offline"
	| "timeout"
	| "quote";

/** The widget's own words. `{name}` in them is replaced by a value; each language holds the same names. */
export type Page = Readonly<Record<Label, string>> & {
	readonly at: Plural; // chosen by the hour
	readonly showers: Plural;
	readonly assumed: Plural;
};

/** All words of the widget in one language. */
export interface WidgetTexts {
	readonly page: Page;
	readonly warmUp: WarmUp;
	readonly names: Names;
}

/** All words for the answers of the service in one language. */
export interface AnswerTexts {
	readonly warmUp: WarmUp;
	readonly names: Names;
	readonly further: Further;
}
