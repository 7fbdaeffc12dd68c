/** Makes an API key: prints it once, and beside it the entry for the keys file, which holds its hash alone.
 *  Ends with 0, or with 2 where the call makes no sense. */
import { parseArgs } from "node:util";
import { digestOf, hexOf, type Key, keysFrom, newKey } from "../access/keys.ts";

const HELP = `Usage: tsx api/scripts/new-key.ts --kind secret|publishable --id <name> [--origin <origin>]… [--requests <count>]

Prints a new API key, once, and the entry to put among the "keys" of the file that KEYS_FILE names.

  --kind      secret: for a server that keeps it to itself; publishable: for web pages, where anyone can read it
  --id        what logs and counts call the key: small letters, digits and hyphens, such as cedar-row-web
  --origin    of pages that a publishable key works on, as browsers send it: scheme://host[:port]; again for another
  --requests  how many requests the key may send within the rate window, instead of the deployment's number
  --help      this text

Example: tsx api/scripts/new-key.ts --kind publishable --id cedar-row-web --origin https://www.cedar-row.example
`;

const OPTIONS = {
	kind: { type: "string", multiple: true },
	id: { type: "string", multiple: true },
	requests: { type: "string", multiple: true },
	origin: { type: "string", multiple: true },
	help: { type: "boolean" },
} as const;

type Options = Readonly<Record<"kind" | "id" | "requests" | "origin", readonly string[]>>;

/** The values of each option. Throws a sentence on what is no option, lacks its value or comes twice. */
function optionsIn(words: readonly string[]): Options {
	const { values } = parseArgs({ args: [...words], options: OPTIONS });
	const { kind = [], id = [], requests = [], origin = [] } = values;
	for (const [name, { length }] of Object.entries({ kind, id, requests }))
		if (length > 1) throw new Error(`--${name} is there twice`);
	return { kind, id, requests, origin };
}

/** A new key and its entry. Throws a sentence that names every fault of the options. */
async function made({ kind: [kind], id: [id], requests: [requests], origin }: Options) {
	const key = newKey(kind as Key["kind"]); // what else it may be, the check of the entry finds
	const entry = {
		...{ id, kind, sha256: hexOf(await digestOf(key)) },
		...(origin.length > 0 && { origins: origin }),
		...(requests !== undefined && { requests: /^\d+$/.test(requests) ? Number(requests) : requests }),
	};
	keysFrom(JSON.stringify({ keys: [entry] }));
	return { key, entry };
}

/** The sentence of a fault, in terms of options instead of the file's fields. */
const inOptions = (sentence: string) =>
	sentence
		.replace("The keys file is at fault: ", "")
		.replaceAll(/keys\[0\]\.origins(?:\[\d+\])?/g, "--origin")
		.replaceAll("keys[0].", "--");

const given = process.argv.slice(2);
if (given.includes("--help")) console.log(HELP.trimEnd());
else
	try {
		const { key, entry } = await made(optionsIn(given));
		console.log(`The key; it is shown this once and kept nowhere:\n\n${key}\n`);
		console.log(
			`Its entry for the keys file, { "keys": [ … ] }:\n\n${JSON.stringify(entry, undefined, "\t")}`,
		);
	} catch (error) {
		console.error(`${inOptions((error as Error).message)}\n--help tells how a key is made`);
		process.exitCode = 2;
	}
