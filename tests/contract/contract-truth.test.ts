import { Ajv2020, type ValidateFunction } from "ajv/dist/2020.js";
import addFormats from "ajv-formats";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { operations } from "../../api/operations/index.ts";
import type { Operation } from "../../api/operations/operation.ts";
import document from "../../openapi/openapi.json";
import { app, parsed } from "./service.ts";

// What the contract says (its JSON Schema, read by Ajv) against what the service does (zod). A new operation joins by itself.

const ajv = new Ajv2020({ strict: false, allErrors: false, validateFormats: true });
addFormats.default(ajv);
ajv.addSchema(document, "contract");

type Json = null | boolean | number | string | readonly Json[] | { readonly [key: string]: Json };
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

function validatorOf(operation: Operation, part: "requestBody" | "response"): ValidateFunction {
	const pointer = `/paths/${operation.path.replaceAll("/", "~1")}/${operation.method}`;
	const holder = part === "requestBody" ? "requestBody" : "responses/200";
	const fragment = `${pointer}/${holder}/content/application~1json/schema`;
	return ajv.compile({ $ref: `contract#${fragment.replace(/[{}]/g, encodeURIComponent)}` });
}

/** Every number that bounds something in the contract, with its nearest neighbours: where two readings would part. */
const bounds = [
	...new Set(
		[
			...JSON.stringify(document.components).matchAll(
				/"(?:minimum|maximum|exclusiveMinimum|exclusiveMaximum)":(-?[\d.e+-]+)/g,
			),
		]
			.map(([, text]) => Number(text))
			.flatMap((bound) => [
				bound,
				bound + 1e-9 * Math.max(1, Math.abs(bound)),
				bound - 1e-9 * Math.max(1, Math.abs(bound)),
			]),
	),
];

const leaf: fc.Arbitrary<Json> = fc.oneof(
	{ weight: 6, arbitrary: fc.constantFrom(...bounds) },
	{ weight: 2, arbitrary: fc.double({ noNaN: true, noDefaultInfinity: true }) },
	{ weight: 2, arbitrary: fc.integer({ min: -3, max: 40 }) },
	fc.constantFrom<Json>(
		null,
		true,
		false,
		"",
		"12",
		"08:30",
		"24:00",
		"2025-02-30",
		"2024-02-29",
		"auto",
		"outdoors",
	),
	fc.constantFrom<Json>(
		[],
		{},
		[1],
		[1, 2, 3],
		{ kind: "cavity" },
		{ kind: "efficiencyLine" },
		{ kind: "nonsense" },
	),
	fc.constantFrom<Json>("2025-01-15T08:30:00Z", "2025-01-15T08:30:00", "2025-01-15T08:30:00+05:30"),
	fc.string({ maxLength: 70 }),
);

/** Paths to every place in a body, its inner nodes included. */
function placesIn(body: Json, path: readonly (string | number)[] = []): (readonly (string | number)[])[] {
	if (typeof body !== "object" || body === null) return [path];
	const inner = Array.isArray(body)
		? body.slice(0, 3).flatMap((item: Json, i) => placesIn(item, [...path, i]))
		: Object.entries(body).flatMap(([key, value]) => placesIn(value as Json, [...path, key]));
	return [path, ...inner];
}

type Change =
	| { readonly kind: "put"; readonly value: Json }
	| { readonly kind: "drop" }
	| { readonly kind: "add"; readonly key: string };

const change: fc.Arbitrary<Change> = fc.oneof(
	{ weight: 8, arbitrary: leaf.map((value) => ({ kind: "put" as const, value })) },
	{ weight: 2, arbitrary: fc.constant({ kind: "drop" as const }) },
	{
		weight: 1,
		arbitrary: fc.constantFrom("extra", "kind", "__proto__").map((key) => ({ kind: "add" as const, key })),
	},
);

function changed(body: Json, path: readonly (string | number)[], how: Change): Json {
	const copy = structuredClone(body) as Record<string | number, Json>;
	const last = path.at(-1);
	if (last === undefined) return how.kind === "put" ? how.value : copy;
	const holder = path
		.slice(0, -1)
		.reduce<Record<string | number, Json>>((node, key) => node[key] as never, copy);
	if (how.kind === "put") holder[last] = how.value;
	else if (how.kind === "drop") delete holder[last];
	else if (!Array.isArray(holder))
		Object.defineProperty(holder, how.key, { value: 1, enumerable: true, configurable: true });
	return copy;
}

/** What the schema alone decides: faults of a rule written in code are the service's own, and the contract tells them in words. */
function zodSays(operation: Operation, body: Json): "yes" | "no" | "rule" {
	const read = operation.input.safeParse(body);
	if (read.success) return "yes";
	return read.error.issues.every(({ code }) => code === "custom") ? "rule" : "no";
}

describe.each(operations.filter(({ method }) => method === "post").map((one) => [one.path, one] as const))(
	"the body of %s",
	(_path, operation) => {
		const bodies = Object.values(operation.examples).flatMap(({ value }) => [
			value as Json,
			operation.input.parse(value) as Json, // every default filled in, so that every field is reached
		]);
		const validate = validatorOf(operation, "requestBody");

		it("is right in every example", () => {
			for (const body of bodies) expect(validate(body), JSON.stringify(validate.errors)).toBe(true);
		});

		it("is judged alike by the contract and by the service", () => {
			const places = bodies.flatMap((body) => placesIn(body).map((path) => [body, path] as const));
			const tally = { yes: 0, no: 0, rule: 0 };
			fc.assert(
				fc.property(fc.constantFrom(...places), change, ([body, path], how) => {
					const asked = changed(body, path, how);
					const service = zodSays(operation, asked);
					tally[service]++;
					const contract = validate(asked);
					if (contract !== (service !== "no"))
						throw new Error(
							`contract ${contract}, service ${service}: ${path.join("/")} ${JSON.stringify(how)}`,
						);
				}),
				{ seed: 20_250_115, numRuns: 6000 },
			);
			expect(Math.min(tally.yes, tally.no)).toBeGreaterThan(300); // the inputs must reach both sides
		});
	},
);

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
