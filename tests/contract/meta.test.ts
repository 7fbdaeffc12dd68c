import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { app, parsed, raykettle, refusal } from "./service.ts";

const versionOf = (path: string) =>
	(JSON.parse(readFileSync(new URL(path, import.meta.url), "utf8")) as { version: string }).version;

describe("200", () => {
	it("tells the versions of service, contract and data", async () => {
		const meta = await raykettle.meta();
		parsed("getMeta", meta);
		expect(meta.service).toBe(versionOf("../../package.json"));
		expect(meta.service).toBe(versionOf("../../sdk/package.json"));
	});

	it("states the body limit that is in force", async () => {
		const { limits } = await raykettle.meta();
		const limit = limits.find(({ name }) => name === "bodyBytes")!.value;
		const post = (length: number) =>
			app.request("/v1/meta/limit-probe", { method: "POST", body: "x".repeat(length) });
		expect((await post(limit)).status).toBe(404);
		expect(limits.map(({ name }) => name)).toContain("instantsPerRequest");
	});
});

describe("400", () => {
	it("takes no parameters", async () => {
		const { errors } = await refusal("/v1/meta?verbose=1");
		expect(errors?.[0]).toMatchObject({ parameter: "verbose", code: "unknown" });
	});
});
