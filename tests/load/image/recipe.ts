/** One line of a Containerfile. */
interface Line {
	readonly word: string;
	readonly rest: string;
}

/** One stage: what is done in it, in order. */
export interface Stage {
	readonly name: string;
	readonly lines: readonly Line[];
}

/** A Containerfile's stages, the image last. */
export function recipe(text: string): readonly Stage[] {
	const lines = text
		.replaceAll(/^\s*#.*\n/gm, "")
		.replaceAll("\\\n", " ")
		.split("\n")
		.flatMap((line) => {
			const [, word, rest] = /^(\w+)\s+(.*)$/.exec(line.trim()) ?? [];
			return word === undefined ? [] : [{ word, rest: rest! }];
		});
	const stages: { name: string; lines: Line[] }[] = [];
	for (const line of lines) {
		if (line.word === "FROM") stages.push({ name: / AS (\w+)$/.exec(line.rest)?.[1] ?? "image", lines: [] });
		else stages.at(-1)?.lines.push(line);
	}
	return stages;
}

/** What an image says of its start. */
export interface ImageConfig {
	readonly command: readonly [program: string, ...args: string[]];
	readonly health: readonly [program: string, ...args: string[]];
	readonly environment: Readonly<Record<string, string>>;
	readonly user: number;
	readonly stop: NodeJS.Signals;
}

export function configOf({ lines }: Stage): ImageConfig {
	const said = (word: string): string => {
		const line = lines.find((candidate) => candidate.word === word);
		if (!line) throw new Error(`the Containerfile lacks ${word}`);
		return line.rest;
	};
	const list = (text: string) => JSON.parse(text.slice(text.indexOf("["))) as [string, ...string[]];
	return {
		command: list(said("CMD")),
		health: list(said("HEALTHCHECK")),
		environment: Object.fromEntries(
			said("ENV")
				.split(/\s+/)
				.map((pair) => pair.split("=", 2)),
		),
		user: Number.parseInt(said("USER"), 10),
		stop: said("STOPSIGNAL") as NodeJS.Signals,
	};
}
