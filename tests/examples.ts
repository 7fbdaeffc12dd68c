import { operations } from "../api/operations/index.ts";
import { mediaTypes, type Operation } from "../api/operations/operation.ts";
import { asQuery } from "../openapi/contract.ts";

export type Sent = readonly [path: string, init: RequestInit];

export const JSON_BODY = { "Content-Type": "application/json" };
export const posted = (
	path: string,
	body: string,
	headers: Readonly<Record<string, string>> = JSON_BODY,
): Sent => [path, { method: "POST", body, headers: { ...headers } }];
export const got = (path: string, headers: Readonly<Record<string, string>> = {}): Sent => [
	path,
	{ headers: { ...headers } },
];

/** The request that an example stands for. */
function requestOf(
	{ method, path }: Operation,
	value: Readonly<Record<string, unknown>>,
	Accept: string,
): Sent {
	if (method === "post") return posted(path, JSON.stringify(value), { ...JSON_BODY, Accept });
	const query = new URLSearchParams();
	for (const [name, one] of Object.entries(asQuery(value)))
		if (!path.includes(`{${name}}`)) for (const text of [one].flat()) query.append(name, text);
	const filled = path.replace(/\{(\w+)\}/g, (_, name: string) => encodeURIComponent(String(value[name])));
	return got(query.size > 0 ? `${filled}?${query}` : filled, { Accept });
}

/** Every example of the contract, in every form that it offers. */
export const examples = operations.flatMap((operation) =>
	Object.entries(operation.examples).flatMap(([name, { value }]) =>
		mediaTypes(operation).map(
			(type) => [operation.operationId, name, type, requestOf(operation, value, type)] as const,
		),
	),
);
