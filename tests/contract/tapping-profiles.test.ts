import { describe, expect, it } from "vitest";
import { parsed, raykettle, refusal } from "./service.ts";

/** Regulation (EU) 814/2013, Annex III, table 1: heat of the day and number of draws. */
const PUBLISHED = [
	["3XS", 0.345, 23],
	["XXS", 2.1, 20],
	["XS", 2.1, 3],
	["S", 2.1, 11],
	["M", 5.845, 23],
	["L", 11.655, 24],
	["XL", 19.07, 30],
	["XXL", 24.53, 30],
	["3XL", 46.76, 10],
	["4XL", 93.52, 10],
] as const;

describe("200", () => {
	it("has all ten profiles with the regulation's heat and number of draws", async () => {
		const answer = await raykettle.tappingProfiles();
		parsed("getTappingProfiles", answer);
		expect(
			answer.profiles.map(({ id, referenceEnergyKwh, draws }) => [id, referenceEnergyKwh, draws.length]),
		).toEqual(PUBLISHED);
		for (const { basis, source, confirmed, validFor } of answer.profiles) {
			expect({ basis, confirmed }).toEqual({ basis: "standard", confirmed: true });
			expect(source).toContain("814/2013");
			expect(validFor.length).toBeGreaterThan(20);
		}
	});

	it("has the regulation's rows", async () => {
		const { profiles } = await raykettle.tappingProfiles();
		const draws = Object.fromEntries(profiles.map((profile) => [profile.id, profile.draws]));
		expect(draws.L).toContainEqual({
			time: "08:05",
			energyKwh: 3.605,
			flowLPerMin: 10,
			usefulTemperatureC: 10,
			peakTemperatureC: 40,
		});
		expect(draws.M).toContainEqual({ time: "07:05", energyKwh: 1.4, flowLPerMin: 6, usefulTemperatureC: 40 });
		expect(draws.XXL).toContainEqual({
			time: "20:46",
			energyKwh: 6.24,
			flowLPerMin: 16,
			usefulTemperatureC: 10,
			peakTemperatureC: 40,
		});
		for (const rows of Object.values(draws)) {
			const times = rows.map(({ time }) => time);
			expect(times).toEqual(times.toSorted());
		}
		draws["4XL"]!.forEach((row, i) => {
			const half = draws["3XL"]![i]!;
			expect([row.time, row.energyKwh, row.flowLPerMin]).toEqual([
				half.time,
				2 * half.energyKwh,
				2 * half.flowLPerMin,
			]);
		});
	});

	// Q_ref over 4.186 kJ/kgK and the rise from 10 °C, a litre taken as a kilogram: whole litres at 40 and 60 °C
	it.each([
		["S", 60, 36],
		["M", 168, 101],
		["L", 334, 201],
		["XL", 547, 328],
		["XXL", 703, 422],
	])("comes to the litres of profile %s", async (id, at40, at60) => {
		const { profiles } = await raykettle.tappingProfiles();
		const profile = profiles.find((candidate) => candidate.id === id)!;
		expect(Math.abs(profile.litresAt40C / at40 - 1)).toBeLessThan(0.015); // a litre of 40 °C is 0.992 kg
		expect(Math.abs(profile.litresAt60C / at60 - 1)).toBeLessThan(0.025); // of 60 °C 0.983 kg
	});
});

describe("400", () => {
	it("takes no parameters", async () => {
		expect((await refusal("/v1/tapping-profiles?id=M")).errors?.[0]).toMatchObject({
			parameter: "id",
			code: "unknown",
		});
	});
});

describe("404", () => {
	it("has no page of one", async () => {
		expect((await refusal("/v1/tapping-profiles/M")).status).toBe(404);
	});
});
