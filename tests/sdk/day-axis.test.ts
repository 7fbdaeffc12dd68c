import { describe, expect, it } from "vitest";
import { dayAxis } from "../../sdk/chart/day-axis.ts";

describe("hours of the local clock", () => {
	it("stand where the clock shows them", () => {
		const { minutes, hours } = dayAxis(
			["2025-01-15T08:30:00+01:00", "2025-01-15T09:30:00+01:00", "2025-01-15T10:00:00+01:00"],
			10,
		);
		expect(minutes).toEqual([0, 60, 90]);
		expect(hours).toEqual([
			{ at: 30, hour: 9 },
			{ at: 90, hour: 10 },
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
});
