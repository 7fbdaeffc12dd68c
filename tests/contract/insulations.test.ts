import { describe, expect, it } from "vitest";
import { parsed, raykettle, refusal } from "./service.ts";

describe("200", () => {
	it("lists every insulation with range, limit, moisture, hazard and source", async () => {
		const answer = await raykettle.insulations();
		parsed("getInsulations", answer);
		expect(answer.insulations.length).toBeGreaterThan(8);
		for (const row of answer.insulations) {
			const { meanTemperatureC, conductivityWPerMK } = row.conductivity;
			expect(meanTemperatureC).toHaveLength(conductivityWPerMK.length);
			expect(meanTemperatureC.length).toBeGreaterThan(1);
			for (const t of meanTemperatureC) {
				expect(t).toBeGreaterThanOrEqual(row.validFromC);
				expect(t).toBeLessThanOrEqual(row.validToC);
			}
			conductivityWPerMK.forEach((k, i) => {
				expect(k).toBeGreaterThan(0.015);
				expect(k).toBeLessThan(0.25);
				if (i > 0) expect(k).toBeGreaterThan(conductivityWPerMK[i - 1]!);
			});
			expect(row.wetOverDry).toBeCloseTo(Math.exp(0.05 * row.moistureFactor), 6); // ISO 10456:2007, eq. 4
			expect(row.serviceLimitC).toBeGreaterThanOrEqual(row.validToC);
			expect(row.source?.length).toBeGreaterThan(20);
			expect(row.confirmed).toBe(false); // no band of products was compared with its standard yet
		}
	});

	// EN 14303 and EN 14308, bands that products declare (from memory): the middle within half the band's width
	it.each([
		["mineralWool", 50, 0.0385],
		["mineralWool", 100, 0.0445],
		["mineralWool", 200, 0.0635],
		["polyurethane", 50, 0.026],
	])("has %s at %i °C", async (id, celsius, published) => {
		const { insulations } = await raykettle.insulations();
		const { conductivity } = insulations.find((row) => row.id === id)!;
		const row = conductivity.meanTemperatureC.indexOf(celsius);
		expect(Math.abs(conductivity.conductivityWPerMK[row]! / published - 1)).toBeLessThan(0.05);
	});

	it("names what its fibres do to whoever cuts it", async () => {
		const { insulations } = await raykettle.insulations();
		const hazards = Object.fromEntries(insulations.map(({ id, hazard }) => [id, hazard]));
		expect(hazards).toMatchObject({
			mineralWool: "fibreDust",
			glassWool: "fibreDust",
			ceramicFibre: "carcinogenicFibre", // category 1B, Regulation (EC) 1272/2008, Annex VI
			polyurethane: "none",
		});
	});

	it("lists what a pipe takes, and nothing else", async () => {
		const { insulations } = await raykettle.insulations();
		for (const { id: material } of insulations)
			await raykettle.loopLosses({ supplyTemperatureC: 80, loop: { supply: { insulation: { material } } } });
	});
});

describe("400", () => {
	it("takes no parameters", async () => {
		expect((await refusal("/v1/insulations?material=mineralWool")).errors?.[0]).toMatchObject({
			parameter: "material",
			code: "unknown",
		});
	});
});

describe("404", () => {
	it("has no page of one", async () => {
		expect((await refusal("/v1/insulations/mineralWool")).status).toBe(404);
	});
});
