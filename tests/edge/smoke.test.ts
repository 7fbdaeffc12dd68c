import { readdirSync, readFileSync } from "node:fs";
import { expect, it } from "vitest";
import { IN_PROCESS_ONLY } from "../contract/in-process-only.ts";
import { app } from "../contract/service.ts";
import { examples, posted } from "../examples.ts";
import { onWorkerd } from "./workerd.ts";

// The edge bundle starts and answers; same-bytes.slow.test.ts asks it every example, worker.slow.test.ts sets its bindings.

it("a warm-up and a problem have the same bytes in workerd as here", async () => {
	const edge = await onWorkerd({ RATE_REQUESTS: "0" });
	try {
		const [, , , [path, example]] = examples.find(([operationId]) => operationId === "warmUpTank")!;
		for (const init of [example, posted(path, '{"tank":{"volume":1}}')[1]]) {
			const sent = { ...init, headers: { ...init.headers, "X-Request-Id": "same", Connection: "close" } };
			const [there, here] = [await edge.ask(path, sent), await app.request(path, sent)];
			expect(there.status).toBe(init === example ? 200 : 400);
			expect(await there.text()).toBe(await here.text());
		}
		expect(edge.written).toEqual([]);
	} finally {
		await edge.end();
	}
});

it("every contract test that is left out elsewhere is one that there is", () => {
	const folder = new URL("../contract/", import.meta.url);
	const tests = readdirSync(folder).map((name) => readFileSync(new URL(name, folder), "utf8"));
	for (const name of IN_PROCESS_ONLY.keys()) {
		const written = [name, name.replace(/^\w+ \w+/, "%s %s")].map((text) => JSON.stringify(text));
		expect(
			tests.some((text) => written.some((one) => text.includes(`(${one}`))),
			name,
		).toBe(true);
	}
});
