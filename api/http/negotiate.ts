import { ProblemError } from "../problem/problem.ts";

/** How much a caller wants a media type, by the most exact range of its Accept header that covers it: 0 to 1. */
function qualityOf(accept: string, type: string): number {
	let quality = 0;
	let exactness = -1;
	for (const range of accept.split(",")) {
		const [name = "", ...parameters] = range.split(";").map((part) => part.trim().toLowerCase());
		const level = name === type ? 2 : name === `${type.split("/")[0]}/*` ? 1 : name === "*/*" ? 0 : -1;
		if (level <= exactness) continue;
		const q = Number(parameters.find((parameter) => parameter.startsWith("q="))?.slice(2) ?? "1");
		exactness = level;
		quality = q >= 0 && q <= 1 ? q : 0;
	}
	return quality;
}

const LONGEST = 1000; // [characters] of an Accept header; browsers send some 150

/** The media type on offer that an Accept header wants most, the first of equals; undefined when it rules out all. */
export function preferredType<Type extends string>(
	accept: string | undefined,
	offered: readonly Type[],
): Type | undefined {
	if (accept === undefined || accept.trim() === "" || accept.trim() === "*/*") return offered[0];
	if (accept.length > LONGEST)
		throw new ProblemError(
			"not-acceptable",
			`Accept is read up to ${LONGEST} characters; ask for one of ${offered.join(", ")}`,
		);
	let best: Type | undefined;
	let most = 0;
	for (const type of offered) {
		const quality = qualityOf(accept, type);
		if (quality > most) [best, most] = [type, quality];
	}
	return best;
}
