import { describe, expect, it } from "vitest";
import { parsed, raykettle, refusal } from "./service.ts";

const golden = { latitude: 39.742476, longitude: -105.1786, elevationM: 1830, date: "2003-10-17" };
const seconds = (text: string) => Date.parse(text) / 1000;

describe("200", () => {
	it("finds rise, noon and set of the solar position algorithm's example", async () => {
		// Reda & Andreas, NREL/TP-560-34302 (2008): sunrise 06:12:43, transit 11:46:04.97 on 2003-10-17 at UTC−7.
		// The report's sunset is the evening before; that of the 17th is 17:18:51, computed with an independent ephemeris.
		const answer = await raykettle.sunDay({ ...golden, timeZone: "Etc/GMT+7" });
		parsed("getSunDay", answer);
		expect(answer.daylight).toBe("riseAndSet");
		expect(Math.abs(seconds(answer.sunrise!) - seconds("2003-10-17T06:12:43-07:00"))).toBeLessThan(60);
		expect(Math.abs(seconds(answer.noon) - seconds("2003-10-17T11:46:05-07:00"))).toBeLessThan(60);
		expect(Math.abs(seconds(answer.sunset!) - seconds("2003-10-17T17:18:51-07:00"))).toBeLessThan(60);
		expect(answer.dayLengthMin).toBeCloseTo((seconds(answer.sunset!) - seconds(answer.sunrise!)) / 60, 0);
	});

	it("looks the time zone up, says so, and writes times in it", async () => {
		const answer = await raykettle.sunDay(golden);
		expect(answer.timeZone).toBe("America/Denver");
		expect(answer.noon.endsWith("-06:00")).toBe(true); // daylight saving time in October
		expect(answer.assumed).toContainEqual({
			pointer: "/timeZone",
			value: "America/Denver",
			reason: expect.stringContaining("coordinates"),
			basis: "lookedUp",
			confirmed: true,
		});
	});

	it("gives columns of one length, with noon in the middle and the sun highest there", async () => {
		const { series, noon, noonAltitudeDeg } = await raykettle.sunDay({ ...golden, stepMin: 20 });
		const { stepMin, ...columns } = series;
		expect(stepMin).toBe(20);
		expect(new Set(Object.values(columns).map((column) => column.length))).toEqual(new Set([73]));
		expect(series.time[36]).toBe(noon);
		expect(series.sunAltitudeDeg[36]).toBe(noonAltitudeDeg);
		expect(Math.max(...series.sunAltitudeDeg)).toBeCloseTo(noonAltitudeDeg, 2);
		expect(series.beamIrradianceWPerM2[0]).toBe(0);
	});

	it("sums what the columns show", async () => {
		const { series, daily } = await raykettle.sunDay({ ...golden, stepMin: 5 });
		const sum = (column: readonly number[]) =>
			column.slice(1).reduce((total, w) => total + w * (5 / 60) * 1e-3, 0);
		expect(daily.trackedBeamKwhPerM2).toBeCloseTo(sum(series.beamIrradianceWPerM2), 1);
		expect(daily.planeTotalKwhPerM2).toBeCloseTo(sum(series.planeIrradianceWPerM2), 1);
		expect(daily.trackedBeamKwhPerM2).toBeGreaterThan(daily.planeBeamKwhPerM2);
	});

	it("tilts steeper in winter than in summer, towards the equator on either side of it", async () => {
		for (const [latitude, azimuth] of [
			[35, 180],
			[-35, 0],
		] as const) {
			const { bestTilt } = await raykettle.sunDay({
				latitude,
				longitude: 20,
				elevationM: 0,
				date: "2025-03-20",
			});
			const tilt = Object.fromEntries(bestTilt.seasons.map(({ season, tiltDeg }) => [season, tiltDeg!]));
			expect(tilt.winter).toBeGreaterThan(tilt.summer! + 30);
			expect(bestTilt.year.tiltDeg).toBeGreaterThan(20);
			expect(bestTilt.year.tiltDeg).toBeLessThan(40);
			expect(bestTilt.year.surfaceAzimuthDeg).toBe(azimuth);
			expect(bestTilt.day.dailyTotalKwhPerM2).toBeGreaterThan(0);
		}
	});

	it("gives no fixed plane more than the best tilt gets", async () => {
		const best = (await raykettle.sunDay(golden)).bestTilt.day;
		for (const tiltDeg of [0, 20, 40, 60, 80, 90]) {
			const { daily } = await raykettle.sunDay({ ...golden, tiltDeg, surfaceAzimuthDeg: 180 });
			expect(daily.planeTotalKwhPerM2).toBeLessThanOrEqual(best.dailyTotalKwhPerM2 * (1 + 1e-6));
		}
	});

	it("answers the polar night and the polar day with their kind, not with an error", async () => {
		const night = await raykettle.sunDay({
			latitude: 69.65,
			longitude: 18.96,
			elevationM: 0,
			date: "2025-12-21",
		});
		parsed("getSunDay", night);
		expect(night).toMatchObject({ daylight: "polarNight", dayLengthMin: 0 });
		expect(night).not.toHaveProperty("sunrise");
		expect(night.daily.trackedBeamKwhPerM2).toBe(0);
		expect(night.bestTilt.day).not.toHaveProperty("tiltDeg");
		const day = await raykettle.sunDay({
			latitude: 69.65,
			longitude: 18.96,
			elevationM: 0,
			date: "2025-06-21",
		});
		parsed("getSunDay", day);
		expect(day).toMatchObject({ daylight: "polarDay", dayLengthMin: 1440 });
	});

	it.each(["2025-03-30", "2025-10-26", "1950-01-01", "2100-12-31", "2024-02-29"])(
		"answers on %s, in a zone that changes its clocks",
		async (date) => {
			const answer = await raykettle.sunDay({ latitude: 52.5, longitude: 13.4, elevationM: 40, date });
			parsed("getSunDay", answer);
			expect(answer.noon.slice(0, 10)).toBe(date);
			const times = answer.series.time.map(seconds);
			expect(new Set(times.slice(1).map((time, i) => Math.round((time - times[i]!) / 60)))).toEqual(
				new Set([30]),
			);
		},
	);

	it("brightens the sun with elevation and dims it with turbidity", async () => {
		const beam = async (elevationM: number, linkeTurbidity: number) =>
			(await raykettle.sunDay({ ...golden, elevationM, linkeTurbidity })).daily.trackedBeamKwhPerM2;
		expect(await beam(1830, 3)).toBeGreaterThan(await beam(0, 3));
		expect(await beam(0, 3)).toBeGreaterThan(await beam(0, 5));
	});
});

describe("400", () => {
	it.each(["2025-02-30", "2025-2-3", "15.01.2025", "2025-01-15T00:00:00Z", "1900-02-29"])(
		"refuses %s as a date",
		async (date) => {
			const { errors } = await refusal(`/v1/sun/day?latitude=0&longitude=0&date=${date}`);
			expect(errors?.[0]).toMatchObject({ in: "query", parameter: "date", code: "wrong_format" });
		},
	);

	it.each(["Mars/Olympus", "+05:30", "Asia", "Asia/Kolkata;x"])("refuses %s as a time zone", async (zone) => {
		const { errors } = await refusal(
			`/v1/sun/day?latitude=0&longitude=0&date=2025-01-15&timeZone=${encodeURIComponent(zone)}`,
		);
		expect(errors?.[0]?.detail).toBe("timeZone must be the IANA name of a time zone, such as Asia/Kolkata");
	});

	it("names a latitude of 91", async () => {
		const { errors } = await refusal("/v1/sun/day?latitude=91&longitude=0&date=2025-01-15");
		expect(errors).toHaveLength(1);
		expect(errors?.[0]).toMatchObject({ parameter: "latitude", code: "out_of_bounds" });
	});
});
