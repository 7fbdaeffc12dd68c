import { describe, expect, it } from "vitest";
import { clearWeather } from "../../../src/sky/clear-weather.ts";
import { sunDay } from "../../../src/sun/day.ts";

const rad = Math.PI / 180;
const site = { latitude: 40 * rad, longitude: -105 * rad, elevation: 1800, albedo: 0.2 };
const sky = { turbidity: 3, ambientMinimum: 283, ambientMaximum: 299, wind: 2.5 };
const midnight = Date.UTC(2025, 5, 21, 7) / 1000;
const times = Float64Array.from({ length: 145 }, (_, i) => midnight + i * 600);

describe("clearWeather", () => {
	const weather = clearWeather(site, sky, times);

	it("shines between sunrise and sunset, and only then", () => {
		const day = sunDay(midnight + 43_200, site.latitude, site.longitude);
		if (day.kind !== "riseAndSet") throw new Error("the sun rises at 40°");
		for (const [i, time] of times.entries()) {
			if (time > day.sunrise + 600 && time < day.sunset - 600) expect(weather.beam[i]).toBeGreaterThan(0);
			if (time < day.sunrise - 60 || time > day.sunset + 60)
				expect(weather.beam[i]! + weather.diffuse[i]!).toBe(0);
		}
		expect(Math.max(...weather.beam)).toBeGreaterThan(900);
	});

	it("is the same before noon as after it, but for the air", () => {
		const { noon } = sunDay(midnight + 43_200, site.latitude, site.longitude);
		const pair = clearWeather(site, sky, Float64Array.of(noon - 10_800, noon + 10_800));
		expect(pair.beam[0]).toBeCloseTo(pair.beam[1]!, 0);
		expect(pair.ambient[1]).toBeGreaterThan(pair.ambient[0]! + 5);
	});

	it("reaches its two air temperatures, the wind always", () => {
		expect(Math.min(...weather.ambient)).toBeCloseTo(283, 1);
		expect(Math.max(...weather.ambient)).toBeCloseTo(299, 1);
		expect(new Set(weather.wind)).toEqual(new Set([2.5]));
	});

	it("keeps its own copy of the times", () => {
		const mine = times.slice();
		const answer = clearWeather(site, sky, mine);
		mine.fill(0);
		expect(answer.time).toEqual(times);
	});

	it("answers an empty list with empty columns", () => {
		expect(clearWeather(site, sky, new Float64Array(0)).beam).toHaveLength(0);
	});

	it("refuses NaN, a minimum above the maximum, and a wind below nothing", () => {
		expect(() => clearWeather(site, { ...sky, turbidity: Number.NaN }, times)).toThrow("turbidity");
		expect(() => clearWeather(site, { ...sky, ambientMinimum: 300 }, times)).toThrow("ambientMinimum");
		expect(() => clearWeather(site, { ...sky, wind: -1 }, times)).toThrow("wind");
		expect(() => clearWeather(site, sky, Float64Array.of(Number.NaN))).toThrow("time");
	});
});
