import { USUAL_SETTINGS } from "../config/settings.ts";
import { sizeWithin } from "../operations/answer-size.ts";
import { BOUNDLESS } from "../operations/backlog.ts";
import { after, type Maybe } from "../operations/maybe.ts";
import type { Job, Means, MediaType, Operation } from "../operations/operation.ts";
import { wireValue } from "../wire/rounding.ts";

/** Works out the text of an answer somewhere, and stops when the signal fires: a signal that is made when it is asked for, as
 *  what is remembered needs none. */
export type Compute = (job: Job, signal: () => AbortSignal) => Promise<string>;

/** Everything in place, with the usual settings: for the contract's examples, and for tests. */
export const IN_PLACE: Means = {
	settings: USUAL_SETTINGS,
	backlog: BOUNDLESS,
	compute: (job) => textOf(job, IN_PLACE),
	failed: (error) => {
		throw error;
	},
};

/** The text of an answer: worked out, checked against its schema, rounded, and told in the form asked. */
export function textOf({ operation, type, input, given }: Job, means: Means): Maybe<string> {
	if (operation.composite) return operation.composite(given, means);
	return after(operation.answer(input, given, means), (answer) => {
		const text = inForm(operation, type, wireValue(operation.output, answer), input);
		return sizeWithin(means.settings.answerBytes, text, operation, input);
	});
}

function inForm({ forms }: Operation, type: MediaType, value: unknown, input: unknown): string {
	if (type === "image/svg+xml" && forms) return forms.chart(value, input);
	if (type === "text/csv" && forms) return forms.table(value, input);
	return JSON.stringify(value);
}
