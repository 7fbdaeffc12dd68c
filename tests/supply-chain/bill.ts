import { spawnSync } from "node:child_process";
import { taken } from "./taken.ts";

interface Component {
	readonly "bom-ref": string;
	readonly licenses?: readonly unknown[];
	readonly hashes?: readonly unknown[];
	readonly properties?: readonly { readonly name: string }[];
}

interface Dependency {
	readonly ref: string;
	readonly dependsOn?: readonly string[];
}

interface Bill {
	readonly components: readonly Component[];
	readonly dependencies: readonly Dependency[];
	readonly metadata: { readonly component: Component };
}

/** A bill of materials of what a deployment takes on this platform (CycloneDX): npm's bill of everything, less what only
 *  development needs. npm can leave that out itself (`--omit dev`), but then leaves out as well what production needs and some
 *  package for development names as its peer (npm 11.19: yaml and @opentelemetry/api). */
export function bill(): Bill {
	const { status, stdout, stderr } = spawnSync("npm", ["sbom", "--sbom-format", "cyclonedx"], {
		encoding: "utf8",
		maxBuffer: 2 ** 26,
	});
	if (status !== 0) throw new Error(stderr);
	const whole = JSON.parse(stdout) as Bill;
	const licences = new Map(taken.map(({ name, version, licence }) => [`${name}@${version}`, licence]));
	const kept = new Set([whole.metadata.component["bom-ref"], ...licences.keys()]);
	return {
		...whole,
		components: whole.components
			.filter((component) => kept.has(component["bom-ref"]))
			.map((component) => ({
				...component,
				licenses: component.licenses ?? [{ license: { id: licences.get(component["bom-ref"]) } }],
				properties: (component.properties ?? []).filter(({ name }) => !name.endsWith(":development")),
			})),
		dependencies: whole.dependencies
			.filter(({ ref }) => kept.has(ref))
			.map(({ ref, dependsOn = [] }) => ({ ref, dependsOn: dependsOn.filter((on) => kept.has(on)) })),
	};
}
