import { describe, expect, it } from "vitest";
import { app, parsed, raykettle, refusal } from "./service.ts";

describe("200", () => {
	it("meets the worked example of the solar position algorithm", async () => {
		// Reda & Andreas, NREL/TP-560-34302 (2008), example of 2003-10-17: zenith 50.111622°, azimuth 194.340241°
		const answer = await raykettle.sunPosition({
			latitude: 39.742476,
			longitude: -105.1786,
			elevationM: 1830.14,
			time: ["2003-10-17T12:30:30-07:00"],
		});
		parsed("getSunPosition", answer);
		const [position] = answer.positions;
		expect(Math.abs(position!.apparentAltitudeDeg - (90 - 50.111622))).toBeLessThan(0.02);
		expect(Math.abs(position!.azimuthDeg - 194.340241)).toBeLessThan(0.02);
		expect(Math.abs(position!.trueAltitudeDeg - (90 - 50.127954))).toBeLessThan(0.02);
		expect(answer.assumed).toEqual([]);
	});

	it("answers many times in the order asked, each as it was written", async () => {
		const time = ["2025-06-21T12:00:00+02:00", "2025-01-15T08:30:00Z", "2025-01-15T08:30:00.500Z"];
		const { positions } = await raykettle.sunPosition({ latitude: 28.6, longitude: 77.2, time });
		expect(positions.map((position) => position.time)).toEqual(time);
	});

	it("leaves air mass out while the sun is down", async () => {
		const { positions } = await raykettle.sunPosition({
			latitude: 28.6,
			longitude: 77.2,
			time: ["2025-01-15T20:00:00Z", "2025-01-15T06:30:00Z"],
		});
		expect(positions[0]).not.toHaveProperty("airMass");
		expect(positions[0]!.apparentAltitudeDeg).toBeLessThan(0);
		expect(positions[1]!.airMass).toBeGreaterThan(1);
	});

	it("tells of the sea level it assumed", async () => {
		const { assumed, elevationM } = await raykettle.sunPosition({
			latitude: 0,
			longitude: 0,
			time: ["2025-03-20T12:00:00Z"],
		});
		expect(elevationM).toBe(0);
		expect(assumed).toEqual([
			{ pointer: "/elevationM", value: 0, reason: "sea level", basis: "commonPractice", confirmed: true },
		]);
	});

	it("reads a plus sign that was not escaped", async () => {
		const plain = await app.request(
			"/v1/sun/position?latitude=28.6&longitude=77.2&time=2025-01-15T14:00:00+05:30",
		);
		const escaped = await app.request(
			"/v1/sun/position?latitude=28.6&longitude=77.2&time=2025-01-15T14:00:00%2B05:30",
		);
		expect(plain.status).toBe(200);
		expect(await plain.text()).toBe(await escaped.text());
	});

	it.each([
		[90, 0],
		[-90, 180],
		[0, -180],
	])("answers at latitude %d, longitude %d", async (latitude, longitude) => {
		parsed(
			"getSunPosition",
			await raykettle.sunPosition({
				latitude,
				longitude,
				time: ["1950-01-01T00:00:00Z", "2100-12-31T23:59:59Z"],
			}),
		);
	});
});

describe("400", () => {
	it("names every fault at once", async () => {
		const { errors } = await refusal("/v1/sun/position?latitude=91&longitud=77&time=2025-02-30T00:00:00Z");
		expect(errors?.map(({ parameter, code }) => `${parameter} ${code}`).toSorted()).toEqual([
			"latitude out_of_bounds",
			"longitud unknown",
			"longitude missing",
			"time wrong_format",
		]);
	});

	it.each(["2025-01-15", "2025-01-15T08:30:00", "yesterday", "2025-13-01T00:00:00Z", "2025-01-15T24:00:00Z"])(
		"refuses %s as a time",
		async (time) => {
			const { errors } = await refusal(`/v1/sun/position?latitude=0&longitude=0&time=${time}`);
			expect(errors?.[0]).toMatchObject({ parameter: "time", code: "wrong_format" });
		},
	);

	it("refuses years beyond what the position is checked for", async () => {
		const { errors } = await refusal("/v1/sun/position?latitude=0&longitude=0&time=1850-01-01T00:00:00Z");
		expect(errors?.[0]?.detail).toBe("time[0] must be within the years 1950 to 2100");
	});

	it("refuses more times than one request may ask", async () => {
		const many = Array.from({ length: 367 }, () => "time=2025-01-15T08:30:00Z").join("&");
		const { errors } = await refusal(`/v1/sun/position?latitude=0&longitude=0&${many}`);
		expect(errors?.[0]?.detail).toBe("time must have at most 366 entries");
	});
});
