/** Makes an API key: prints it once, and beside it the entry for the keys file, which holds its hash alone.
 *  Ends with 0, or with 2 where the call makes no sense. */
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

type Options = Readonly<Record<"kind" | "id" | "requests" | "origin", readonly string[]>>;

/** The values of each option, from `--id x` or `--id=x`. Throws a sentence on what is no option, lacks its value or comes twice. */
function optionsIn(given: readonly string[]): Options {
	const options = { kind: [], id: [], requests: [], origin: [] } as Record<keyof Options, string[]>;
	const isOption = (name: string): name is keyof Options => Object.hasOwn(options, name);
	const words = given.flatMap((word) => /^(--\w+)=(.*)$/s.exec(word)?.slice(1) ?? [word]);
	for (let i = 0; i < words.length; i += 2) {
		const [word, value] = [words[i]!, words[i + 1]];
		const name = word.slice(2);
		if (!word.startsWith("--") || !isOption(name)) throw new Error(`${word} is no option`);
		if (value === undefined || value.startsWith("--")) throw new Error(`${word} needs a value`);
		if (name !== "origin" && options[name].length > 0) throw new Error(`${word} is there twice`);
		options[name].push(value);
	}
	return options;
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
