import { describe, expect, it } from "vitest";
import { USUAL_SETTINGS } from "../../api/config/settings.ts";
import { operations } from "../../api/operations/index.ts";
import { asQuery } from "../../openapi/contract.ts";
import { app, failures, parsed, problemIn, raykettle } from "./service.ts";

const post = (body: unknown) =>
	app.request("/v1/batch", {
		method: "POST",
		headers: { "Content-Type": "application/json" },
		body: typeof body === "string" ? body : JSON.stringify(body),
	});

const kettle = (elevationM: unknown) => ({ operation: "getBoilingPoint" as const, body: { elevationM } });
const warmUp = operations.find(({ operationId }) => operationId === "warmUpTank")!.examples.least!.value;

describe("200", () => {
	it("answers each item byte for byte as the operation alone", async () => {
		const cheap = operations.filter(({ operationId, cost }) => operationId !== "runBatch" && cost <= 50);
		const asked = cheap.flatMap(({ operationId, method, path, examples }) =>
			Object.values(examples).map(({ value }) => ({ operationId, method, path, value })),
		);
		expect(asked.length).toBeGreaterThan(15);
		const response = await post({
			items: asked.map(({ operationId, value }) => ({ operation: operationId, body: value })),
		});
		expect(response.status).toBe(200);
		const { items } = (await response.json()) as { items: { status: number; result: unknown }[] };
		for (const [i, { operationId, method, path, value }] of asked.entries()) {
			const alone = method === "get" ? await get(path, value) : await send(path, value);
			expect(items[i]?.status, operationId).toBe(200);
			expect(JSON.stringify(items[i]?.result), operationId).toBe(await alone.text());
			parsed(operationId, items[i]?.result);
		}
	});

	it("each item of the contract's examples is answered, but for the one that they call out of bounds", async () => {
		const { examples } = operations.find(({ operationId }) => operationId === "runBatch")!;
		const statuses = Object.values(examples).map(async ({ value }) => {
			const { items } = (await (await post(value)).json()) as { items: { status: number }[] };
			return items.map(({ status }) => status);
		});
		expect(await Promise.all(statuses)).toEqual([
			[200, 200, 400],
			[200, 200],
		]);
	});

	it("keeps the order, and a problem in its place", async () => {
		const answer = await raykettle.runBatch({
			items: [kettle(0), kettle(99_000), kettle(3000), { operation: "getFluid", body: { id: "lava" } }],
		});
		parsed("runBatch", answer);
		expect(answer.items.map(({ status }) => status)).toEqual([200, 400, 200, 404]);
		expect(answer.items[1]).toMatchObject({
			problem: {
				type: "urn:raykettle:problem:invalid-request",
				errors: [{ in: "query", parameter: "elevationM", code: "out_of_bounds" }],
			},
		});
		expect(answer.items[2]).toMatchObject({ result: { elevationM: 3000 } });
	});

	it("tells a contradiction inside an item as 422, its place within the item's body", async () => {
		const body = { ...warmUp, startTime: "18:00", endTime: "08:00" };
		const { items } = (await (await post({ items: [{ operation: "warmUpTank", body }] })).json()) as {
			items: { status: number; problem: { errors: { in: string; pointer: string }[] } }[];
		};
		expect(items[0]?.status).toBe(422);
		expect(items[0]?.problem.errors[0]).toMatchObject({ in: "body", pointer: expect.stringMatching(/^\//) });
	});

	it("sees a key named like a prototype", async () => {
		const response = await post(
			'{"items":[{"operation":"getBoilingPoint","body":{"elevationM":0,"__proto__":{"pressureKpa":70}}}]}',
		);
		const { items } = (await response.json()) as { items: { status: number }[] };
		expect(items[0]?.status).toBe(400);
		expect(failures).toEqual([]);
	});

	it("counts the cost that /v1/meta states", async () => {
		const { costs } = await raykettle.meta();
		const of = (id: string) => costs.find(({ operation }) => operation === id)?.cost;
		const { cost } = await raykettle.runBatch({
			items: [kettle(0), { operation: "getDishOptics", body: { dish: { apertureDiameterM: 1.8 } } }],
		});
		expect(cost).toBe(of("getBoilingPoint")! + of("getDishOptics")!);
		const single = operations.filter(({ operationId }) => operationId !== "runBatch");
		for (const { operationId } of single) expect(of(operationId), operationId).toBeGreaterThan(0);
	});
});

describe("400", () => {
	it.each([
		["no items", { items: [] }, "/items"],
		["an unknown operation", { items: [{ operation: "brewTea", body: {} }] }, "/items/0/operation"],
		["a batch inside", { items: [{ operation: "runBatch", body: { items: [] } }] }, "/items/0/operation"],
		["a body that is no object", { items: [{ operation: "getMeta", body: [] }] }, "/items/0/body"],
		["too many items", { items: Array.from({ length: 101 }, () => kettle(0)) }, "/items"],
	])("refuses %s", async (_what, body, pointer) => {
		const { status, errors } = await problemIn(await post(body));
		expect(status).toBe(400);
		expect(errors?.map((fault) => fault.pointer)).toContain(pointer);
	});
});

it("413: refuses a body beyond the limit", async () => {
	expect((await problemIn(await post(" ".repeat(USUAL_SETTINGS.bodyBytes + 1)))).status).toBe(413);
});

describe("422", () => {
	it("refuses up front what costs more than a batch may", async () => {
		const begun = performance.now();
		const items = Array.from({ length: 100 }, () => ({
			operation: "warmUpTank",
			body: { ...warmUp, withRange: true },
		}));
		const { status, type, errors } = await problemIn(await post({ items }));
		expect([status, type]).toEqual([422, "urn:raykettle:problem:too-large"]);
		expect(errors?.[0]).toMatchObject({ pointer: "/items", code: "too_large" });
		expect(performance.now() - begun).toBeLessThan(1000); // a hundred ranges would take a minute
	});

	it("counts a finer step", async () => {
		const fine = (stepS: number) => ({ operation: "warmUpTank", body: { ...warmUp, stepS } });
		const items = Array.from({ length: 20 }, () => fine(15));
		expect((await problemIn(await post({ items }))).status).toBe(422);
	});
});

function get(path: string, value: Readonly<Record<string, unknown>>) {
	const query = new URLSearchParams();
	let filled = path;
	for (const [name, given] of Object.entries(asQuery(value))) {
		if (path.includes(`{${name}}`)) filled = filled.replace(`{${name}}`, String(given));
		else for (const one of [given].flat()) query.append(name, one);
	}
	return app.request(`${filled}?${query}`);
}

const send = (path: string, value: unknown) =>
	app.request(path, {
		method: "POST",
		headers: { "Content-Type": "application/json" },
		body: JSON.stringify(value),
	});
