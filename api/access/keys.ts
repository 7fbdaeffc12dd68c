import { z } from "@hono/zod-openapi";
import { faultsIn } from "../validation/faults.ts";

/** Who may ask: a server that keeps its key to itself, or the pages of certain origins, whose key every visitor can read. */
export interface Key {
	readonly id: string; // what it is called in logs and counts, as the key itself is never written anywhere
	readonly kind: "secret" | "publishable";
	readonly sha256: string; // of the whole key, in hex
	readonly origins: readonly string[]; // of the pages that a publishable key works on; none for a secret key
	readonly requests?: number; // per rate window, instead of the deployment's
}

/** What a key looks like. Secret scanners find a leaked one by its beginning; behind it stand 256 random bits in base64url. */
const KEY = /^rk_(?:secret|publishable)_[\w-]{43}$/;
const KEY_BYTES = 32;
const ANY_KEY = /rk_(?:secret|publishable)_[\w-]+/g; // wherever it stands, whole or cut

export const isKey = (text: string) => KEY.test(text);

/** A new key of a kind. It exists in the caller's hands alone: the keys file holds its hash. */
export function newKey(kind: Key["kind"]): string {
	const bytes = crypto.getRandomValues(new Uint8Array(KEY_BYTES));
	const text = btoa(String.fromCharCode(...bytes));
	return `rk_${kind}_${text.replaceAll("=", "").replaceAll("+", "-").replaceAll("/", "_")}`;
}

/** The SHA-256 of a key. A slow, salted hash would add nothing: such hashes make up for passwords that people choose and
 *  attackers guess, and nobody guesses one of 2²⁵⁶ keys, however fast each guess is checked. */
export async function digestOf(key: string): Promise<Uint8Array> {
	return new Uint8Array(await crypto.subtle.digest("SHA-256", new TextEncoder().encode(key)));
}

export const hexOf = (bytes: Uint8Array) =>
	Array.from(bytes, (byte) => byte.toString(16).padStart(2, "0")).join("");

const ORIGIN = /^https?:\/\/(?:[\w.-]+|\[[\da-f:.]+\])(?::\d+)?$/;

/** Whether a text is an origin exactly as a browser sends it: anything else would never match. */
const isOrigin = (text: string) => ORIGIN.test(text) && URL.canParse(text) && new URL(text).origin === text;

const Id = z
	.string()
	.regex(
		/^[a-z\d][a-z\d-]{0,63}$/,
		"must be at most 64 small letters, digits and hyphens, a hyphen not first",
	);
const Sha256 = z
	.string()
	.regex(/^[\da-f]{64}$/, "must be the key's SHA-256 as 64 hexadecimal digits in lower case");
const Origin = z
	.string()
	.refine(
		isOrigin,
		"must be scheme://host[:port] as browsers send it, such as https://www.cedar-row.example: http or https, in lower case, no usual port, nothing behind it",
	);
const Entry = z.strictObject({
	id: Id,
	kind: z.enum(["secret", "publishable"]),
	sha256: Sha256,
	origins: z.array(Origin).default([]),
	requests: z.int().min(1).max(10_000_000).exactOptional(),
});
const KeysFile = z.strictObject({ keys: z.array(Entry) });

/** The keys in the JSON text of a keys file, `{ "keys": [ … ] }`. Throws one sentence that names every fault. */
export function keysFrom(text: string): readonly Key[] {
	const given = jsonIn(text);
	const read = KeysFile.safeParse(given);
	const faults = [
		...(read.success ? [] : faultsIn(read.error, KeysFile, given).map(({ detail }) => detail)),
		...faultsBetween(given),
	];
	if (read.success && faults.length === 0) return read.data.keys;
	const sentence = faults.join("; ").replaceAll("the body", "the whole");
	throw new Error(`The keys file is at fault: ${sentence.replace(ANY_KEY, "(a key)")}`);
}

function jsonIn(text: string): unknown {
	try {
		return JSON.parse(text);
	} catch {
		throw new Error("The keys file is at fault: it is not JSON"); // the parser's own words would quote from the file
	}
}

/** What no field shows by itself. The entries are taken as they came, so that a fault elsewhere hides none of these. */
function faultsBetween(given: unknown): readonly string[] {
	const { keys } = (given ?? {}) as { readonly keys?: unknown };
	if (!Array.isArray(keys)) return [];
	const entries: readonly Readonly<Record<string, unknown>>[] = keys.map((entry) => entry ?? {});
	return entries.flatMap((entry, i) => {
		const faults: string[] = [];
		for (const name of ["id", "sha256"]) {
			const first = entries.findIndex((other) => other[name] === entry[name]);
			if (typeof entry[name] === "string" && first < i)
				faults.push(`keys[${i}].${name} repeats that of keys[${first}]`);
		}
		const none = entry.origins === undefined || (Array.isArray(entry.origins) && entry.origins.length === 0);
		if (entry.kind === "secret" && !none)
			faults.push(`keys[${i}].origins must be left out: a secret key is for servers, never for pages`);
		if (entry.kind === "publishable" && none)
			faults.push(`keys[${i}].origins must name the origins of the pages that a publishable key works on`);
		return faults;
	});
}
