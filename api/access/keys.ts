import { z } from "@hono/zod-openapi";
import { faultsIn } from "../validation/faults.ts";

/** An API key: secret for a server, or publishable for pages of certain origins, where every visitor can read it. */
export interface Key {
	readonly id: string; // name of the key; the key itself is stored nowhere
	readonly kind: "secret" | "publishable";
	readonly sha256: string; // of the complete key, in hex
	readonly origins: readonly string[]; // origins of the pages where a publishable key works; none for a secret key
	readonly requests?: number; // per rate window, instead of the deployment's number
}

/** Format of a key: a prefix by which secret scanners find a leaked one, then 256 random bits in base64url. */
const KEY = /^rk_(?:secret|publishable)_[\w-]{43}$/;
const KEY_BYTES = 32;
const ANY_KEY = /rk_(?:secret|publishable)_[\w-]+/g; // anywhere in a text, complete or truncated

export const isKey = (text: string) => KEY.test(text);

/** A new key. Only its hash is stored, in the keys file. */
export function newKey(kind: Key["kind"]): string {
	const bytes = crypto.getRandomValues(new Uint8Array(KEY_BYTES));
	const text = btoa(String.fromCharCode(...bytes));
	return `rk_${kind}_${text.replaceAll("=", "").replaceAll("+", "-").replaceAll("/", "_")}`;
}

/** The SHA-256 of a key. A slow, salted hash would add nothing: it protects guessable passwords, and a key of 256 random bits
 *  cannot be guessed. */
export async function digestOf(key: string): Promise<Uint8Array> {
	return new Uint8Array(await crypto.subtle.digest("SHA-256", new TextEncoder().encode(key)));
}

export const hexOf = (bytes: Uint8Array) =>
	Array.from(bytes, (byte) => byte.toString(16).padStart(2, "0")).join("");

const ORIGIN = /^https?:\/\/(?:[\w.-]+|\[[\da-f:.]+\])(?::\d+)?$/;

/** Whether a text is an origin exactly as browsers send it; any other would never match. */
const isOrigin = (text: string) => ORIGIN.test(text) && URL.canParse(text) && new URL(text).origin === text;

const Id = z
	.string()
	.regex(
		/^[a-z\d][a-z\d-]{0,63}$/,
		"must be at most 64 lower-case letters, digits and hyphens, not starting with a hyphen",
	);
const Sha256 = z
	.string()
	.regex(/^[\da-f]{64}$/, "must be the SHA-256 of the key as 64 lower-case hexadecimal digits");
const Origin = z
	.string()
	.refine(
		isOrigin,
		"must be scheme://host[:port] as browsers send it, such as https://www.cedar-row.example: http or https, in lower case, without a default port or a path",
	);
const Entry = z.strictObject({
	id: Id,
	kind: z.enum(["secret", "publishable"]),
	sha256: Sha256,
	origins: z.array(Origin).default([]),
	requests: z.int().min(1).max(10_000_000).exactOptional(),
});
const KeysFile = z.strictObject({ keys: z.array(Entry) });

/** The keys in the JSON text of a keys file, `{ "keys": [ … ] }`. Throws one error that names every fault. */
export function keysFrom(text: string): readonly Key[] {
	const content = jsonIn(text);
	const read = KeysFile.safeParse(content);
	const faults = [
		...(read.success ? [] : faultsIn(read.error, KeysFile, content).map(({ detail }) => detail)),
		...faultsBetween(content),
	];
	if (read.success && faults.length === 0) return read.data.keys;
	const sentence = faults.join("; ").replaceAll("the body", "the file");
	throw new Error(`The keys file is invalid: ${sentence.replace(ANY_KEY, "(a key)")}`);
}

function jsonIn(text: string): unknown {
	try {
		return JSON.parse(text);
	} catch {
		throw new Error("The keys file is invalid: it is not JSON"); // the parser's message would quote the file
	}
}

/** Faults between fields. They are read from the raw entries, so that no other fault hides them. */
function faultsBetween(content: unknown): readonly string[] {
	const { keys } = (content ?? {}) as { readonly keys?: unknown };
	if (!Array.isArray(keys)) return [];
	const entries: readonly Readonly<Record<string, unknown>>[] = keys.map((entry) => entry ?? {});
	return entries.flatMap((entry, i) => {
		const faults: string[] = [];
		for (const name of ["id", "sha256"]) {
			const first = entries.findIndex((other) => other[name] === entry[name]);
			if (typeof entry[name] === "string" && first < i)
				faults.push(`keys[${i}].${name} is the same as in keys[${first}]; make it unique`);
		}
		const none = entry.origins === undefined || (Array.isArray(entry.origins) && entry.origins.length === 0);
		if (entry.kind === "secret" && !none)
			faults.push(`keys[${i}].origins must be omitted: a secret key is for servers, never for pages`);
		if (entry.kind === "publishable" && none)
			faults.push(`keys[${i}].origins must list the origins of the pages where the publishable key works`);
		return faults;
	});
}
