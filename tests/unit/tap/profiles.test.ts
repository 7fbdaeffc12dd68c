import { describe, expect, it } from "vitest";
import { profileDraws, TAPPING_PROFILE_IDS, tappingProfile } from "../../../src/tap/profiles.ts";

describe.each(TAPPING_PROFILE_IDS)("tapping profile %s", (id) => {
	const rows = tappingProfile(id);

	it("runs through one day in order", () => {
		for (let i = 0; i < rows.length; i++) {
			expect(rows[i]!.minuteOfDay).toBeGreaterThanOrEqual(420);
			expect(rows[i]!.minuteOfDay).toBeLessThan(1440);
			if (i > 0) expect(rows[i]!.minuteOfDay).toBeGreaterThan(rows[i - 1]!.minuteOfDay);
		}
	});

	it("has plausible heat, flow and temperatures", () => {
		for (const row of rows) {
			expect(row.energy).toBeGreaterThan(0);
			expect(row.flow * 60_000).toBeGreaterThanOrEqual(2);
			expect(row.flow * 60_000).toBeLessThanOrEqual(96);
			expect([283.15, 298.15, 308.15, 313.15, 318.15]).toContain(row.usefulTemperature);
			expect([undefined, 313.15, 328.15]).toContain(row.peakTemperature);
			expect(row.usefulTemperature === 283.15).toBe(row.peakTemperature !== undefined);
		}
	});
});

describe("tappingProfile", () => {
	it("knows ten profiles and refuses others", () => {
		expect(TAPPING_PROFILE_IDS).toEqual(["3XS", "XXS", "XS", "S", "M", "L", "XL", "XXL", "3XL", "4XL"]);
		expect(() => tappingProfile("XM")).toThrow("not in the table");
		expect(() => tappingProfile("toString")).toThrow("not in the table");
	});
});

describe("profileDraws", () => {
	it("scales heat and flow, and keeps temperatures and clock", () => {
		const draws = profileDraws(tappingProfile("M"), 86_400, 3, 283.15);
		expect(draws[1]).toEqual({
			time: 86_400 + (7 * 60 + 5) * 60,
			demand: { kind: "energy", energy: 1.4 * 3.6e6 * 3 },
			temperature: 313.15,
			flow: 3 * tappingProfile("M")[1]!.flow,
		});
	});

	it("mixes to the peak, to the useful temperature, or to the household's own if that is warmer", () => {
		const at = (mixed: number) => profileDraws(tappingProfile("XS"), 0, 1, mixed)[0]!.temperature;
		expect(at(300)).toBe(308.15);
		expect(at(315)).toBe(315);
		const noon = profileDraws(tappingProfile("M"), 0, 1, 315).find((draw) => draw.temperature > 320);
		expect(noon?.temperature).toBe(328.15);
	});
});
