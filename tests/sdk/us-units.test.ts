import { expect, it } from "vitest";
import { inUs, type UsUnit, usUnits } from "../../sdk/index.ts";

// NIST SP 811 (2008), appendix B.8, to the digits printed there; temperatures by its appendix B.8 footnotes.
const PUBLISHED = [
	["C", 100, 212],
	["K", 5, 9],
	["M", 0.3048, 1],
	["Mm", 25.4, 1],
	["M2", 0.09290304, 1],
	["L", 3.785412, 1],
	["LPerMin", 3.785412, 1],
	["MPerS", 0.44704, 1],
	["Kg", 0.45359237, 1],
	["Kpa", 6.894757, 1],
	["Kwh", 0.2930711, 1],
	["W", 0.2930711, 1],
	["WPerM2", 3.154591, 1],
	["WPerK", 0.5275279, 1],
] as const;

it.each(PUBLISHED)("%s: %f is %f in US customary units", (suffix, si, us) => {
	expect(inUs(suffix, si).value / us).toBeCloseTo(1, 6);
});

it("every unit is checked, and comes back as it went", () => {
	expect(PUBLISHED.map(([suffix]) => suffix)).toEqual(Object.keys(usUnits));
	for (const { from, to } of Object.values<UsUnit>(usUnits)) expect(to(from(37.5))).toBeCloseTo(37.5, 10);
});
