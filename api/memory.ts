import type { Asked, Compute } from "./compute.ts";
import { ProblemError } from "./problem.ts";
import { store } from "./store.ts";

/** Remembers answers, so that the visitors of a page who all ask the same thing cost no more than one of them: the same
 *  request gives the same bytes, whoever sends it. Who comes while the first is being answered waits for that answer.
 *  Only the very same request, letter for letter, is given it: so it tells nobody more than computing it would.
 *  @param compute  works out what is not remembered
 *  @param most     what may be kept [bytes, two a letter] */
export function remembering(compute: Compute, most: number): Compute {
	const answers = store<string>(most, (key, text) => 2 * (key.length + text.length));
	const underWay = new Map<string, Promise<string>>();
	return async (asked, signal) => {
		const key = keyOf(asked);
		const known = answers.recall(key);
		if (known !== undefined) return known;
		const first = underWay.get(key);
		if (first)
			return first.catch((error: unknown) => (isOwn(error) ? compute(asked, signal) : reject(error)));
		const own = compute(asked, signal);
		underWay.set(key, own);
		try {
			const text = await own;
			answers.keep(key, text);
			return text;
		} finally {
			underWay.delete(key);
		}
	};
}

const keyOf = ({ operation, type, given }: Asked): string =>
	`${operation.operationId} ${type} ${JSON.stringify(given)}`;

/** Whether a refusal was meant for one caller and not for the request: the first gave up, or came when all were busy. */
const isOwn = (error: unknown): boolean =>
	error instanceof ProblemError && (error.kind === "abandoned" || error.kind === "overloaded");

const reject = (error: unknown): Promise<never> => Promise.reject(error);
