import { describe, expect, it } from "vitest";
import { type SunDayTask, sunDayProfile } from "../../../src/sky/sun-day-profile.ts";

const rad = Math.PI / 180;
const site = (latitude: number) => ({ latitude: latitude * rad, longitude: 0, elevation: 100, albedo: 0.2 });
const from = Date.UTC(2025, 5, 1) / 1000;
const task: SunDayTask = {
	time: Date.UTC(2025, 5, 21, 12) / 1000,
	turbidity: 3,
	plane: { tilt: 30 * rad, azimuth: Math.PI },
	step: 600,
	periods: [{ from, to: from + 30 * 86_400 }],
};

describe("sunDayProfile", () => {
	const profile = sunDayProfile(site(40), task);

	it("has noon in the middle row, the sun highest there, and midnight at both ends", () => {
		const { time, sunAltitude } = profile.columns;
		const middle = (time.length - 1) / 2;
		expect(time[middle]).toBe(profile.day.noon);
		expect(Math.max(...sunAltitude)).toBe(sunAltitude[middle]);
		expect(time[0]).toBe(profile.day.noon - 43_200);
		expect(time.at(-1)).toBe(profile.day.noon + 43_200);
	});

	it("adds up its columns to its daily sums", () => {
		const sum = (column: Float64Array) => column.reduce((total, value) => total + value, 0) * task.step;
		expect(sum(profile.columns.beam) / profile.trackedBeam).toBeCloseTo(1, 2);
		expect(sum(profile.columns.onPlane!.total) / profile.fixedPlane!.total).toBeCloseTo(1, 2);
	});

	it("gives the tracked aperture more beam than any fixed plane, and the best tilt the most in all", () => {
		expect(profile.trackedBeam).toBeGreaterThan(profile.fixedPlane!.beam * 1.2);
		expect(profile.bestTiltOfDay!.dailyTotal).toBeGreaterThanOrEqual(profile.fixedPlane!.total);
		expect(profile.trackedBeam / 1e6).toBeGreaterThan(30);
		expect(profile.trackedBeam / 1e6).toBeLessThan(45);
	});

	it("keeps its sums whatever the step of the columns", () => {
		const coarse = sunDayProfile(site(40), { ...task, step: 7200 });
		expect(coarse.trackedBeam).toBe(profile.trackedBeam);
		expect(coarse.columns.time).toHaveLength(13);
	});

	it("is silent about a plane that was not asked for", () => {
		const bare = sunDayProfile(site(40), { ...task, plane: undefined, periods: [] });
		expect(bare.columns.onPlane).toBeUndefined();
		expect(bare.fixedPlane).toBeUndefined();
		expect(bare.bestTilts).toEqual([]);
	});

	it("answers in the polar night with zeros and no best tilt", () => {
		const night = sunDayProfile(site(-75), task);
		expect(night.day.kind).toBe("alwaysDown");
		expect(night.trackedBeam).toBe(0);
		expect(night.fixedPlane).toEqual({ beam: 0, total: 0 });
		expect([night.bestTiltOfDay, ...night.bestTilts]).toEqual([undefined, undefined]);
	});

	it("follows the midnight sun all round", () => {
		const light = sunDayProfile(site(75), task);
		expect(light.day.kind).toBe("alwaysUp");
		expect(Math.min(...light.columns.beam)).toBeGreaterThan(0);
		expect(light.trackedBeam).toBeGreaterThan(profile.trackedBeam);
	});

	it("refuses a step that is none", () => {
		expect(() => sunDayProfile(site(40), { ...task, step: 0 })).toThrow("step");
		expect(() => sunDayProfile(site(40), { ...task, step: Number.NaN })).toThrow("step");
	});
});
