import { ProblemError } from "../problem/problem.ts";
import type { Operation } from "./operation.ts";

/** The text of an answer. Throws a problem that names the responsible field if the text is too long.
 *  @param limit  bytes, one per character, as nearly all of an answer is ASCII */
export function sizeWithin(limit: number, text: string, { method }: Operation, input: unknown): string {
	if (text.length <= limit) return text;
	const name = "seriesStepMin";
	const detail = `The response would exceed the limit of ${limit} bytes`;
	if (typeof input !== "object" || input === null || !(name in input)) {
		const place = method === "post" ? ({ in: "body", pointer: "" } as const) : ({ in: "query" } as const);
		throw new ProblemError("too-large", detail, [{ ...place, detail, code: "too_large" }]);
	}
	const advice = `${detail}; send a longer ${name}`;
	const place =
		method === "post"
			? ({ in: "body", pointer: `/${name}` } as const)
			: ({ in: "query", parameter: name } as const);
	throw new ProblemError("too-large", advice, [{ ...place, detail: advice, code: "too_large" }]);
}
