import { once } from "node:events";
import { createServer, type Server } from "node:http";
import { type AddressInfo, connect } from "node:net";
import { afterEach, expect, it } from "vitest";
import { createApp } from "../../../../api/app.ts";
import { watchUnread } from "../../../../api/http/unread-answers.ts";
import { backlogOf } from "../../../../api/operations/backlog.ts";

const LONG = 32 * 2 ** 20; // [bytes] more than a socket takes at once
let server: Server;
afterEach(() => {
	server?.closeAllConnections();
	server?.close();
});

/** A server that answers at length, whose callers may take nothing for so long [ms]. */
async function lengthy(time: number) {
	const backlog = backlogOf(LONG / 2);
	server = createServer((request, response) =>
		response.end("x".repeat(request.url === "/long" ? LONG : 100)),
	);
	watchUnread(server, backlog, time);
	server.listen(0, "127.0.0.1");
	await once(server, "listening");
	return { backlog, port: (server.address() as AddressInfo).port };
}

const get = (path: string) => `GET ${path} HTTP/1.1\r\nHost: raykettle.test\r\n\r\n`;
const until = async (holds: () => boolean) => {
	while (!holds()) await new Promise((resolve) => setTimeout(resolve, 5));
};

it.each([
	["one answer", get("/long")],
	["an answer behind another", get("/short") + get("/long") + get("/long")],
])("counts %s that is not taken, and closes the connection when time is up", async (_, sent) => {
	const { backlog, port } = await lengthy(300);
	const closed = once(server, "connection").then(([socket]) => once(socket, "close"));
	const caller = connect(port, "127.0.0.1", () => caller.write(sent)).pause();
	caller.on("error", () => {});
	await until(backlog.isFull);
	await closed;
	await until(() => !backlog.isFull());
	caller.destroy();
});

it("leaves alone who takes his answer, and counts nothing once he has it", async () => {
	const { backlog, port } = await lengthy(300);
	const text = await (await fetch(`http://127.0.0.1:${port}/long`)).text();
	expect(text).toHaveLength(LONG);
	await until(() => !backlog.isFull());
	backlog.hold(LONG / 2);
	expect(backlog.isFull()).toBe(false); // to the byte
});

it("lets nothing new begin while too much is held, but for probes", async () => {
	const backlog = backlogOf(10);
	const app = createApp({ indexPage: undefined, backlog, onFailure: () => {} });
	backlog.hold(11);
	const refused = await app.request("/v1/meta");
	expect([refused.status, refused.headers.get("retry-after")]).toEqual([503, "1"]);
	expect((await app.request("/openapi.json")).status).toBe(503);
	expect((await app.request("/health/live")).status).toBe(200);
	backlog.release(1);
	expect((await app.request("/v1/meta")).status).toBe(200);
});
