import { describe, expect, it } from "vitest";
import { RaykettleProblem } from "../../sdk/index.ts";
import { app, parsed, raykettle, refusal } from "./service.ts";

describe("200", () => {
	it("lists every fluid that a loop takes, with its range, its limits and where they come from", async () => {
		const { fluids } = await raykettle.fluids();
		parsed("getFluids", { fluids });
		expect(fluids.map(({ id }) => id)).toEqual([
			"water",
			"mineralOilVg22",
			"mineralOilVg32",
			"mineralOilVg46",
			"mineralOilVg68",
			"propyleneGlycol25",
			"propyleneGlycol40",
			"propyleneGlycol50",
			"vegetableOil",
		]);
		for (const { id, validFromC, validToC, limits, source, confirmed, freezes, potable } of fluids) {
			expect(validFromC).toBeLessThan(validToC);
			expect(source?.length).toBeGreaterThan(10);
			expect(confirmed).toBe(id === "water" || /Glycol/.test(id)); // compared with IAPWS and ASHRAE tables
			for (const { reason, basis, source: cited } of Object.values(limits)) {
				expect(reason.length).toBeGreaterThan(10);
				if (basis === "standard") expect(cited?.length).toBeGreaterThan(7);
				if (basis === "commonPractice") expect(cited).toBeUndefined();
			}
			expect(limits.coldest.temperatureC).toBeLessThan(limits.bulk.temperatureC);
			expect(limits.film.temperatureC).toBeGreaterThanOrEqual(limits.bulk.temperatureC);
			expect("flash" in limits).toBe(/Oil/.test(id));
			expect(potable).toBe(id === "water");
			expect(freezes).toBe(id === "water" || id === "propyleneGlycol25");
			await raykettle.loopLosses({ supplyTemperatureC: 80, loop: { fluid: id } });
		}
	});

	// IAPWS R7-97 (density, heat capacity), R12-08 and R15-11 at 101.325 kPa, computed with an independent implementation
	it.each([
		[20, 998.207, 4184.1, 1.0016e-3, 0.5985],
		[60, 983.196, 4185.0, 0.466e-3, 0.651],
		[90, 965.3, 4205, 0.3142e-3, 0.6727],
	])("has water at %i °C", async (celsius, density, heatCapacity, viscosity, conductivity) => {
		const { table } = await raykettle.fluid({ id: "water", fromC: celsius, toC: celsius });
		expect(Math.abs(table.densityKgPerM3[0]! / density - 1)).toBeLessThan(1e-3);
		expect(Math.abs(table.heatCapacityJPerKgK[0]! / heatCapacity - 1)).toBeLessThan(1e-3);
		expect(Math.abs(table.dynamicViscosityPaS[0]! / viscosity - 1)).toBeLessThan(0.01);
		expect(Math.abs(table.conductivityWPerMK[0]! / conductivity - 1)).toBeLessThan(0.01);
	});

	it.each([22, 32, 46, 68] as const)("has oil of grade %i at 40 °C by ISO 3448", async (grade) => {
		const { table, fluid } = await raykettle.fluid({ id: `mineralOilVg${grade}`, fromC: 40, toC: 40 });
		expect(table.kinematicViscosityMm2PerS).toEqual([grade]);
		expect(fluid.id).toBe(`mineralOilVg${grade}`);
	});

	it("covers all that is known when nothing is asked, and says so", async () => {
		const answer = await raykettle.fluid({ id: "vegetableOil" });
		parsed("getFluid", answer);
		const { table, fluid, assumed } = answer;
		expect(table.temperatureC[0]).toBe(fluid.validFromC);
		expect(table.temperatureC.at(-1)).toBe(fluid.validToC);
		expect(assumed.map(({ pointer }) => pointer)).toEqual(["/stepK", "/fromC", "/toC"]);
		expect(new Set(Object.values(table).map((column) => column.length)).size).toBe(1);
	});

	it("answers at both ends of every fluid's range as they are listed", async () => {
		for (const { id, validFromC, validToC } of (await raykettle.fluids()).fluids) {
			const { table } = await raykettle.fluid({ id, fromC: validFromC, toC: validToC, stepK: 100 });
			expect(table.temperatureC[0]).toBe(validFromC);
			expect(table.temperatureC.at(-1)).toBe(validToC);
		}
	});

	it("gives the last row nearer where the steps do not come out", async () => {
		const { table } = await raykettle.fluid({ id: "water", fromC: 10, toC: 45, stepK: 20 });
		expect(table.temperatureC).toEqual([10, 30, 45]);
	});

	it("flags rows beyond what was published", async () => {
		const flagged = async (toC: number) =>
			(await raykettle.fluid({ id: "mineralOilVg22", fromC: 20, toC })).methods
				.filter(({ outsideRange }) => outsideRange)
				.map(({ name }) => name);
		expect(await flagged(100)).toEqual([]);
		expect(await flagged(240)).toEqual([
			"Viscosity of an oil between two points",
			"Heat capacity and conductivity of petroleum oils",
		]);
	});
});

