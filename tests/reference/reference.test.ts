import { readdirSync } from "node:fs";
import { describe, expect, it } from "vitest";
import type { ReferenceSet } from "./reference.ts";

const files = readdirSync(import.meta.dirname).filter((name) => name.endsWith(".reference.ts"));
const sets = (
	await Promise.all(
		files.map(async (name) => ((await import(`./${name}`)) as { sets: readonly ReferenceSet[] }).sets),
	)
).flat();

describe.each(sets.map((set) => [set.quantity, set] as const))("%s", (_quantity, set) => {
	it.each(set.rows.map((row) => [row.name, row] as const))("%s", (_name, row) => {
		const allowed = Math.max(
			row.tolerance.absolute ?? 0,
			(row.tolerance.relative ?? 0) * Math.abs(row.published),
		);
		expect(allowed).toBeGreaterThan(0);
		expect(row.source.length).toBeGreaterThan(10);
		expect(Math.abs(row.computed() - row.published)).toBeLessThanOrEqual(allowed);
	});
});
