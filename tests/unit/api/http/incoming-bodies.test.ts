import { Hono } from "hono";
import { expect, it } from "vitest";
import { jsonBody } from "../../../../api/http/body.ts";
import { incomingBodies } from "../../../../api/http/incoming-bodies.ts";

/** Bodies that begin one after another, and who of them gave way. */
function bodies(most: number, count: number) {
	const gone: number[] = [];
	const begin = incomingBodies(most);
	const coming = Array.from({ length: count }, (_, i) => begin(() => gone.push(i)));
	return { gone, coming };
}

it("whoever has been coming longest gives way, and no more of them than must", () => {
	const { gone, coming } = bodies(100, 4);
	for (const body of coming) body.add(25);
	expect(gone).toEqual([]);
	coming[3]!.add(1);
	expect(gone).toEqual([0]);
	coming[3]!.add(24);
	expect(gone).toEqual([0]);
	coming[1]!.add(1);
	expect(gone).toEqual([0, 1]); // though it was the last to be heard of
});

it("what is whole takes no more room, and what gave way counts no more", () => {
	const { gone, coming } = bodies(100, 3);
	coming[0]!.add(90);
	coming[0]!.end();
	coming[1]!.add(90);
	coming[2]!.add(20);
	expect(gone).toEqual([1]);
	coming[1]!.add(1000);
	coming[2]!.add(80);
	expect(gone).toEqual([1]);
});

it("a body that gives way is refused with 503, though none of it comes any more", async () => {
	const begin = incomingBodies(100_000);
	const app = new Hono();
	app.post("/", async (c) => c.json((await jsonBody(c.req, 100_000, begin)) as object));
	let refused: unknown;
	app.onError((error, c) => {
		refused = error;
		return c.text("", 503);
	});
	const stalled = new ReadableStream<Uint8Array>({
		start: (body) => body.enqueue(new TextEncoder().encode(`"${"x".repeat(60_000)}`)),
	});
	const send = async (body: ReadableStream<Uint8Array> | string) =>
		app.request("/", { method: "POST", headers: JSON_BODY, body, duplex: "half" } as RequestInit);
	const first = send(stalled);
	await new Promise((resolve) => setTimeout(resolve, 20));
	expect((await send(`{"a":"${"x".repeat(60_000)}"}`)).status).toBe(200);
	expect((await first).status).toBe(503);
	expect(refused).toMatchObject({ kind: "overloaded" });
});

const JSON_BODY = { "content-type": "application/json" };
