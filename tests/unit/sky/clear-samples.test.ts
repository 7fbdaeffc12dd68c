import { describe, expect, it } from "vitest";
import { standardPressure } from "../../../src/sky/atmosphere.ts";
import { bestTilt } from "../../../src/sky/best-tilt.ts";
import { clearInstant } from "../../../src/sky/clear-instant.ts";
import { clearSamples, meanOnPlane, meanTrackedBeam, type Period } from "../../../src/sky/clear-samples.ts";
import type { Site } from "../../../src/sky/site.ts";
import { planeIrradiance } from "../../../src/sun/plane.ts";

const rad = Math.PI / 180;
const day = (n: number) => Date.UTC(2025, 0, 1) / 1000 + n * 86_400;
const site = (latitude: number): Site => ({
	latitude: latitude * rad,
	longitude: 36.8 * rad,
	elevation: 100,
	albedo: 0.2,
});
const periods: readonly Period[] = [
	{ from: day(171), to: day(172) },
	{ from: day(151), to: day(181) },
	{ from: day(151), to: day(243) },
	{ from: day(0), to: day(365) },
];

/** Every five minutes of the period, by the plain functions. */
function everyInstant(place: Site, { from, to }: Period) {
	const pressure = standardPressure(place.elevation);
	const count = (to - from) / 300;
	return Array.from({ length: count }, (_, i) => clearInstant(place, 3, pressure, from + (i + 0.5) * 300));
}

describe("clearSamples", () => {
	it("give the same mean on a plane, and of tracked beam, as every five minutes of the period", () => {
		for (const latitude of [-60, -1.3, 40, 70])
			for (const period of periods) {
				const place = site(latitude);
				const samples = clearSamples(place, 3, period);
				const instants = everyInstant(place, period);
				for (const plane of [
					{ tilt: 0, azimuth: 0 },
					{ tilt: 40 * rad, azimuth: 2.5 },
					{ tilt: 90 * rad, azimuth: 2.5 },
				]) {
					const all = instants.map((now) => planeIrradiance(now, now, plane, place.albedo).total);
					const mean = all.reduce((a, b) => a + b, 0) / all.length;
					const error = Math.abs(meanOnPlane(samples, plane, place.albedo).total - mean);
					expect(error).toBeLessThan(0.003 * mean + 0.01);
				}
				const beam = instants.reduce((sum, now) => sum + now.beam, 0) / instants.length;
				expect(Math.abs(meanTrackedBeam(samples) - beam)).toBeLessThan(0.003 * beam);
			}
	});

	it("refuse a period upside down, too long, or NaN", () => {
		expect(() => clearSamples(site(0), 3, { from: day(1), to: day(0) })).toThrow("period");
		expect(() => clearSamples(site(0), 3, { from: day(0), to: day(500) })).toThrow("period");
		expect(() => clearSamples(site(0), 3, { from: Number.NaN, to: day(1) })).toThrow("period");
	});
});

describe("bestTilt", () => {
	it("is as good as any whole degree tried by the plain functions over the whole period", () => {
		for (const latitude of [-35, 10, 40, 75])
			for (const period of periods.slice(1, 3)) {
				const place = site(latitude);
				const instants = everyInstant(place, period);
				const best = bestTilt(place, clearSamples(place, 3, period));
				if (!best) throw new Error("there is sun in June");
				const total = (tilt: number) =>
					instants.reduce(
						(sum, now) => sum + planeIrradiance(now, now, { ...best.plane, tilt }, place.albedo).total,
						0,
					);
				const most = Math.max(...Array.from({ length: 91 }, (_, degrees) => total(degrees * rad)));
				expect(total(best.plane.tilt)).toBeGreaterThan(most * 0.9999);
			}
	});

	it("faces the equator and mirrors between the hemispheres half a year apart", () => {
		const june = { from: day(151), to: day(181) };
		const december = { from: day(334), to: day(364) };
		const north = bestTilt(site(40), clearSamples(site(40), 3, december));
		const south = bestTilt(site(-40), clearSamples(site(-40), 3, june));
		expect(north?.plane.azimuth).toBe(Math.PI);
		expect(south?.plane.azimuth).toBe(0);
		expect(Math.abs(north!.plane.tilt - south!.plane.tilt)).toBeLessThan(1 * rad);
		expect(north!.dailyTotal).toBeGreaterThan(south!.dailyTotal); // the earth is nearer the sun
	});

	it("is near the latitude over a year, steeper in winter, flat under a summer sun that passes overhead", () => {
		const year = periods[3]!;
		for (const latitude of [15, 25, 40]) {
			const tilt = bestTilt(site(latitude), clearSamples(site(latitude), 3, year))!.plane.tilt;
			expect(Math.abs(tilt / rad - latitude)).toBeLessThan(5);
		}
		expect(bestTilt(site(10), clearSamples(site(10), 3, periods[1]!))!.plane.tilt).toBe(0);
	});

	it("has no answer in the polar night", () => {
		expect(bestTilt(site(-80), clearSamples(site(-80), 3, periods[1]!))).toBeUndefined();
	});
});
