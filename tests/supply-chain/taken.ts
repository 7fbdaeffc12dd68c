import { existsSync, readFileSync } from "node:fs";

/** One package as the lockfile has it. */
export interface Locked {
	readonly version: string;
	readonly license?: string;
	readonly integrity?: string;
	readonly resolved?: string;
	readonly link?: boolean;
	readonly dev?: boolean;
	readonly optional?: boolean;
	readonly hasInstallScript?: boolean;
}

/** One package that a deployment takes. */
export interface Taken {
	readonly path: string;
	readonly name: string;
	readonly version: string;
	readonly licence: string;
	readonly installed: boolean; // else it is for other platforms
	readonly builtIn: boolean;
	readonly agrees: boolean; // what is installed is what is locked
}

/** Installed for development alone, but what is built holds parts of them. */
const BUILT_IN = ["node_modules/swagger-ui-dist"]; // the docs page

/** Packages that state their licence in LICENSE alone, as read there; a newer version is read anew. */
const READ: Readonly<Record<string, string>> = { "suncalc@2.0.2": "BSD-2-Clause" };

export const json = (path: string) => JSON.parse(readFileSync(path, "utf8"));
const { packages } = json("package-lock.json") as { readonly packages: Readonly<Record<string, Locked>> };

export const nameOf = (path: string) =>
	path.slice(path.lastIndexOf("node_modules/") + "node_modules/".length);

/** Every package of others, those for development included, by its path. */
export const foreign = Object.entries(packages).filter(
	([path, { link }]) => path.includes("node_modules/") && !link,
);

/** Those of them that a deployment takes. */
export const used = foreign.filter(([path, { dev }]) => !dev || BUILT_IN.includes(path));

/** The same with what their own package.json says; one that is for another platform as the lockfile has it. */
export const taken: readonly Taken[] = used
	.map(([path, locked]): Taken => {
		const installed = existsSync(path);
		const { version, license } = (installed ? json(`${path}/package.json`) : locked) as Locked;
		const name = nameOf(path);
		return {
			...{ path, name, version, installed, builtIn: BUILT_IN.includes(path) },
			licence: license ?? READ[`${name}@${version}`] ?? "none stated",
			agrees: version === locked.version && (installed || locked.optional === true),
		};
	})
	.sort((one, other) => (one.name < other.name ? -1 : 1));
