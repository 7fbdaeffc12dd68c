import { describe, expect, it } from "vitest";
import {
	apparentAltitudeAt,
	declination,
	equationOfTime,
	hourAngle,
	sunPosition,
} from "../../../src/sun/position.ts";
import { independentSun } from "./meeus.ts";

const rad = Math.PI / 180;
const from1990 = Date.UTC(1990, 0, 1) / 1000;
const to2050 = Date.UTC(2050, 0, 1) / 1000;
const instants = Array.from({ length: 3000 }, (_, i) => from1990 + ((i + 0.37) / 3000) * (to2050 - from1990));

describe("sunPosition", () => {
	it("lies within 0.02° of an independent ephemeris, 1990 to 2050, by day and night", () => {
		let worst = 0;
		for (const time of instants)
			for (const latitude of [-75, -35, -1.3, 20, 47, 66, 85]) {
				const longitude = latitude * 2.1 * rad;
				const ours = sunPosition(time, latitude * rad, longitude);
				const theirs = independentSun(time, latitude * rad, longitude);
				const halfChord =
					Math.sin((ours.trueAltitude - theirs.altitude) / 2) ** 2 +
					Math.cos(ours.trueAltitude) *
						Math.cos(theirs.altitude) *
						Math.sin((ours.azimuth - theirs.azimuth) / 2) ** 2;
				worst = Math.max(worst, 2 * Math.asin(Math.sqrt(halfChord)));
			}
		expect(worst / rad).toBeLessThan(0.02);
		expect(worst).toBeGreaterThan(0); // two different ephemerides
	});

	it("turns clockwise from north", () => {
		const equinox = Date.UTC(2025, 2, 20) / 1000;
		const morning = sunPosition(equinox + 7 * 3600, 45 * rad, 0);
		const noon = sunPosition(equinox + 12 * 3600, 45 * rad, 0);
		const evening = sunPosition(equinox + 17 * 3600, 45 * rad, 0);
		expect(morning.azimuth).toBeGreaterThan(90 * rad);
		expect(noon.azimuth / rad).toBeCloseTo(178, -1);
		expect(evening.azimuth).toBeLessThan(270 * rad);
		expect(sunPosition(equinox + 12 * 3600, -45 * rad, 0).azimuth * (180 / Math.PI)).toBeLessThan(10);
	});

	it("refuses what is not a number or out of range", () => {
		expect(() => sunPosition(Number.NaN, 0, 0)).toThrow("time");
		expect(() => sunPosition(0, 1.6, 0)).toThrow("latitude");
		expect(() => sunPosition(0, 0, Number.NaN)).toThrow("longitude");
		expect(() => sunPosition(Date.UTC(2200, 0, 1) / 1000, 0, 0)).toThrow("time");
	});
});

describe("apparentAltitudeAt", () => {
	it("is undone exactly by the true altitude, above and below the horizon", () => {
		for (const time of instants) {
			const sun = sunPosition(time, 47 * rad, 0.1);
			expect(Math.abs(apparentAltitudeAt(sun.trueAltitude, 101_000) - sun.apparentAltitude)).toBeLessThan(
				1e-10,
			);
		}
	});

	it("lifts by 29′ at the horizon, 5′ at 10° and nothing overhead (Meeus ch. 16)", () => {
		const lift = (degrees: number) => (apparentAltitudeAt(degrees * rad, 101_000) / rad - degrees) * 60;
		expect(lift(0)).toBeCloseTo(29, 0);
		expect(lift(10)).toBeCloseTo(5.4, 1);
		expect(Math.abs(lift(90))).toBeLessThan(0.01);
	});

	it("falls with pressure and vanishes without air", () => {
		expect(apparentAltitudeAt(0.1, 70_000)).toBeLessThan(apparentAltitudeAt(0.1, 101_325));
		expect(apparentAltitudeAt(0.1, 0)).toBe(0.1);
	});

	it("rises with true altitude", () => {
		for (let h = -0.2; h < 1.57; h += 0.001)
			expect(apparentAltitudeAt(h + 0.001, 101_325)).toBeGreaterThan(apparentAltitudeAt(h, 101_325));
	});
});

describe("declination, hour angle and equation of time", () => {
	it("agree with the independent ephemeris", () => {
		for (const time of instants)
			expect(Math.abs(declination(time) - independentSun(time, 0, 0).declination) / rad).toBeLessThan(0.01);
	});

	it("put the sun where the spherical triangle does", () => {
		for (const time of instants.slice(0, 300)) {
			const [latitude, longitude] = [-0.6, 2.2];
			const d = declination(time);
			const H = hourAngle(time, longitude);
			const sine = Math.sin(latitude) * Math.sin(d) + Math.cos(latitude) * Math.cos(d) * Math.cos(H);
			expect(Math.asin(sine)).toBeCloseTo(sunPosition(time, latitude, longitude).trueAltitude, 8);
		}
	});

	it("keep within the tropics and the analemma, and average to nothing", () => {
		const values = instants.map(equationOfTime);
		expect(Math.max(...values)).toBeLessThan(16.6 * 60);
		expect(Math.max(...values)).toBeGreaterThan(16.2 * 60);
		expect(Math.min(...values)).toBeGreaterThan(-14.5 * 60);
		expect(Math.abs(values.reduce((a, b) => a + b, 0) / values.length)).toBeLessThan(10);
		expect(Math.max(...instants.map(declination)) / rad).toBeCloseTo(23.44, 1);
	});
});
