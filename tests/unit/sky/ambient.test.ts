import { describe, expect, it } from "vitest";
import { ambientThroughDay } from "../../../src/sky/ambient.ts";

const hour = 3600;

describe("ambientThroughDay", () => {
	it("is exact at its two extremes, on any day", () => {
		for (const day of [-1, 0, 1, 400]) {
			expect(ambientThroughDay(280, 301, day * 24 * hour + 6 * hour)).toBeCloseTo(280, 9);
			expect(ambientThroughDay(280, 301, day * 24 * hour + 15 * hour)).toBeCloseTo(301, 9);
		}
	});

	it("never leaves them, rises from dawn to mid-afternoon and falls through the night", () => {
		for (let t = 0; t < 24 * hour; t += 600) {
			const now = ambientThroughDay(280, 301, t);
			const next = ambientThroughDay(280, 301, t + 600);
			expect(now).toBeGreaterThanOrEqual(280);
			expect(now).toBeLessThanOrEqual(301);
			expect(next > now).toBe(t >= 6 * hour && t < 15 * hour);
		}
	});

	it("averages to the middle and has no jump", () => {
		let sum = 0;
		for (let t = 0; t < 24 * hour; t += 60) {
			sum += ambientThroughDay(280, 300, t);
			expect(Math.abs(ambientThroughDay(280, 300, t + 60) - ambientThroughDay(280, 300, t))).toBeLessThan(
				0.06,
			);
		}
		expect(sum / 1440).toBeCloseTo(290, 2);
	});
});
