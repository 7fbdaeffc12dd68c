import { ProblemError } from "../problem/problem.ts";
import type { Operation } from "./operation.ts";

/** The text of an answer, unless it is longer than one may be: then what makes it so is named.
 *  @param most  [bytes], a letter each, as nearly all of an answer is ASCII */
export function sizeWithin(most: number, text: string, { method }: Operation, input: unknown): string {
	if (text.length <= most) return text;
	const name = "seriesStepMin";
	const detail = `The answer would be longer than the ${most} bytes that one may have here`;
	if (typeof input !== "object" || input === null || !(name in input)) {
		const place = method === "post" ? ({ in: "body", pointer: "" } as const) : ({ in: "query" } as const);
		throw new ProblemError("too-large", detail, [{ ...place, detail, code: "too_large" }]);
	}
	const advice = `${detail}; ask for rows further apart`;
	const place =
		method === "post"
			? ({ in: "body", pointer: `/${name}` } as const)
			: ({ in: "query", parameter: name } as const);
	throw new ProblemError("too-large", advice, [{ ...place, detail: advice, code: "too_large" }]);
}
