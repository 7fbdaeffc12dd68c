import { beforeAll, describe, expect, it } from "vitest";
import { keyMissing, keyring } from "../../../../api/access/keyring.ts";
import { digestOf, hexOf, type Key, newKey } from "../../../../api/access/keys.ts";
import { ProblemError } from "../../../../api/problem/problem.ts";

const ORIGIN = "https://www.cedar-row.example";
const secret = newKey("secret");
const publishable = newKey("publishable");
const misfiled = newKey("secret");
let open: ReturnType<typeof keyring>;

async function entry(key: string, rest: Pick<Key, "id" | "kind" | "origins">): Promise<Key> {
	return { ...rest, sha256: hexOf(await digestOf(key)) };
}

beforeAll(async () => {
	open = keyring([
		await entry(newKey("secret"), { id: "other", kind: "secret", origins: [] }),
		await entry(secret, { id: "quotes", kind: "secret", origins: [] }),
		await entry(publishable, { id: "web", kind: "publishable", origins: [ORIGIN, "http://localhost:5173"] }),
		await entry(misfiled, { id: "misfiled", kind: "publishable", origins: [ORIGIN] }),
	]);
});

async function refused(presented: string, origin?: string): Promise<ProblemError> {
	const error: unknown = await open(presented, origin === undefined ? origin : [origin]).catch(
		(caught: unknown) => caught,
	);
	if (!(error instanceof ProblemError)) throw new Error("it was let in");
	const told = JSON.stringify([error.message, error.errors, error.headers, error.stack]);
	if (presented.length > 8) expect(told).not.toContain(presented.slice(-8)); // no text repeats the key
	return error;
}

describe("a key that fits", () => {
	it("is found by its hash, secret on servers and publishable on its own pages", async () => {
		expect((await open(secret, undefined)).id).toBe("quotes");
		expect((await open(publishable, [ORIGIN])).id).toBe("web");
		expect((await open(publishable, ["http://localhost:5173"])).id).toBe("web");
	});
});

describe("401", () => {
	it.each([
		"",
		"x",
		"rk_secret_short",
		`${secret} `,
		`${secret},${secret}`,
		secret.slice(0, -1),
		secret.toUpperCase(),
		`rk_secret_${"é".repeat(43)}`,
		"x".repeat(16_000),
	])("tells a malformed key from an unknown one: %.30j", async (presented) => {
		const error = await refused(presented);
		expect(error.kind).toBe("unauthorized");
		expect(error.message).toMatch(/^X-Api-Key is not a valid key/);
	});

	it("is what a key gets that is not known here, also one that differs in its last character", async () => {
		const close = secret.slice(0, -1) + (secret.endsWith("A") ? "Q" : "A");
		for (const presented of [
			newKey("secret"),
			newKey("publishable"),
			close,
			secret.replace("secret", "publishable"),
		]) {
			const error = await refused(presented, ORIGIN);
			expect(error.kind).toBe("unauthorized");
			expect(error.message).toMatch(/^This key is unknown/);
		}
	});

	it("is what a secret key gets that was filed as publishable: it must not work in pages", async () => {
		expect((await refused(misfiled, ORIGIN)).kind).toBe("unauthorized");
		expect((await refused(misfiled)).kind).toBe("unauthorized");
	});

	it("asks for a key in the syntax of RFC 9110, 11.6.1: scheme, then parameters, the realm a quoted string", async () => {
		const token = "[!#$%&'*+.^_`|~\\w-]+";
		const challenge = new RegExp(`^${token} realm="[^"\\\\]*"(?:, ${token}=(?:${token}|"[^"\\\\]*"))*$`);
		for (const error of [await refused("x"), await refused(newKey("secret")), keyMissing()]) {
			expect(error.kind).toBe("unauthorized");
			expect(error.headers["WWW-Authenticate"]).toMatch(challenge);
			expect(error.headers["WWW-Authenticate"]).toMatch(/^ApiKey realm="raykettle"/);
		}
	});
});

describe("403", () => {
	it.each([
		"https://evil-cedar-row.example",
		"https://www.cedar-row.example.evil.example",
		"https://evil.example/https://www.cedar-row.example",
		"https://cedar-row.example",
		"https://a.www.cedar-row.example",
		"http://www.cedar-row.example",
		"https://www.cedar-row.example:8443",
		"https://www.cedar-row.example:443",
		"https://www.cedar-row.example/",
		"https://WWW.cedar-row.example",
		"https://www.cedar-row.example, https://evil.example",
		`${ORIGIN} `,
		"http://localhost",
		"http://localhost:51730",
		"null",
		"",
		"*",
		"constructor",
	])("is what a publishable key gets from a page of %j", async (origin) => {
		const error = await refused(publishable, origin);
		expect(error.kind).toBe("forbidden");
		expect(error.message).toMatch(/^This publishable key works only on pages of its own origins/);
	});

	it("tells a page without an origin of its own, and a server, what is amiss", async () => {
		expect((await refused(publishable, "null")).message).toContain("sandboxed frames");
		expect((await refused(publishable)).message).toContain("use a secret key on a server");
	});

	it.each([ORIGIN, "null", ""])(
		"tells whoever put a secret key into a page to revoke it (origin %j)",
		async (origin) => {
			const error = await refused(secret, origin);
			expect(error.kind).toBe("forbidden");
			expect(error.message).toMatch(/anyone who opens that page can read it\. Revoke it/);
		},
	);

	it("repeats nothing of the origin either", async () => {
		expect((await refused(publishable, `https://${publishable}`)).message).not.toContain(publishable);
	});
});

describe("the look-up", () => {
	it("finds each of many keys, and none that is not among them", async () => {
		const made = Array.from({ length: 500 }, () => newKey("secret"));
		const entries = made.map((key, i) => entry(key, { id: `key-${i}`, kind: "secret", origins: [] }));
		const find = keyring(await Promise.all(entries));
		const found = await Promise.all(made.map((key) => find(key, undefined)));
		expect(found.map(({ id }) => id)).toEqual(made.map((_, i) => `key-${i}`));
		await expect(find(newKey("secret"), undefined)).rejects.toMatchObject({ kind: "unauthorized" });
	});
});
