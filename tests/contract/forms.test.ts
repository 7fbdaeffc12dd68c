import { describe, expect, it } from "vitest";
import openapi from "../../openapi/openapi.json";
import { app, problemIn } from "./service.ts";

const DAY = "/v1/sun/day?latitude=28.6&longitude=77.2&elevationM=216&date=2025-01-15";
const BODY = {
	site: { latitude: 31.2, longitude: -7.9, elevationM: 2350 },
	date: "2026-01-15",
	dish: { diameterM: 2 },
	tank: { volumeL: 150 },
};
const asked = {
	"/v1/sun/day": (accept: string, headers = {}) => app.request(DAY, { headers: { accept, ...headers } }),
	"/v1/tank/warm-up": (accept: string) => {
		const body = JSON.stringify(BODY);
		const headers = { accept, "content-type": "application/json", "content-length": String(body.length) };
		return app.request("/v1/tank/warm-up", { method: "POST", headers, body });
	},
};
const paths = ["/v1/sun/day", "/v1/tank/warm-up"] as const;

/** The elements that a well-formed document opens, each with its attributes; throws on one that is not. */
function elements(xml: string): { tag: string; attributes: string }[] {
	const open: string[] = [];
	const found: { tag: string; attributes: string }[] = [];
	for (const [, close, tag, attributes = "", empty] of xml.matchAll(
		/<(\/?)(\w+)((?:\s[\w:-]+="[^"<]*")*)(\/?)>/g,
	)) {
		if (close) {
			if (open.pop() !== tag) throw new Error(`${tag} closes what it did not open`);
		} else {
			found.push({ tag: tag!, attributes });
			if (!empty) open.push(tag!);
		}
	}
	if (open.length > 0 || /<(?!\/?\w+(?:\s[\w:-]+="[^"<]*")*\/?>)/.test(xml))
		throw new Error("not well formed");
	return found;
}

describe.each(paths)("%s", (path) => {
	it("draws a chart that says what it shows", async () => {
		const response = await asked[path]("image/svg+xml");
		expect(response.status).toBe(200);
		expect(response.headers.get("content-type")).toBe("image/svg+xml");
		expect(response.headers.get("vary")).toContain("Accept");
		const drawn = elements(await response.text());
		expect(drawn[0]!.tag).toBe("svg");
		expect(drawn[0]!.attributes).toMatch(/role="img" aria-labelledby="chart-title chart-description"/);
		expect(drawn.slice(1, 3).map(({ tag }) => tag)).toEqual(["title", "desc"]);
		expect(drawn.filter(({ tag }) => tag === "path")).toHaveLength(3);
		for (const { attributes } of drawn)
			expect(attributes).not.toMatch(/NaN|Infinity|undefined| style=| on\w+=/);
	});

	it("writes small letters nowhere", async () => {
		const drawn = elements(await (await asked[path]("image/svg+xml")).text());
		expect(drawn[0]!.attributes).toMatch(/viewBox="0 0 600 360"/);
		const sizes = drawn.flatMap(({ attributes }) =>
			[...attributes.matchAll(/font-size="([\d.]+)"/g)].map(([, size]) => Number(size)),
		);
		expect(sizes.length).toBeGreaterThan(0);
		expect(Math.min(...sizes)).toBeGreaterThanOrEqual(12);
	});

	it("writes the series as a table, units in its header", async () => {
		const response = await asked[path]("text/csv");
		expect(response.headers.get("content-type")).toBe("text/csv; charset=utf-8; header=present");
		const [header, ...rows] = (await response.text()).trimEnd().split("\r\n");
		const { series } = (await (await asked[path]("application/json")).json()) as {
			series: Record<string, unknown>;
		};
		const columns = Object.entries(series).filter(([name]) => name !== "stepMin") as [
			string,
			(number | string)[],
		][];
		expect(header!.split(",").map((name) => name.replace(/ \[.*/, ""))).toEqual(
			columns.map(([name]) => name),
		);
		expect(header!.split(",").filter((name) => !/ \[.+\]$/.test(name))).toEqual(["time"]);
		expect(rows.map((row) => row.split(","))).toEqual(
			columns[0]![1].map((_, i) => columns.map(([, values]) => String(values[i]))),
		);
	});

	it("answers in JSON whoever has no wish, and refuses a form it lacks", async () => {
		for (const accept of ["*/*", "application/json, text/csv;q=0.5", "text/html, */*;q=0.8"])
			expect((await asked[path](accept)).headers.get("content-type")).toBe("application/json");
		const problem = await problemIn(await asked[path]("image/png"));
		expect(problem.status).toBe(406);
		expect(problem.detail).toContain("image/svg+xml, text/csv");
	});

	it("shows its forms in the contract", () => {
		const operation = Object.values(openapi.paths[path])[0]!;
		expect(Object.keys(operation.responses[200].content)).toEqual([
			"application/json",
			"image/svg+xml",
			"text/csv",
		]);
	});
});

it("a picture in a page gets the chart", async () => {
	const chrome = "image/avif,image/webp,image/apng,image/svg+xml,image/*,*/*;q=0.8";
	expect((await asked["/v1/sun/day"](chrome)).headers.get("content-type")).toBe("image/svg+xml");
});

it("each form has a tag of its own", async () => {
	const tags = await Promise.all(
		["application/json", "image/svg+xml", "text/csv"].map(
			async (accept) => (await asked["/v1/sun/day"](accept)).headers.get("etag")!,
		),
	);
	expect(new Set(tags).size).toBe(3);
	expect((await asked["/v1/sun/day"]("text/csv", { "if-none-match": tags[2] })).status).toBe(304);
	expect((await asked["/v1/sun/day"]("text/csv", { "if-none-match": tags[0] })).status).toBe(200);
});

it("a night without end is drawn as well", async () => {
	const night = "/v1/sun/day?latitude=69.65&longitude=18.96&elevationM=10&date=2025-12-21";
	const text = await (await app.request(night, { headers: { accept: "image/svg+xml" } })).text();
	expect(elements(text).length).toBeGreaterThan(10);
	expect(text).toContain("stays down all day");
	expect(text).not.toContain("NaN");
});

it("an operation with one form answers in that alone", async () => {
	expect((await app.request("/v1/meta", { headers: { accept: "text/csv" } })).status).toBe(406);
});
