import { createHash } from "node:crypto";
import { describe, expect, it } from "vitest";
import { digestOf, hexOf, isKey, keysFrom, newKey } from "../../../../api/access/keys.ts";

const hash = (text: string) => createHash("sha256").update(text).digest("hex");
const file = (...keys: readonly unknown[]) => JSON.stringify({ keys });
const server = { id: "quotes", kind: "secret", sha256: hash("a") };
const page = {
	id: "cedar-row-web",
	kind: "publishable",
	sha256: hash("b"),
	origins: ["https://www.cedar-row.example"],
};

function fault(text: string): string {
	try {
		keysFrom(text);
	} catch (error) {
		return (error as Error).message;
	}
	throw new Error("it was taken");
}

describe("a new key", () => {
	it.each(["secret", "publishable"] as const)("%s is recognised, and no two are alike", (kind) => {
		const keys = Array.from({ length: 200 }, () => newKey(kind));
		for (const key of keys) {
			expect(isKey(key)).toBe(true);
			expect(key).toMatch(new RegExp(`^rk_${kind}_[A-Za-z0-9_-]{43}$`));
			expect(Buffer.from(key.slice(`rk_${kind}_`.length), "base64url")).toHaveLength(32);
		}
		expect(new Set(keys).size).toBe(keys.length);
	});

	it("has the SHA-256 that others reckon: FIPS 180-4, and Node's own", async () => {
		expect(hexOf(await digestOf("abc"))).toBe(
			"ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad",
		);
		const key = newKey("secret");
		expect(hexOf(await digestOf(key))).toBe(hash(key));
	});

	it.each([
		"",
		"rk_secret_",
		`rk_secret_${"a".repeat(42)}`,
		`rk_secret_${"a".repeat(44)}`,
		`rk_secret_${"a".repeat(42)}+`,
		`rk_other_${"a".repeat(43)}`,
		`RK_SECRET_${"a".repeat(43)}`,
		` rk_secret_${"a".repeat(43)}`,
		`rk_secret_${"a".repeat(43)}\n`,
		`rk_secret_${"a".repeat(43)}, rk_secret_${"a".repeat(43)}`,
	])("is not %j", (text) => expect(isKey(text)).toBe(false));
});

describe("a keys file", () => {
	it("holds keys; none is a list too, as when the last one is revoked", () => {
		expect(keysFrom(file(server, { ...page, requests: 50 }))).toEqual([
			{ ...server, origins: [] },
			{ ...page, requests: 50 },
		]);
		expect(keysFrom(file())).toEqual([]);
	});

	it.each([
		["http://localhost:5173"],
		["https://cedar-row.example:8443"],
		["https://xn--caf-dma.example"],
		["http://[::1]:8080"],
		["http://192.0.2.7"],
	])("may name the origin %s", (origin) => {
		expect(keysFrom(file({ ...page, origins: [origin] }))[0]?.origins).toEqual([origin]);
	});

	it.each([
		"https://www.cedar-row.example/",
		"https://www.cedar-row.example/page",
		"https://WWW.cedar-row.example",
		"HTTPS://www.cedar-row.example",
		"https://www.cedar-row.example:443",
		"http://www.cedar-row.example:80",
		"https://user@www.cedar-row.example",
		"https://*.cedar-row.example",
		"https://café.example",
		"https://www.cedar-row.example ",
		"www.cedar-row.example",
		"ftp://www.cedar-row.example",
		"https://",
		"https://a:99999",
		"null",
		"*",
		"",
	])("may not name %j, which no browser sends", (origin) => {
		expect(fault(file({ ...page, origins: [page.origins[0], origin] }))).toMatch(
			/: keys\[0\]\.origins\[1\] must be scheme:\/\/host\[:port\]/,
		);
	});

	it.each([
		["{", "it is not JSON"],
		["", "it is not JSON"],
		["[]", "the file must be an object; an array is not"],
		["null", "the file must be an object; null is not"],
		["{}", "keys is missing"],
		['{"keys":{}}', "keys must be an array; an object is not"],
		['{"keys":[],"more":1}', "more is not known"],
		['{"keys":[null]}', "keys[0] must be an object"],
		[file({ ...server, expires: "never" }), "keys[0].expires is not known"],
		[file({ ...server, origin: "https://x.example" }), "keys[0].origin is not known; did you mean origins?"],
		[file(server, { ...page, id: server.id }), "keys[1].id is the same as in keys[0]"],
		[file(server, { ...page, sha256: server.sha256 }), "keys[1].sha256 is the same as in keys[0]"],
		[file({ ...page, origins: [] }), "keys[0].origins must list the origins"],
		[file({ ...page, origins: undefined }), "keys[0].origins must list the origins"],
		[file({ ...page, origins: "https://x.example" }), "keys[0].origins must be an array"],
		[file({ ...server, origins: page.origins }), "keys[0].origins must be omitted"],
		[
			file({ ...server, sha256: "ab" }),
			"keys[0].sha256 must be the SHA-256 of the key as 64 lower-case hexadecimal digits",
		],
		[file({ ...server, sha256: hash("a").toUpperCase() }), "lower-case hexadecimal"],
		[file({ ...server, kind: "public" }), 'keys[0].kind must be one of "secret" or "publishable"'],
		[file({ ...server, id: "Cedar Row" }), "keys[0].id must be at most 64 lower-case letters"],
		[file({ ...server, id: "x".repeat(65) }), "keys[0].id must be at most 64 lower-case letters"],
		...[0, -1, 1.5, 1e8, "many"].map(
			(requests) =>
				[file({ ...server, requests }), "keys[0].requests must be a whole number from 1"] as const,
		),
	] as const)("%s is refused: %s", (text, words) => {
		expect(fault(text)).toMatch(/^The keys file is invalid: /);
		expect(fault(text)).toContain(words);
	});

	it("names every fault in one sentence, whatever else is wrong with an entry", () => {
		const sentence = fault(
			file(
				{ ...server, kind: "public", sha256: "x", id: "quotes" },
				{ ...page, id: "quotes", origins: [], requests: 0, colour: "red" },
				{ ...server, origins: ["https://a.example/"] },
				{ ...page, sha256: server.sha256, id: "other" },
			),
		);
		const named = [...sentence.matchAll(/keys\[(\d)\]\.(\w+)(?:\[0\])? (?:is|must|repeats)/g)].map(
			([, entry, field]) => `${entry} ${field}`,
		);
		expect(named.toSorted()).toEqual(
			[
				...["0 kind", "0 sha256", "1 colour", "1 id", "1 origins", "1 requests"],
				...["2 id", "2 origins", "2 origins", "3 sha256"],
			].toSorted(),
		);
		expect(sentence).not.toContain("\n");
	});

	it("shows no key that was put there by mistake, wherever it stands", () => {
		const key = newKey("secret");
		const secret = key.slice("rk_secret_".length);
		for (const text of [
			file({ ...server, sha256: key }),
			file({ ...server, id: key }),
			file({ ...server, kind: key }),
			file({ ...server, requests: key }),
			file({ ...server, requests: `this is it: ${key}` }),
			file({ ...server, [key]: hash(key) }),
			file({ ...page, origins: [key] }),
			file({ ...page, origins: key }),
			file(key),
			JSON.stringify({ [key]: server }),
			JSON.stringify(key),
			`{"keys":[${key}]}`,
			key,
		])
			for (let at = 0; at < secret.length - 8; at++)
				expect(fault(text)).not.toContain(secret.slice(at, at + 8));
	});
});
