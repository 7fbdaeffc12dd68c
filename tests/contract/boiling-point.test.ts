import { describe, expect, it } from "vitest";
import { RaykettleProblem } from "../../sdk/index.ts";
import { parsed, raykettle, refusal } from "./service.ts";

describe("200", () => {
	it("answers pressure and boiling point at 3000 m", async () => {
		const answer = await raykettle.boilingPoint({ elevationM: 3000 });
		parsed("getBoilingPoint", answer);
		expect(answer.given).toBe("elevationM");
		expect(answer.pressureKpa).toBeCloseTo(70.1085, 3); // ISO 2533:1975 at 3000 m geopotential
		expect(answer.boilingPointC).toBeCloseTo(89.97, 2); // IAPWS R7-97 at that pressure
	});

	it("boils at 99.974 °C under one standard atmosphere", async () => {
		const answer = await raykettle.boilingPoint({ pressureKpa: 101.325 });
		expect(answer.boilingPointC).toBeCloseTo(99.974, 3); // ITS-90 boiling point of water, IAPWS-IF97 gives 99.9743
		expect(answer.elevationM).toBeCloseTo(0, 6);
		expect(answer.uncertainty).toMatchObject({ pressureKpa: 0, boilingPointK: 0 });
	});

	it("finds the way back from a boiling point to its elevation", async () => {
		const { boilingPointC } = await raykettle.boilingPoint({ elevationM: 3000 });
		const back = await raykettle.boilingPoint({ boilingPointC });
		expect(Math.abs(back.elevationM - 3000)).toBeLessThan(1);
	});

	it("says how far the weather moves each", async () => {
		const high = await raykettle.boilingPoint({ boilingPointC: 90 });
		expect(high.uncertainty.elevationM).toBeGreaterThan(130); // 1 hPa is about 11 m at 3000 m
		expect(high.uncertainty.elevationM).toBeLessThan(160);
		const low = await raykettle.boilingPoint({ elevationM: 3000 });
		expect(low.uncertainty.boilingPointK).toBeGreaterThan(0.45); // 1 hPa is 0.0375 K there
		expect(low.uncertainty.boilingPointK).toBeLessThan(0.53);
	});

	it.each([
		{ elevationM: -430 },
		{ elevationM: 11_000 },
		{ pressureKpa: 22.64 },
		{ pressureKpa: 106.59 },
		{ boilingPointC: 62.9 },
		{ boilingPointC: 101.4 },
	])("answers at the bound %o", async (query) => {
		parsed("getBoilingPoint", await raykettle.boilingPoint(query));
	});
});

describe("a boiling point read from a thermometer", () => {
	const at = (query: Parameters<typeof raykettle.boilingPoint>[0]) => raykettle.boilingPoint(query);

	it("gives the elevation with both its errors", async () => {
		const read = await at({ boilingPointC: 90, thermometerUncertaintyK: 0.5 });
		const [low, high] = [await at({ boilingPointC: 90.5 }), await at({ boilingPointC: 89.5 })];
		const fromThermometer = (high.elevationM - low.elevationM) / 2;
		const fromWeather = (await at({ boilingPointC: 90 })).uncertainty.elevationM;
		expect(read.uncertainty.elevationM).toBeCloseTo(Math.hypot(fromThermometer, fromWeather), -0.5);
		expect(read.uncertainty.pressureKpa).toBeCloseTo((low.pressureKpa - high.pressureKpa) / 2, 2);
		expect(read.uncertainty.boilingPointK).toBe(0.5);
	});

	it("a perfect thermometer leaves the weather", async () => {
		const { uncertainty } = await at({ boilingPointC: 95, thermometerUncertaintyK: 0 });
		expect(uncertainty).toMatchObject({ pressureKpa: 0, boilingPointK: 0 });
		const plain = (await at({ boilingPointC: 95 })).uncertainty.elevationM;
		expect(uncertainty.elevationM / plain).toBeCloseTo(1, 3);
	});

	it("belongs to a boiling point", async () => {
		const { status, errors } = await refusal("/v1/boiling-point?elevationM=1000&thermometerUncertaintyK=0.5");
		expect(status).toBe(400);
		expect(errors?.[0]?.parameter).toBe("thermometerUncertaintyK");
	});
});

describe("400", () => {
	it("wants exactly one of the three", async () => {
		expect((await refusal("/v1/boiling-point")).errors).toEqual([
			{
				in: "query",
				detail: "Send exactly one of elevationM, pressureKpa, boilingPointC; none was sent",
				code: "broken_rule",
			},
		]);
		const both = await refusal("/v1/boiling-point?elevationM=0&pressureKpa=101.3");
		expect(both.errors?.map(({ parameter }) => parameter)).toEqual(["elevationM", "pressureKpa"]);
	});

	it("says the range and the unit of a value beyond it", async () => {
		const { status, errors } = await refusal("/v1/boiling-point?elevationM=12000");
		expect(status).toBe(400);
		expect(errors).toEqual([
			{
				in: "query",
				parameter: "elevationM",
				detail: 'elevationM must be a number from -430 to 11000 m; "12000" is not',
				code: "out_of_bounds",
			},
		]);
	});

	it("names each unknown parameter, and the known one it comes near", async () => {
		const { errors } = await refusal("/v1/boiling-point?elevation=3000&preasureKpa=70&colour=red");
		const details = Object.fromEntries(errors?.map(({ parameter, detail }) => [parameter, detail]) ?? []);
		expect(details.elevation).toContain("did you mean elevationM?");
		expect(details.preasureKpa).toContain("did you mean pressureKpa?");
		expect(details.colour).toContain("known names: elevationM, pressureKpa, boilingPointC");
	});

	it("refuses a parameter given twice", async () => {
		const { errors } = await refusal("/v1/boiling-point?elevationM=1&elevationM=2");
		expect(errors).toEqual([
			{
				in: "query",
				parameter: "elevationM",
				detail: "elevationM is sent 2 times; send it once",
				code: "wrong_type",
			},
		]);
	});

	it.each(["", "%20", "NaN", "Infinity", "0x10", "1e999", "3000m", "1,5", "null"])(
		"refuses %j as a number",
		async (text) => {
			expect((await refusal(`/v1/boiling-point?elevationM=${text}`)).status).toBe(400);
		},
	);

	it("reaches the SDK as a typed error", async () => {
		const error = await raykettle.boilingPoint({ elevationM: 99_999 }).catch((caught: unknown) => caught);
		expect(error).toBeInstanceOf(RaykettleProblem);
		expect(error).toMatchObject({ status: 400, type: "urn:raykettle:problem:invalid-request" });
		expect((error as RaykettleProblem).errors[0]?.parameter).toBe("elevationM");
		expect((error as RaykettleProblem).requestId).toMatch(/^[\w-]{36}$/);
	});
});
