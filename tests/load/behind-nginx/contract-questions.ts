import { operations } from "../../../api/operations/index.ts";
import { mediaTypes, type Operation } from "../../../api/operations/operation.ts";
import type { Question } from "./ask.ts";

/** Every example of every operation, in every form that the operation answers in. */
export function contractQuestions(): readonly Question[] {
	return operations.flatMap((operation) =>
		Object.entries(operation.examples).flatMap(([name, { value }]) =>
			mediaTypes(operation).map((type) => ({
				...questionOf(operation, value),
				name: `${operation.operationId} ${name}, ${type}`,
				headers: { Accept: type },
			})),
		),
	);
}

/** One operation asked with one input. */
export function questionOf(
	{ operationId, method, path }: Operation,
	input: Readonly<Record<string, unknown>>,
): Question {
	if (method === "post") return { name: operationId, method: "POST", path, body: JSON.stringify(input) };
	const filled = path.replace(/\{(\w+)\}/g, (_, name: string) => encodeURIComponent(String(input[name])));
	const query = new URLSearchParams();
	for (const [name, value] of Object.entries(input))
		if (!path.includes(`{${name}}`))
			for (const one of Array.isArray(value) ? value : [value]) query.append(name, String(one));
	return { name: operationId, method: "GET", path: query.size > 0 ? `${filled}?${query}` : filled };
}