describe("304", () => {
	it.each(["/v1/fluids", "/v1/fluids/water?stepK=50", "/v1/insulations", "/v1/tapping-profiles"])(
		"spares a caller %s that he holds",
		async (url) => {
			const first = await app.request(url);
			expect(first.headers.get("cache-control")).toBe("public, max-age=86400");
			const held = { "if-none-match": first.headers.get("etag")! };
			expect((await app.request(url, { headers: held })).status).toBe(304);
		},
	);
});

describe("400", () => {
	it("knows no other parameters", async () => {
		expect((await refusal("/v1/fluids?id=water")).errors?.[0]).toMatchObject({
			parameter: "id",
			code: "unknown",
		});
		const { errors } = await refusal("/v1/fluids/water?from=10&stepK=0");
		expect(errors?.map(({ parameter, code }) => [parameter, code])).toEqual(
			expect.arrayContaining([
				["from", "unknown"],
				["stepK", "out_of_bounds"],
			]),
		);
	});

	it("takes the name from the path alone", async () => {
		const { status, errors } = await refusal("/v1/fluids/water?id=vegetableOil");
		expect(status).toBe(400);
		expect(errors).toEqual([expect.objectContaining({ in: "query", parameter: "id", code: "unknown" })]);
	});
});

describe("404", () => {
	it.each(["beer", "Water", "constructor", "water%20", "%E0%A4%A", "mineralOilVg32/x"])(
		"has nothing of the name of %s",
		async (name) => {
			expect((await refusal(`/v1/fluids/${name}`)).status).toBe(404);
		},
	);

	it("says which there are, also when the query is wrong as well", async () => {
		const problem = await refusal("/v1/fluids/beer?stepK=0");
		expect(problem).toMatchObject({ status: 404, type: "urn:raykettle:problem:not-found" });
		expect(problem.detail).toContain('"vegetableOil"');
	});

	it("tells a preflight and a wrong method what there is", async () => {
		const preflight = await app.request("/v1/fluids/water", { method: "OPTIONS" });
		expect(preflight.headers.get("access-control-allow-methods")).toBe("GET, HEAD, OPTIONS");
		expect((await app.request("/v1/fluids/water", { method: "POST" })).status).toBe(405);
		expect((await app.request("/v1/fluids/water", { method: "HEAD" })).status).toBe(200);
	});
});

describe("422", () => {
	it("refuses rows of which nothing is known", async () => {
		const problem = await refusal("/v1/fluids/water?fromC=-5&toC=250");
		expect(problem.status).toBe(422);
		expect(problem.errors?.map(({ parameter, code }) => [parameter, code])).toEqual([
			["fromC", "out_of_range"],
			["toC", "out_of_range"],
		]);
		expect(problem.detail).toContain("0 to 200 °C");
	});

	it("refuses rows that run backwards", async () => {
		const caught = await raykettle
			.fluid({ id: "water", fromC: 50, toC: 20 })
			.catch((error: unknown) => error);
		expect(caught).toBeInstanceOf(RaykettleProblem);
		expect((caught as RaykettleProblem).errors[0]).toMatchObject({ parameter: "toC", code: "contradictory" });
	});
});
