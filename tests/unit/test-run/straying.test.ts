import { describe, expect, it } from "vitest";
import { threeHours } from "./runs.ts";
import { SEEDS, strays } from "./strays.ts";

describe("a caution of readings that stray", () => {
	it("comes of a thermometer that drifts by 0.03 K in a minute, and says by how much it does over the run", () => {
		const found = strays(threeHours, 0.03);
		expect(found.length / SEEDS).toBeGreaterThan(0.95);
		const mean = found.reduce((sum, x) => sum + x, 0) / found.length;
		const duration = ((threeHours.rows - 1) * threeHours.step) / 60;
		expect(mean / (0.03 * Math.sqrt(duration))).toBeCloseTo(1, 1);
	});
});
