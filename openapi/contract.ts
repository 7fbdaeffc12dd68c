import { createRoute, OpenAPIHono, z } from "@hono/zod-openapi";
import { IN_PLACE } from "../api/compute/answer-text.ts";
import { VERSIONS } from "../api/config/limits.ts";
import type { Document } from "../api/http/document.ts";
import { operations } from "../api/operations/index.ts";
import type { Example, Operation } from "../api/operations/operation.ts";
import { pathNames } from "../api/operations/path.ts";
import { documents } from "../api/pages/documents.ts";
import { Problem } from "../api/problem/problem.ts";
import { wireValue } from "../api/wire/rounding.ts";
import { FAULT_RESPONSES, HEADERS, headersOf, otherResponses } from "./responses.ts";
import { SECURITY_SCHEMES, securityOf } from "./security.ts";

const TAGS = [
	{ name: "Sun", description: "Position of the sun, and radiation from a clear sky." },
	{ name: "Water", description: "Air pressure and boiling point of water." },
	{ name: "Dish", description: "Optics of the mirror, and losses of the receiver in its focus." },
	{ name: "Loop", description: "Pipes, pump, fluids and insulation." },
	{ name: "Tank", description: "Heating and cooling of the hot water tank." },
	{ name: "Plant", description: "Sizing and comparison of the complete plant." },
	{ name: "Service", description: "Versions, limits, health and this contract." },
];

const DESCRIPTION = `Sizes solar water heaters driven by a tracking dish: sun → sky → dish → receiver → loop → coil → tank → tap.

**Units** are at the end of each field name: \`elevationM\`, \`flowLPerMin\`, \`temperatureC\`, \`differenceK\`. Ratios are 0 to 1. Azimuths are clockwise from north.
**Omitted values** get the defaults shown here, and each response lists them in \`assumed\`. Unknown fields and parameters are errors, never ignored.
**Numbers** are rounded to eight significant digits. The same request returns the same bytes.
**Errors** are \`application/problem+json\` (RFC 9457) and list every fault of the request at once.
**Keys** go in the header \`X-Api-Key\`, where a deployment issues them.
**Rate limits**, where a deployment sets them, are in the headers \`RateLimit\` and \`RateLimit-Policy\`. On a 429 or 503, \`Retry-After\` is the time until the next attempt.`;

/** One operation with its examples run, so that the contract shows the real responses. */
async function operationRoute(operation: Operation) {
	const answers: Record<string, Example> = {};
	for (const [name, { summary, value }] of Object.entries(operation.examples)) {
		const input = operation.input.parse(operation.method === "get" ? asQuery(value) : value);
		const answer = wireValue(operation.output, await operation.answer(input, value, IN_PLACE));
		answers[name] = { summary, value: answer as Example["value"] };
	}
	const { method, path, operationId, summary, description, tag, input, output, examples } = operation;
	const json = (schema: z.ZodType, shown: Operation["examples"]) => ({
		content: { "application/json": { schema, examples: { ...shown } } },
	});
	return createRoute({
		...{ method, path, operationId, summary, description, tags: [tag], security: securityOf(path) },
		request:
			method === "get"
				? parameters(path, input as z.ZodObject)
				: { body: { ...json(input, examples), required: true } },
		responses: {
			200: {
				description: "Result of the operation.",
				headers: headersOf(path),
				content: { ...json(output, answers).content, ...(operation.forms && OTHER_FORMS) },
			},
		},
	});
}

const OTHER_FORMS = {
	"image/svg+xml": {
		schema: z.string().openapi({ description: "Chart of the series, with title and description." }),
	},
	"text/csv": {
		schema: z
			.string()
			.openapi({ description: "Series as a table (RFC 4180), with the unit of each column in its header." }),
	},
};

/** The input of a GET: its path parameters and its query. */
function parameters(path: string, input: z.ZodObject) {
	const names = pathNames(path);
	if (names.length === 0) return { query: input };
	const part = (inPath: boolean) =>
		z.strictObject(
			Object.fromEntries(Object.entries(input.shape).filter(([name]) => names.includes(name) === inPath)),
		);
	return { params: part(true), query: part(false) };
}

/** The values of an example as query parameters. */
export function asQuery(value: Example["value"]): Record<string, string | string[]> {
	return Object.fromEntries(
		Object.entries(value).map(([name, one]) => [name, Array.isArray(one) ? one.map(String) : String(one)]),
	);
}

function documentRoute({ path, operationId, summary, mediaTypes }: Document) {
	const content = Object.fromEntries(mediaTypes.map((type) => [type, { schema: shapeOf(type) }]));
	return createRoute({
		...{ method: "get", path, operationId, summary, description: summary, tags: ["Service"] },
		security: securityOf(path),
		responses: { 200: { description: "Content of the document.", headers: headersOf(path), content } },
	});
}

const shapeOf = (type: string) => (type === "application/json" ? z.looseObject({}) : z.string());

type Contract = ReturnType<OpenAPIHono["getOpenAPI31Document"]>;

/** Adds examples to query parameters, and problem responses to operations. */
function addExamplesAndProblems(contract: Contract): void {
	for (const operation of operations) {
		const entry = contract.paths?.[operation.path]?.[operation.method];
		if (!entry) throw new Error(`${operation.operationId} is missing from the contract`);
		const [first] = Object.values(operation.examples);
		for (const parameter of entry.parameters ?? [])
			if ("name" in parameter && first && parameter.name in first.value)
				parameter.example = first.value[parameter.name];
		Object.assign(entry.responses ?? {}, otherResponses(operation));
	}
	for (const { path } of documents)
		Object.assign(
			contract.paths?.[path]?.get?.responses ?? {},
			otherResponses({ method: "get", path, maxAge: 3600 }),
		);
}

/** The contract, built from the schemas that validate requests. */
export async function contract(): Promise<Contract> {
	const app = new OpenAPIHono();
	const registry = app.openAPIRegistry;
	registry.register("Problem", Problem);
	for (const operation of operations) registry.registerPath(await operationRoute(operation));
	for (const document of documents) registry.registerPath(documentRoute(document));
	const built = app.getOpenAPI31Document({
		openapi: "3.1.0",
		info: {
			title: "Raykettle",
			version: VERSIONS.contract,
			description: DESCRIPTION,
			license: { name: "MIT", url: "https://spdx.org/licenses/MIT.html" },
		},
		servers: [{ url: "/", description: "Server of this contract" }],
		tags: TAGS.filter(({ name }) => name === "Service" || operations.some(({ tag }) => tag === name)),
	});
	addExamplesAndProblems(built);
	const named = JSON.stringify(built.paths);
	const responses = Object.fromEntries(
		Object.entries(FAULT_RESPONSES).filter(([name]) => named.includes(`/responses/${name}"`)),
	);
	const shared = { responses, headers: HEADERS, securitySchemes: SECURITY_SCHEMES };
	return { ...built, components: { ...built.components, ...shared } };
}

/** The committed text of the contract. */
export function contractText(built: Contract): string {
	return `${JSON.stringify(built, undefined, "\t")}\n`;
}
