import { describe, expect, it } from "vitest";
import { keyMissing, keyring } from "../../api/access/keyring.ts";
import { digestOf, hexOf, newKey } from "../../api/access/keys.ts";
import { rateLimit } from "../../api/access/rate-limit.ts";
import { ProblemError, problem } from "../../api/problem/problem.ts";
import document from "../../openapi/openapi.json";

// What the contract tells of keys, rates and load, against what the guards do.

interface Told {
	readonly headers: Readonly<Record<string, { readonly $ref: string }>>;
}
interface Operation {
	readonly security: readonly object[];
	readonly responses: Readonly<Record<string, { readonly $ref?: string } & Partial<Told>>>;
}
const { paths, components } = document as unknown as {
	readonly paths: Readonly<Record<string, Readonly<Record<string, Operation>>>>;
	readonly components: {
		readonly responses: Readonly<Record<string, Told>>;
		readonly headers: Readonly<Record<string, { readonly example?: string }>>;
		readonly securitySchemes: Readonly<Record<string, object>>;
	};
};
const operations = Object.entries(paths).flatMap(([path, entry]) =>
	Object.entries(entry).map(([method, operation]) => ({ path, method, operation })),
);
const last = (pointer = "") => pointer.slice(pointer.lastIndexOf("/") + 1);
const GUARDS = ["401", "403", "429", "503"];

/** The headers that the contract tells of a status, each by the name of its component. */
const toldOf = (status: string) =>
	components.responses[last(paths["/v1/tank/warm-up"]!.post!.responses[status]!.$ref)]!.headers;

async function thrown(work: () => unknown): Promise<ProblemError> {
	try {
		await work();
	} catch (error) {
		if (error instanceof ProblemError) return error;
	}
	throw new Error("nothing was refused");
}

describe("the contract", () => {
	it("has guards on every operation under /v1, which takes a key or none, and nowhere else", () => {
		expect(components.securitySchemes.apiKey).toMatchObject({
			type: "apiKey",
			in: "header",
			name: "X-Api-Key",
		});
		expect(operations.length).toBeGreaterThan(18);
		for (const { path, method, operation } of operations) {
			const isOpen = !path.startsWith("/v1/");
			const has = GUARDS.filter((status) => status in operation.responses);
			const expected = !isOpen ? GUARDS : path === "/health/ready" ? ["503"] : [];
			expect(has, `${method} ${path}`).toEqual(expected);
			expect(operation.security, `${method} ${path}`).toEqual(isOpen ? [] : [{}, { apiKey: [] }]);
			const told = Object.keys(operation.responses["200"]!.headers ?? {});
			expect(told, `${method} ${path}`).toEqual([
				"X-Request-Id",
				...(isOpen ? [] : ["RateLimit", "RateLimit-Policy"]),
			]);
		}
	});

	it("tells of each header that a guard's refusal carries", async () => {
		const key = newKey("publishable");
		const sha256 = hexOf(await digestOf(key));
		const open = keyring([{ id: "web", kind: "publishable", sha256, origins: ["https://a.example"] }]);
		const count = rateLimit({ requests: 1, windowS: 60, callers: 10 });
		count({ address: "a", key: undefined }, 0);
		const refusals = await Promise.all([
			keyMissing(),
			thrown(() => open("none", undefined)),
			thrown(() => open(newKey("secret"), undefined)),
			thrown(() => open(key, ["https://b.example"])),
			thrown(() => count({ address: "a", key: undefined }, 1)),
		]);
		const statuses = refusals.map((refusal) => {
			const { status } = problem(refusal.kind, refusal.message, "", []);
			const told = Object.keys(toldOf(String(status)));
			for (const header of Object.keys(refusal.headers))
				expect(told, `${status} ${header}`).toContain(header);
			return status;
		});
		expect(statuses).toEqual([401, 401, 401, 403, 429]);
		for (const status of ["429", "503"]) expect(Object.keys(toldOf(status))).toContain("Retry-After");
	});

	it("shows the fields as they are sent", () => {
		const count = rateLimit({ requests: 600, windowS: 60, callers: 10 });
		const sent = { ...keyMissing().headers, ...count({ address: "a", key: undefined }, 0) };
		for (const [header, value] of Object.entries(sent)) {
			const shown = { ...toldOf("401"), ...toldOf("429") }[header];
			expect(components.headers[last(shown?.$ref)]?.example, header).toBe(value);
		}
		expect(Object.keys(sent)).toHaveLength(3);
	});
});
