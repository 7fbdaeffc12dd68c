import { describe, expect, it } from "vitest";
import { SensitivityResponse } from "../../api/operations/sensitivity/response.ts";
import openapi from "../../openapi/openapi.json";
import { app, problemIn } from "./service.ts";

const DAY = "/v1/sun/day?latitude=28.6&longitude=77.2&elevationM=216&date=2025-01-15";
const BODY = {
	site: { latitude: 31.2, longitude: -7.9, elevationM: 2350 },
	date: "2026-01-15",
	dish: { diameterM: 2 },
	tank: { volumeL: 150 },
};
const COOLING = {
	tank: { volumeL: 200, startTemperatureC: [68, 66, 60, 48, 36, 30] },
	ambientC: -4,
	durationH: 14,
	untilC: [50, 45, 40],
	untilAt: "top",
};

function posted(path: string, value: object, accept: string) {
	const body = JSON.stringify(value);
	const headers = { accept, "content-type": "application/json", "content-length": String(body.length) };
	return app.request(path, { method: "POST", headers, body });
}

const asked = {
	"/v1/sun/day": (accept: string, headers = {}) => app.request(DAY, { headers: { accept, ...headers } }),
	"/v1/tank/warm-up": (accept: string) => posted("/v1/tank/warm-up", BODY, accept),
	"/v1/tank/cooling": (accept: string) => posted("/v1/tank/cooling", COOLING, accept),
};
const paths = ["/v1/sun/day", "/v1/tank/warm-up", "/v1/tank/cooling"] as const;

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

	it("has its title on it, as a picture shows no other, and all words on the paper", async () => {
		const text = await (await asked[path]("image/svg+xml")).text();
		const title = /<title[^>]*>([^<]+)</.exec(text)![1]!;
		expect(text.split(`>${title}</text>`)).toHaveLength(2);
		for (const [, attributes = "", words = ""] of text.matchAll(/<text([^>]*)>([^<]*)</g)) {
			const x = Number(/ x="([\d.]+)"/.exec(attributes)![1]);
			const half = (words.length * 7.2) / 2; // as wide as letters of 13 px are
			if (attributes.includes('"middle"')) expect(x + half, words).toBeLessThanOrEqual(600);
		}
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
		expect(header!.split(",").filter((name) => !/ \[.+\]$/.test(name))).toEqual(
			path === "/v1/tank/cooling" ? [] : ["time"],
		);
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
	expect(text).toContain(">Clear sky on 2025-12-21. The sun stays below the horizon all day.</text>");
	expect(text).not.toContain("NaN");
});

it("a day without sun says why the target is not reached", async () => {
	const body = { ...BODY, site: { latitude: 75, longitude: 20, elevationM: 10 }, date: "2025-12-21" };
	const { reason } = (await (await posted("/v1/tank/warm-up", body, "application/json")).json()) as {
		reason: { message: string };
	};
	const text = await (await posted("/v1/tank/warm-up", body, "image/svg+xml")).text();
	expect(text).toContain(`does not reach the target of 60 °C. ${reason.message}`);
});

it("ten minutes have marks enough to be read", async () => {
	const body = { ...BODY, startTime: "12:00", endTime: "12:10" };
	const text = await (await posted("/v1/tank/warm-up", body, "image/svg+xml")).text();
	for (const mark of ["12:00", "12:05", "12:10"]) expect(text).toContain(`>${mark}</text>`);
});

it("an operation with one form answers in that alone", async () => {
	expect((await app.request("/v1/meta", { headers: { accept: "text/csv" } })).status).toBe(406);
});

describe("/v1/tank/cooling", () => {
	const drawn = async (body: object) => (await posted("/v1/tank/cooling", body, "image/svg+xml")).text();

	it("draws each requested temperature as a dashed line, and a ring where the tank falls below one", async () => {
		const svg = await drawn({ ...COOLING, untilC: [67, 64, 45, -20] });
		const dashes = elements(svg).filter(({ attributes }) => attributes.includes('stroke-dasharray="6 4"'));
		expect(dashes).toHaveLength(3); // none far below the drawing
		expect(elements(svg).filter(({ tag }) => tag === "circle")).toHaveLength(1);
		expect(svg).toContain(">67 °C</text>");
		expect(svg).toMatch(/>below 64 °C after [\d.]+ h<\/text>/);
		expect(svg).toMatch(/below 45 °C not in this period/);
	});

	it("draws one line of a tank that has one temperature", async () => {
		const svg = await drawn({ tank: { volumeL: 150, nodes: 1 }, durationH: 6 });
		expect(elements(svg).filter(({ tag }) => tag === "path")).toHaveLength(1);
	});
});

