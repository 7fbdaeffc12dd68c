import { describe, expect, it } from "vitest";
import { clearWeather } from "../../../src/sky/clear-weather.ts";
import { type MeasuredSky, measuredWeather } from "../../../src/sky/measured-weather.ts";

const rad = Math.PI / 180;
const site = { latitude: 40 * rad, longitude: 0, elevation: 300, albedo: 0.2 };
const midnight = Date.UTC(2025, 5, 21) / 1000;
const rows = Float64Array.from({ length: 145 }, (_, i) => midnight + i * 600);
const clear = clearWeather(site, { turbidity: 3, ambientMinimum: 283, ambientMaximum: 299, wind: 2 }, rows);
const global = clear.beam.map(
	(beam, i) => beam * Math.max(0, Math.sin(clear.sunAltitude[i]!)) + clear.diffuse[i]!,
);
const full: MeasuredSky = { ...clear, global };
const between = rows.slice(0, -1).map((time) => time + 300);

describe("measuredWeather", () => {
	it("gives the rows back at the rows", () => {
		const answer = measuredWeather(site, full, rows);
		for (const column of ["sunAltitude", "sunAzimuth", "beam", "diffuse", "ambient", "wind"] as const)
			expect(answer[column]).toEqual(clear[column]);
	});

	it("lies on a straight line between them", () => {
		const answer = measuredWeather(site, full, between);
		expect(answer.diffuse[70]).toBeCloseTo((clear.diffuse[70]! + clear.diffuse[71]!) / 2, 9);
		expect(answer.ambient[70]).toBeCloseTo((clear.ambient[70]! + clear.ambient[71]!) / 2, 9);
	});

	it("finds diffuse from beam and global, and beam from diffuse and global, when the sun is above 3°", () => {
		const noDiffuse = measuredWeather(site, { ...full, diffuse: undefined }, rows);
		const noBeam = measuredWeather(site, { ...full, beam: undefined }, rows);
		for (const [i, altitude] of clear.sunAltitude.entries()) {
			expect(noDiffuse.diffuse[i]).toBeCloseTo(clear.diffuse[i]!, 9);
			expect(noBeam.beam[i]).toBeCloseTo(altitude > 3 * rad ? clear.beam[i]! : 0, 9);
		}
	});

	it("splits the global alone so that the horizontal sum comes back", () => {
		const answer = measuredWeather(site, { ...full, beam: undefined, diffuse: undefined }, between);
		for (const [i, beam] of answer.beam.entries()) {
			const sum = beam * Math.max(0, Math.sin(answer.sunAltitude[i]!)) + answer.diffuse[i]!;
			expect(sum).toBeCloseTo((global[i]! + global[i + 1]!) / 2, 9);
		}
		expect(Math.max(...answer.beam)).toBeGreaterThan(700);
	});

	it("has no beam at night, whatever the station says", () => {
		const stuck = measuredWeather(site, { ...full, beam: rows.map(() => 500) }, rows);
		for (const [i, altitude] of stuck.sunAltitude.entries())
			expect(stuck.beam[i]).toBe(altitude > 0 ? 500 : 0);
	});

	it("never extrapolates", () => {
		expect(() => measuredWeather(site, full, Float64Array.of(midnight - 1))).toThrow("time");
		expect(() => measuredWeather(site, full, Float64Array.of(rows.at(-1)! + 1))).toThrow("time");
		expect(() => measuredWeather(site, full, Float64Array.of(Number.NaN))).toThrow("time");
	});

	it("refuses columns that cannot be used", () => {
		const attempt = (change: Partial<MeasuredSky>) => () =>
			measuredWeather(site, { ...full, ...change }, between);
		expect(attempt({ diffuse: undefined, global: undefined })).toThrow("beam and diffuse");
		expect(attempt({ beam: undefined, global: undefined })).toThrow("beam and diffuse");
		expect(attempt({ wind: [1, 2] })).toThrow("rows");
		expect(attempt({ time: rows.slice().reverse() })).toThrow("increase");
		expect(attempt({ time: rows.map(() => Number.NaN) })).toThrow("increase");
		expect(attempt({ beam: rows.map(() => Number.NaN) })).toThrow("beam");
		expect(attempt({ global: rows.map(() => -1) })).toThrow("global");
		expect(attempt({ ambient: rows.map(() => 20) })).toThrow("ambient"); // °C by mistake
		expect(() => measuredWeather(site, { ...full, time: [] }, between)).toThrow("two rows");
	});
});
