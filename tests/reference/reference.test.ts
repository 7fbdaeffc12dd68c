import { describe, expect, it } from "vitest";
import { referenceSets } from "./load.ts";
import { allowedError, KINDS } from "./reference.ts";

const sets = await referenceSets();
const MOST_USED = 0.85; // of a tolerance that is not a matter of digits: more would look like the error rounded up

describe.each(sets.map((set) => [set.quantity, set] as const))("%s", (_quantity, set) => {
	it.each(set.rows.map((row) => [row.name, row] as const))("%s", (_name, row) => {
		expect(KINDS).toContain(row.kind);
		expect(allowedError(row)).toBeGreaterThan(0);
		expect(row.source.length).toBeGreaterThan(10);
		expect(row.tolerance.reason.length).toBeGreaterThan(3);
		expect(Math.abs(row.computed() - row.published)).toBeLessThanOrEqual(allowedError(row));
	});
});

it("gives each quantity one set", () => {
	const quantities = sets.map((set) => set.quantity);
	expect(new Set(quantities).size).toBe(quantities.length);
});

it("has one unit a set", () => {
	expect(sets.filter(({ unit }) => / or |,/.test(unit)).map(({ quantity }) => quantity)).toEqual([]);
});

it("has no tolerance that looks like its error rounded up", () => {
	const tight = sets
		.filter(({ role }) => role !== "fit")
		.flatMap(({ quantity, rows }) =>
			rows
				.filter(({ tolerance }) => tolerance.basis !== "digits")
				.filter((row) => Math.abs(row.computed() - row.published) > MOST_USED * allowedError(row))
				.map(({ name }) => `${quantity}: ${name}`),
		);
	expect(tight).toEqual([]);
});

it("says of a remembered value in its source that it is one only where its kind says so", () => {
	const rows = sets.flatMap((set) => set.rows);
	expect(rows.filter(({ source, kind }) => /from memory/.test(source) && kind !== "memory")).toEqual([]);
});
