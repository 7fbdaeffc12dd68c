import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { gunzipSync } from "node:zlib";
import { afterAll, beforeAll, expect, it } from "vitest";
import { createApp } from "../../api/app.ts";
import { FILES } from "../../api/pages/files.ts";
import { readPages } from "../../api/pages/read.ts";
import { buildPages } from "../../api/scripts/build-pages.ts";
import { problemIn } from "./service.ts";

const folder = mkdtempSync(join(tmpdir(), "assets-"));
let app: ReturnType<typeof createApp>;

beforeAll(async () => {
	await buildPages(folder);
	app = createApp({
		...readPages(pathToFileURL(`${folder}/`)),
		onFailure: (error) => {
			throw error;
		},
	});
});
afterAll(() => rmSync(folder, { recursive: true }));

it.each(FILES)("$path comes as built, packed for whoever takes it so", async ({ path, name, type }) => {
	const built = readFileSync(join(folder, name));
	const response = await app.request(path);
	expect(response.status).toBe(200);
	expect(response.headers.get("content-type")).toBe(type);
	expect(response.headers.get("vary")).toContain("Accept-Encoding");
	expect(Buffer.from(await response.arrayBuffer()).equals(built)).toBe(true);
	const packed = await app.request(path, { headers: { "accept-encoding": "br, gzip;q=0.8" } });
	expect(packed.headers.get("content-encoding")).toBe("gzip");
	expect(gunzipSync(Buffer.from(await packed.arrayBuffer())).equals(built)).toBe(true);
	expect(packed.headers.get("etag")).not.toBe(response.headers.get("etag"));
	expect(
		(await app.request(path, { headers: { "accept-encoding": "gzip;q=0" } })).headers.get("content-encoding"),
	).toBeNull();
});

it("a file that the caller holds is not sent again", async () => {
	const etag = (await app.request("/widget.js")).headers.get("etag")!;
	const again = await app.request("/widget.js", { headers: { "if-none-match": etag } });
	expect(again.status).toBe(304);
	expect(again.headers.get("x-request-id")).toBeTruthy();
});

it("another site's page may load the widget", async () => {
	const { headers } = await app.request("/widget.js");
	expect(headers.get("cross-origin-resource-policy")).toBe("cross-origin");
	expect(headers.get("access-control-allow-origin")).toBe("*");
});

it("pages hold no inline script, style or handler", () => {
	for (const name of ["index.html", "docs.html"]) {
		const page = readFileSync(join(folder, name), "utf8");
		expect(page.match(/<script(?![^>]*\ssrc=)[^>]*>/g)).toBeNull();
		expect(page).not.toMatch(/<style|\sstyle=|\son\w+=|javascript:|https?:\/\/(?!your\.service)/);
	}
});

it("links to what is there", async () => {
	const index = (await (await app.request("/")).json()) as object;
	expect(index).toMatchObject({ docs: "/docs", widget: "/widget.js" });
	const page = await (await app.request("/", { headers: { accept: "text/html" } })).text();
	const links = [...page.matchAll(/(?:href|src)="(\/[^"#]*)"/g)].map(([, link]) =>
		link!.replaceAll("&amp;", "&"),
	);
	expect(links.length).toBeGreaterThan(8);
	for (const link of links) expect((await app.request(link)).status, link).toBe(200);
});

it("a file takes no other method", async () => {
	const problem = await problemIn(await app.request("/widget.js", { method: "POST" }));
	expect(problem.status).toBe(405);
});

it("without a build there is JSON alone", async () => {
	const bare = createApp({ indexPage: undefined, onFailure: () => {} });
	expect((await bare.request("/docs")).status).toBe(404);
	expect(await (await bare.request("/")).json()).not.toHaveProperty("docs");
});
