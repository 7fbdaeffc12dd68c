import { describe, expect, it } from "vitest";
import { sunDay } from "../../../src/sun/day.ts";
import { sunPosition } from "../../../src/sun/position.ts";
import { independentSun } from "./meeus.ts";

const rad = Math.PI / 180;
const utc = (iso: string) => Date.parse(iso) / 1000;
const HORIZON = -0.8333 * rad;

describe("sunDay", () => {
	it("rises and sets where an independent ephemeris has the sun on the almanac's horizon", () => {
		for (let i = 0; i < 365; i += 7)
			for (const latitude of [-50, -23, 0, 40, 60]) {
				const day = sunDay(utc("2025-01-01T10:00:00Z") + i * 86_400, latitude * rad, 0.7);
				if (day.kind !== "riseAndSet") throw new Error("the sun rises below the polar circles");
				for (const time of [day.sunrise, day.sunset])
					expect(Math.abs(independentSun(time, latitude * rad, 0.7).altitude - HORIZON) / rad).toBeLessThan(
						0.02,
					);
				expect(day.sunrise).toBeLessThan(day.noon);
				expect(day.dayLength).toBeCloseTo(day.sunset - day.sunrise, 6);
			}
	});

	it("takes the noon that is nearest, at any longitude", () => {
		for (const longitude of [-180, -105, 0, 77, 180])
			for (let hour = 0; hour < 48; hour += 1.5) {
				const time = utc("2025-06-01T00:00:00Z") + hour * 3600;
				const { noon } = sunDay(time, 0.5, longitude * rad);
				expect(Math.abs(noon - time)).toBeLessThanOrEqual(43_230); // half a day, and the sundial's drift
				expect(Math.abs(sunPosition(noon, 0.9, longitude * rad).azimuth - Math.PI)).toBeLessThan(1e-5);
			}
	});

	it("is the same day for any instant within it", () => {
		const morning = sunDay(utc("2025-03-03T07:00:00Z"), 0.8, 0);
		const evening = sunDay(utc("2025-03-03T19:00:00Z"), 0.8, 0);
		expect(evening.noon).toBeCloseTo(morning.noon, 2);
	});

	it("knows polar day and night in both hemispheres", () => {
		const june = utc("2025-06-21T12:00:00Z");
		const december = utc("2025-12-21T12:00:00Z");
		for (const latitude of [70, 80, 90]) {
			expect(sunDay(june, latitude * rad, 0).kind).toBe("alwaysUp");
			expect(sunDay(december, latitude * rad, 0).kind).toBe("alwaysDown");
			expect(sunDay(june, -latitude * rad, 0).kind).toBe("alwaysDown");
			expect(sunDay(december, -latitude * rad, 0).kind).toBe("alwaysUp");
		}
	});

	it("passes from night through ever longer days to the midnight sun at 72° without a stray day", () => {
		const kinds: string[] = [];
		for (let i = 0; i < 170; i++)
			kinds.push(sunDay(utc("2025-01-01T12:00:00Z") + i * 86_400, 72 * rad, 0).kind);
		const runs = kinds.filter((kind, i) => kind !== kinds[i - 1]);
		expect(runs).toEqual(["alwaysDown", "riseAndSet", "alwaysUp"]);
	});

	it("is 12 h 7 min long at the equator, all year", () => {
		for (const date of ["2025-03-20", "2025-06-21", "2025-12-21"]) {
			const day = sunDay(utc(`${date}T12:00:00Z`), 0, 0);
			if (day.kind !== "riseAndSet") throw new Error("the sun rises at the equator");
			expect(Math.abs(day.dayLength - (12 * 3600 + 7 * 60))).toBeLessThan(60);
		}
	});

	it("refuses NaN", () => {
		expect(() => sunDay(Number.NaN, 0, 0)).toThrow("time");
	});
});
