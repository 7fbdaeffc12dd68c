import { USUAL_SETTINGS } from "../config/settings.ts";
import { sizeWithin } from "../operations/answer-size.ts";
import { BOUNDLESS } from "../operations/backlog.ts";
import { after, type Maybe } from "../operations/maybe.ts";
import type { Job, Means, MediaType, Operation } from "../operations/operation.ts";
import { wireValue } from "../wire/rounding.ts";

/** Computes the text of an answer, and stops when the signal fires. The signal is created on demand, since a cached answer
 *  needs none. */
export type Compute = (job: Job, signal: () => AbortSignal) => Promise<string>;

/** Everything in place, with the default settings: for the contract's examples and for tests. */
export const IN_PLACE: Means = {
	settings: USUAL_SETTINGS,
	backlog: BOUNDLESS,
	compute: (job) => textOf(job, IN_PLACE),
	onFailure: (error) => {
		throw error;
	},
};

/** The text of an answer: computed, checked against its schema, rounded and rendered in the requested media type. */
export function textOf({ operation, type, input, sent }: Job, means: Means): Maybe<string> {
	if (operation.composite) return operation.composite(sent, means);
	return after(operation.answer(input, sent, means), (answer) => {
		const text = rendered(operation, type, wireValue(operation.output, answer), input);
		return sizeWithin(means.settings.answerBytes, text, operation, input);
	});
}

function rendered({ forms }: Operation, type: MediaType, value: unknown, input: unknown): string {
	if (type === "image/svg+xml" && forms) return forms.chart(value, input);
	if (type === "text/csv" && forms) return forms.table(value, input);
	return JSON.stringify(value);
}
