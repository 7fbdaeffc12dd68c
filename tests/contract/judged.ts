import { Ajv2020, type ValidateFunction } from "ajv/dist/2020.js";
import addFormats from "ajv-formats";
import fc from "fast-check";
import { operations } from "../../api/operations/index.ts";
import type { Operation } from "../../api/operations/operation.ts";
import document from "../../openapi/openapi.json";

const ajv = new Ajv2020({ strict: false, allErrors: false, validateFormats: true });
addFormats.default(ajv);
ajv.addSchema(document, "contract");

export type Json = null | boolean | number | string | readonly Json[] | { readonly [key: string]: Json };

/** What the contract lets an operation be sent, or answer with. */
export function validatorOf(operation: Operation, part: "requestBody" | "response"): ValidateFunction {
	const pointer = `/paths/${operation.path.replaceAll("/", "~1")}/${operation.method}`;
	const holder = part === "requestBody" ? "requestBody" : "responses/200";
	const fragment = `${pointer}/${holder}/content/application~1json/schema`;
	return ajv.compile({ $ref: `contract#${fragment.replace(/[{}]/g, encodeURIComponent)}` });
}

/** The operations that take a body. A new one joins by itself. */
export const posts = operations
	.filter(({ method }) => method === "post")
	.map((one) => [one.path, one] as const);

/** The bodies of an operation's examples, as shown and with every default filled in, so that every field is reached. */
export function bodiesOf(operation: Operation): readonly Json[] {
	return Object.values(operation.examples).flatMap(({ value }) => [
		value as Json,
		operation.input.parse(value) as Json,
	]);
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

/** Changes the operation's bodies at random places, and throws where contract and service judge one differently.
 *  @returns  how many bodies the service took, refused, and refused by a rule alone */
export function judged(operation: Operation, runs: number) {
	const places = bodiesOf(operation).flatMap((body) => placesIn(body).map((path) => [body, path] as const));
	const validate = validatorOf(operation, "requestBody");
	const tally = { yes: 0, no: 0, rule: 0 };
	fc.assert(
		fc.property(fc.constantFrom(...places), change, ([body, path], how) => {
			const asked = changed(body, path, how);
			const service = zodSays(operation, asked);
			tally[service]++;
			const contract = validate(asked);
			if (contract !== (service !== "no"))
				throw new Error(`contract ${contract}, service ${service}: ${path.join("/")} ${JSON.stringify(how)}`);
		}),
		{ seed: 20_250_115, numRuns: runs },
	);
	return tally;
}
