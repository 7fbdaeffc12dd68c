import { ProblemError } from "../problem/problem.ts";

/** The quality of a media type in an Accept header, by its most specific matching range: 0 to 1. */
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

const LONGEST = 1000; // [characters] of an Accept header; browsers send about 150

/** The offered media type with the highest quality in an Accept header, the first of equals; undefined if none is acceptable. */
export function preferredType<Type extends string>(
	accept: string | undefined,
	offered: readonly Type[],
): Type | undefined {
	if (accept === undefined || accept.trim() === "" || accept.trim() === "*/*") return offered[0];
	if (accept.length > LONGEST)
		throw new ProblemError(
			"not-acceptable",
			`Accept may have at most ${LONGEST} characters; send one of ${offered.join(", ")}`,
		);
	let best: Type | undefined;
	let most = 0;
	for (const type of offered) {
		const quality = qualityOf(accept, type);
		if (quality > most) [best, most] = [type, quality];
	}
	return best;
}
