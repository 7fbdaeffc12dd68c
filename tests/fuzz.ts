import { operations } from "../api/operations/index.ts";
import { Problem } from "../api/problem/problem.ts";
import { uniformStream } from "../src/numeric/random.ts";
import { app, failures } from "./contract/service.ts";

type Path = readonly (string | number)[];
type Holder = Record<string | number, unknown>;

const HOSTILE: readonly unknown[] = [
	null,
	true,
	"",
	"NaN",
	"\u0000",
	"‮𝔘𝔫𝔦",
	[],
	{},
	[[[[[[]]]]]],
	{ __proto__: null, constructor: 1 },
	1e308,
	-1e308,
	5e-324,
	-0,
	Number.MAX_SAFE_INTEGER,
	"x".repeat(5000),
	"2024-02-30",
	"23:60",
];

/** What came of one fuzzed request. */
export interface Fuzzed {
	readonly operationId: string;
	readonly status: number;
	readonly sent: string;
	readonly fault: string | undefined; // what an answer may never be, in words
}

/** Requests made from the contract's own examples, some numbers stretched or shrunk, some values hostile, keys dropped or added;
 *  the same for the same seed. Each is sent through the whole app and its answer judged. */
export async function* fuzzed(seed: number, count: number): AsyncGenerator<Fuzzed> {
	const uniform = uniformStream(seed);
	const pick = <T>(choices: readonly T[]): T => choices[Math.floor(uniform() * choices.length)]!;
	for (let i = 0; i < count; i++) {
		const operation = pick(operations);
		const example = pick(Object.values(operation.examples))?.value ?? {};
		const filled = operation.method === "post" && uniform() < 0.6;
		const body = structuredClone(filled ? jsonOf(operation.input.parse(example)) : example) as Holder;
		const changes = Math.floor(uniform() * 6);
		for (let change = 0; change < changes; change++) distort(body, uniform, pick);
		const sent = operation.method === "post" ? JSON.stringify(body) : queryText(body);
		const response = await send(operation.method, operation.path, sent, body);
		yield {
			operationId: operation.operationId,
			status: response.status,
			sent,
			fault: await faultOf(response, operation),
		};
	}
}

const jsonOf = (value: unknown): unknown => JSON.parse(JSON.stringify(value));

function distort(body: Holder, uniform: () => number, pick: <T>(choices: readonly T[]) => T): void {
	const path = pick(placesIn(body, []));
	const last = path.at(-1);
	if (last === undefined) return;
	const holder = path.slice(0, -1).reduce<Holder>((node, key) => node[key] as Holder, body);
	const value = holder[last];
	const dice = uniform();
	if (typeof value === "number" && dice < 0.75)
		holder[last] = value * 10 ** (3 * uniform() - 1.5) * (dice < 0.05 ? -1 : 1);
	else if (dice < 0.85) delete holder[last];
	else if (dice < 0.95) holder[last] = pick(HOSTILE);
	else if (!Array.isArray(holder)) holder[pick(["extra", "kind", "constructor"])] = pick(HOSTILE);
}

function placesIn(node: unknown, path: Path): Path[] {
	if (typeof node !== "object" || node === null) return [path];
	return [path, ...Object.entries(node).flatMap(([key, value]) => placesIn(value, [...path, key]))];
}

const textOf = (value: unknown) => (typeof value === "object" ? JSON.stringify(value) : String(value));

function queryText(query: Holder): string {
	const pairs = Object.entries(query).flatMap(([key, value]) =>
		(Array.isArray(value) ? value : [value]).map((item) => [key, textOf(item)] as [string, string]),
	);
	return new URLSearchParams(pairs).toString();
}

async function send(method: "get" | "post", path: string, sent: string, body: Holder): Promise<Response> {
	if (method === "post")
		return app.request(path, {
			method: "POST",
			headers: { "Content-Type": "application/json", "Content-Length": String(Buffer.byteLength(sent)) },
			body: sent,
		});
	const named = path.replace(/\{(\w+)\}/g, (_, name: string) =>
		encodeURIComponent(textOf(body[name] ?? "none")),
	);
	const query = queryText(
		Object.fromEntries(Object.entries(body).filter(([key]) => !path.includes(`{${key}}`))),
	);
	return app.request(query ? `${named}?${query}` : named);
}

async function faultOf(
	response: Response,
	operation: (typeof operations)[number],
): Promise<string | undefined> {
	if (response.status >= 500 && response.status !== 503)
		return `status ${response.status}: ${String((failures.at(-1) as Error)?.stack).slice(0, 800)}`;
	if (response.headers.get("access-control-allow-origin") !== "*") return "no CORS header";
	if (!response.headers.get("x-request-id")) return "no request id";
	const body: unknown = await response.json();
	const schema = response.status === 200 ? operation.output : Problem;
	const read = schema.safeParse(body);
	if (!read.success)
		return `the body of a ${response.status} breaks its schema: ${read.error.message.slice(0, 300)}`;
	return undefined;
}
