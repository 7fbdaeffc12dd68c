/** Creates an API key: prints it once, together with the entry for the keys file, which holds only its hash.
 *  Exits with 0, or with 2 for invalid options. */
import { parseArgs } from "node:util";
import { digestOf, hexOf, type Key, keysFrom, newKey } from "../access/keys.ts";

const HELP = `Usage: tsx api/scripts/new-key.ts --kind secret|publishable --id <name> [--origin <origin>]… [--requests <count>]

Prints a new API key once, and its entry for "keys" in the file named by KEYS_FILE.

  --kind      secret: for a server that keeps it private; publishable: for web pages, where anyone can read it
  --id        name of the key in logs: lower-case letters, digits and hyphens, such as cedar-row-web
  --origin    origin of pages where a publishable key works, as browsers send it: scheme://host[:port]; can be repeated
  --requests  number of requests allowed within the rate window, instead of the deployment's number
  --help      prints this text

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

/** The values of each option. Throws for an unknown option, a missing value or a repeated option. */
function optionsIn(words: readonly string[]): Options {
	const { values } = parseArgs({ args: [...words], options: OPTIONS });
	const { kind = [], id = [], requests = [], origin = [] } = values;
	for (const [name, { length }] of Object.entries({ kind, id, requests }))
		if (length > 1) throw new Error(`--${name} is repeated; send it once`);
	return { kind, id, requests, origin };
}

/** A new key and its entry. Throws an error that names every fault of the options. */
async function newEntry({ kind: [kind], id: [id], requests: [requests], origin }: Options) {
	const key = newKey(kind as Key["kind"]); // any other value is refused by the check of the entry
	const entry = {
		...{ id, kind, sha256: hexOf(await digestOf(key)) },
		...(origin.length > 0 && { origins: origin }),
		...(requests !== undefined && { requests: /^\d+$/.test(requests) ? Number(requests) : requests }),
	};
	keysFrom(JSON.stringify({ keys: [entry] }));
	return { key, entry };
}

/** The message of a fault, in terms of options instead of the file's fields. */
const optionMessage = (sentence: string) =>
	sentence
		.replace("The keys file is invalid: ", "")
		.replaceAll(/keys\[0\]\.origins(?:\[\d+\])?/g, "--origin")
		.replaceAll("keys[0].", "--");

const words = process.argv.slice(2);
if (words.includes("--help")) console.log(HELP.trimEnd());
else
	try {
		const { key, entry } = await newEntry(optionsIn(words));
		console.log(`The key, shown only once and stored nowhere:\n\n${key}\n`);
		console.log(
			`Its entry for the keys file, { "keys": [ … ] }:\n\n${JSON.stringify(entry, undefined, "\t")}`,
		);
	} catch (error) {
		console.error(`${optionMessage((error as Error).message)}\n--help describes the options`);
		process.exitCode = 2;
	}
