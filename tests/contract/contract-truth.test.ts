import { describe, expect, it } from "vitest";
import { operations } from "../../api/operations/index.ts";
import type { Operation } from "../../api/operations/operation.ts";
import document from "../../openapi/openapi.json";
import { bodiesOf, judged, posts, validatorOf } from "./judged.ts";
import { app, parsed } from "./service.ts";

// What the contract says (its JSON Schema, read by Ajv) against what the service does (zod).

interface Content {
	readonly content: Readonly<Record<string, { readonly schema: unknown }>>;
}
interface Entry {
	readonly requestBody?: Content;
	readonly responses: Readonly<Record<string, Content>>;
}

function entryOf({ path, method }: Operation): Entry {
	return (document.paths as unknown as Record<string, Record<string, Entry>>)[path]![method]!;
}

describe.each(posts)("the body of %s", (_path, operation) => {
	it("is right in every example", () => {
		const validate = validatorOf(operation, "requestBody");
		for (const body of bodiesOf(operation))
			expect(validate(body), JSON.stringify(validate.errors)).toBe(true);
	});

	it("is judged alike by the contract and by the service", () => {
		const { yes, no } = judged(operation, 400);
		expect(Math.min(yes, no)).toBeGreaterThan(20); // the inputs must reach both sides
	});
});

const answered = operations.flatMap((operation) =>
	Object.entries(operation.examples).map(
		([name, example]) => [operation.operationId, name, operation, example] as const,
	),
);

describe("every example of the contract", () => {
	it.each(answered)("%s %s is answered as the contract shows", async (_id, name, operation, { value }) => {
		const response =
			operation.method === "get"
				? await app.request(urlOf(operation.path, value))
				: await app.request(operation.path, {
						method: "POST",
						headers: { "content-type": "application/json" },
						body: JSON.stringify(value),
					});
		expect(response.status).toBe(200);
		const body: unknown = await response.json();
		parsed(operation.operationId, body);
		const validate = validatorOf(operation, "response");
		expect(validate(body), JSON.stringify(validate.errors)).toBe(true);
		const shown = entryOf(operation).responses["200"]!.content["application/json"] as {
			examples?: Record<string, { value: unknown }>;
		};
		expect(body).toEqual(shown.examples?.[name]?.value);
	});
});

function urlOf(path: string, value: Readonly<Record<string, unknown>>): string {
	const query = new URLSearchParams();
	let filled = path;
	for (const [name, one] of Object.entries(value)) {
		if (path.includes(`{${name}}`)) filled = filled.replace(`{${name}}`, encodeURIComponent(String(one)));
		else for (const item of Array.isArray(one) ? one : [one]) query.append(name, String(item));
	}
	return `${filled}?${query}`;
}
