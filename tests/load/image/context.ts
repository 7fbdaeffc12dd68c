import { cpSync, readFileSync, statSync } from "node:fs";
import { basename, join } from "node:path";

/** Copies what a COPY line names out of the folder that an image is built from, as far as .dockerignore lets it through. */
export function contextOf(folder: string) {
	const rules = readFileSync(join(folder, ".dockerignore"), "utf8")
		.split("\n")
		.filter((line) => line !== "" && !line.startsWith("#"));
	const allowed = new Set(rules.filter((rule) => rule.startsWith("!")).map((rule) => rule.slice(1)));
	const nowhere = new Set(rules.filter((rule) => rule.startsWith("**/")).map((rule) => rule.slice(3)));
	if (rules[0] !== "*" || 1 + allowed.size + nowhere.size !== rules.length)
		throw new Error(
			".dockerignore is read here as: *, then !name of what is let through, then **/name of what is not",
		);
	return (source: string, target: string): void => {
		if (!allowed.has(source.split("/")[0]!)) throw new Error(`.dockerignore keeps ${source} from the image`);
		copied(join(folder, source), target, (name) => !nowhere.has(name));
	};
}

/** Copies a folder's content into a folder, or a file into one that ends with a slash, as COPY does. */
export function copied(source: string, target: string, lets: (name: string) => boolean): void {
	const into = statSync(source).isFile() && target.endsWith("/") ? join(target, basename(source)) : target;
	cpSync(source, into, {
		recursive: true,
		verbatimSymlinks: true,
		filter: (from) => lets(basename(from)),
	});
}
