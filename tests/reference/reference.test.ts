import { describe, expect, it } from "vitest";
import { referenceSets } from "./load.ts";
import { allowedError } from "./reference.ts";

const sets = await referenceSets();

describe.each(sets.map((set) => [set.quantity, set] as const))("%s", (_quantity, set) => {
	it.each(set.rows.map((row) => [row.name, row] as const))("%s", (_name, row) => {
		expect(allowedError(row)).toBeGreaterThan(0);
		expect(row.source.length).toBeGreaterThan(10);
		expect(row.tolerance.reason.length).toBeGreaterThan(3);
		expect(Math.abs(row.computed() - row.published)).toBeLessThanOrEqual(allowedError(row));
	});
});

it("gives each quantity one line of the accuracy table", () => {
	const quantities = sets.map((set) => set.quantity);
	expect(new Set(quantities).size).toBe(quantities.length);
});
