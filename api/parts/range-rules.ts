import { contradictory, type Rule } from "../validation/rule.ts";

/** Spreads belong to a range. */
export const spreadsOfRange: Rule<{ readonly withRange: boolean; readonly spreads?: unknown }> = ({
	withRange,
	spreads,
}) =>
	spreads && !withRange
		? [contradictory("/spreads", "spreads belong to a range: ask for one with `withRange`")]
		: [];
