import { describe, expect, it } from "vitest";
import { dayAxis } from "../../sdk/chart/day-axis.ts";

describe("hours of the local clock", () => {
	it("stand where the clock shows them", () => {
		const { minutes, hours } = dayAxis(
			["2025-01-15T08:30:00+01:00", "2025-01-15T09:30:00+01:00", "2025-01-15T11:10:00+01:00"],
			10,
		);
		expect(minutes).toEqual([0, 60, 160]);
		expect(hours).toEqual([
			{ at: 30, hour: 9 },
			{ at: 90, hour: 10 },
			{ at: 150, hour: 11 },
		]);
	});

	it("follow the clock when it is put forward", () => {
		// 30 March 2025, 02:00 in Berlin becomes 03:00
		const times = [
			"2025-03-30T00:00:00+01:00",
			"2025-03-30T01:00:00+01:00",
			"2025-03-30T03:00:00+02:00",
			"2025-03-30T04:00:00+02:00",
		];
		expect(dayAxis(times, 10).hours.map(({ at, hour }) => [at, hour])).toEqual([
			[0, 0],
			[60, 1],
			[120, 3],
			[180, 4],
		]);
	});

	it("are thinned to what fits", () => {
		const times = Array.from({ length: 25 }, (_, i) => new Date(Date.UTC(2025, 0, 1, i)).toISOString());
		expect(dayAxis(times, 5).hours.map(({ hour }) => hour)).toEqual([0, 6, 12, 18, 0]);
	});

	it.each([
		["2025-01-15T12:00:00Z", "2025-01-15T12:10:00Z", ["12:00", "12:05", "12:10"]],
		["2025-01-15T12:05:00Z", "2025-01-15T12:40:00Z", ["12:15", "12:30"]],
		["2025-01-15T10:20:00Z", "2025-01-15T12:10:00Z", ["10:30", "11:00", "11:30", "12:00"]],
		["2025-01-15T09:40:00Z", "2025-01-15T12:50:00Z", ["10:00", "11:00", "12:00"]],
	])("are split where the time from %s to %s is short", (start, end, marks) => {
		const { minutes, hours } = dayAxis([start, end], 10);
		const clock = (hour: number) =>
			new Date(Date.UTC(2025, 0, 15) + hour * 3_600_000).toISOString().slice(11, 16);
		expect(hours.map(({ hour }) => clock(hour))).toEqual(marks);
		for (const { at, hour } of hours)
			expect(at).toBeCloseTo(hour * 60 - (Date.parse(start) - Date.UTC(2025, 0, 15)) / 60_000, 9);
		expect(hours.at(-1)!.at).toBeLessThanOrEqual(minutes.at(-1)!);
	});
});
