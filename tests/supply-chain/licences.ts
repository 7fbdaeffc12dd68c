/** What a deployment takes from others: every package with its version and licence, and whether that may be taken. `npm run licences`
 *  prints it, and fails on a licence that is not allowed, a package that nothing guards against being swapped, or an install
 *  script that nobody decided about. */
import { type Bound, judge, table } from "../load/table.ts";
import { bill } from "./bill.ts";
import { foreign, json, nameOf, type Taken, taken, used } from "./taken.ts";

/** Licences that ask for no more than their text to be passed on. A new one is a decision, so it is written here first. */
const ALLOWED = ["MIT", "ISC", "BSD-2-Clause", "Apache-2.0", "CC0-1.0"];

const { allowScripts } = json("package.json") as { readonly allowScripts: Readonly<Record<string, boolean>> };

table(
	["package", "version", "licence", ""],
	taken.map(({ name, version, licence, installed, builtIn }) => {
		return [name, version, licence, builtIn ? "built in" : installed ? "" : "other platforms"];
	}),
);

const whole = ({ name, version }: Taken) => `${name}@${version}`;
const pathsOf = (entries: typeof foreign) => entries.map(([path]) => path);
const licences = [...new Set(taken.map(({ licence }) => licence))].sort();
const billed = bill().components.filter(({ hashes }) => hashes?.length);
const installed = taken.filter((one) => one.installed);

/** Holds where nothing is at fault; else tells what is. */
const none = (name: string, faults: readonly string[], otherwise: string): Bound => ({
	name,
	holds: faults.length === 0,
	found: faults.length === 0 ? otherwise : faults.join(", "),
});

judge([
	none(
		"every licence is an allowed one, and each allowed one is in use",
		[
			...taken
				.filter(({ licence }) => !ALLOWED.includes(licence))
				.map((one) => `${whole(one)} ${one.licence}`),
			...ALLOWED.filter((licence) => !licences.includes(licence)).map((licence) => `nobody has ${licence}`),
		],
		`${taken.length} packages, ${licences.join(", ")}`,
	),
	none(
		"what is installed is what the lockfile says",
		taken.filter(({ agrees }) => !agrees).map(whole),
		`${installed.length} packages on this platform`,
	),
	none(
		"the lockfile states what each package's archive hashes to",
		pathsOf(foreign.filter(([, { integrity }]) => !integrity?.startsWith("sha512-"))),
		`${foreign.length} packages, those for development included`,
	),
	none(
		"the lockfile sends nobody to a host of its own",
		pathsOf(foreign.filter(([, { resolved }]) => resolved !== undefined)),
		"all come from the registry that whoever installs has chosen",
	),
	none(
		"nothing that a deployment takes wants to run a script when it is installed",
		pathsOf(used.filter(([, { hasInstallScript }]) => hasInstallScript)),
		"npm ci --omit=dev --ignore-scripts is enough",
	),
	none(
		"each other that does may or may not by package.json",
		pathsOf(
			foreign.filter(([path, { hasInstallScript }]) => hasInstallScript && !(nameOf(path) in allowScripts)),
		),
		Object.entries(allowScripts)
			.map(([name, may]) => `${name} ${may ? "may" : "may not"}`)
			.join(", "),
	),
	none(
		"npm run sbom lists each of them with hash and licence",
		installed.map(whole).filter((one) => !billed.some((component) => component["bom-ref"] === one)),
		`${billed.length} components`,
	),
]);