describe("/v1/sensitivity", () => {
	const path = "/v1/sensitivity";
	const body = { ...BODY, stepS: 300, tank: { volumeL: 300, nodes: 4 }, targetTemperatureC: 40 };
	const answer = async (value: object) =>
		SensitivityResponse.parse(await (await posted(path, value, "application/json")).json());

	it("draws a bar for each gain, the most worth on top, and says them in order", async () => {
		const response = await posted(path, body, "image/svg+xml");
		expect(response.status).toBe(200);
		expect(response.headers.get("content-type")).toBe("image/svg+xml");
		const svg = await response.text();
		const drawn = elements(svg);
		const { improvements, notApplicable } = await answer(body);
		expect(drawn[0]!.attributes).toMatch(/role="img" aria-labelledby="chart-title chart-description"/);
		expect(drawn.slice(1, 3).map(({ tag }) => tag)).toEqual(["title", "desc"]);
		for (const { attributes } of drawn)
			expect(attributes).not.toMatch(/NaN|Infinity|undefined| style=| on\w+=/);
		const widths = drawn
			.filter(({ attributes }) => attributes.includes('class="fill water"'))
			.map(({ attributes }) => Number(/ width="([\d.]+)"/.exec(attributes)![1]));
		const gains = improvements.map(({ gains }) => gains.usableLitresAt40C);
		expect(widths).toHaveLength(gains.filter((gain) => gain >= 0).length);
		expect(widths[0]! / widths[1]!).toBeCloseTo(gains[0]! / gains[1]!, 4);
		expect(svg).toContain(">larger dish</text>");
		expect(svg).toMatch(/<desc[^>]*>1\. better mirror: \+[\d.]+ L\. 2\. larger dish: /);
		expect(improvements.slice(0, 2).map(({ id }) => id)).toEqual(["reflectance", "aperture"]);
		expect(notApplicable.length).toBeGreaterThan(0);
		expect(svg).toContain(">Not applicable: ");
		expect(svg).not.toContain("Whiskers");
	});

	it("draws a whisker where a range was asked for", async () => {
		const svg = await (await posted(path, { ...body, withRange: true }, "image/svg+xml")).text();
		const { improvements } = await answer({ ...body, withRange: true });
		const whiskers = elements(svg).filter(({ attributes }) => attributes.includes('stroke-width="1.5"'));
		expect(whiskers.length).toBeGreaterThanOrEqual(3 * improvements.length); // a line and two ends
		expect(svg).toContain(">Whiskers cover 90 % of plants like this one.</text>");
		expect(svg).toContain("order against the next uncertain");
	});

	it("says in words what has no time to save", async () => {
		const cold = { ...body, targetTemperatureC: 85, rankedBy: "minutes" };
		const svg = await (await posted(path, cold, "image/svg+xml")).text();
		expect(svg).toContain(">target not reached</text>");
		expect(elements(svg).some(({ attributes }) => attributes.includes('class="fill water"'))).toBe(false);
	});

	it("writes the list as a table, a row for everything, ranges where asked for", async () => {
		const priced = { ...body, withRange: true, prices: { currency: "MAD", aperture: 1800 } };
		const response = await posted(path, priced, "text/csv");
		expect(response.headers.get("content-type")).toBe("text/csv; charset=utf-8; header=present");
		const rows = cells(await response.text());
		const { improvements, notApplicable } = await answer(priced);
		const [head, ...list] = rows;
		const column = (name: string) => list.map((row) => row[head!.indexOf(name)]);
		expect(new Set(rows.map(({ length }) => length))).toEqual(new Set([head!.length]));
		expect(column("id")).toEqual([...improvements, ...notApplicable].map(({ id }) => id));
		expect(column("rank").slice(0, improvements.length)).toEqual(improvements.map((_, i) => String(i + 1)));
		expect(column("usableLitresAt40CLow [L]").slice(0, improvements.length)).toEqual(
			improvements.map(({ range }) => String(range!.usableLitresAt40C.low)),
		);
		expect(column("outcome").at(-1)).toBe("notApplicable");
		expect(column("price [MAD]").filter((price) => price !== "")).toEqual(["1800"]);
		expect(column("what")).toContain("A larger dish of the same shape, with the same receiver."); // with its comma
		const bare = cells(await (await posted(path, body, "text/csv")).text())[0]!;
		expect(bare.filter((name) => /Low|High|ahead|price/.test(name))).toEqual([]);
	});
});

/** The fields of each row, those in quotes freed of them. */
function cells(table: string): string[][] {
	return table
		.trimEnd()
		.split("\r\n")
		.map((row) =>
			[...`,${row}`.matchAll(/,(?:"((?:[^"]|"")*)"|([^,]*))/g)].map(([, quoted, bare]) => quoted ?? bare!),
		);
}
