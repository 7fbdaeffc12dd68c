import type { z } from "@hono/zod-openapi";
import type { FieldFault } from "../problem/problem.ts";
import { faultsIn } from "./faults.ts";
import { schemasAt, valueAt } from "./schema-tree.ts";

/** Every fault that a schema finds in a query, up to the limit, each with its parameter. */
export function queryFaults(error: z.ZodError, schema: z.ZodType, query: object): FieldFault[] {
	const sent = Object.fromEntries(
		Object.entries(query).map(([name, value]) => [name, asList(name, value, schema, query)]),
	);
	return faultsIn(error, schema, sent).map(
		({ path, detail, code }) =>
			repetitionFault(path, sent, schema) ?? { in: "query", ...parameter(path), detail, code },
	);
}

/** A parameter that may be repeated counts as an array even when it is sent once. */
function asList(name: string, value: unknown, schema: z.ZodType, query: object): unknown {
	const many = schemasAt(schema, [name], query).some(({ _zod: { def } }) => def.type === "array");
	return many && !Array.isArray(value) ? [value] : value;
}

function parameter(path: readonly PropertyKey[]): { parameter?: string } {
	return path.length > 0 ? { parameter: String(path[0]) } : {};
}

/** A fault for a parameter that is sent several times but accepts one value. */
function repetitionFault(
	path: readonly PropertyKey[],
	query: unknown,
	schema: z.ZodType,
): FieldFault | undefined {
	const value = valueAt(query, path);
	const single = schemasAt(schema, path, query).every(({ _zod: { def } }) => def.type !== "array");
	if (path.length !== 1 || !Array.isArray(value) || !single || schemasAt(schema, path, query).length === 0)
		return undefined;
	const name = String(path[0]);
	return {
		in: "query",
		parameter: name,
		detail: `${name} is sent ${value.length} times; send it once`,
		code: "wrong_type",
	};
}
