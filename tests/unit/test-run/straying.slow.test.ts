import { describe, expect, it } from "vitest";
import { sunsetDay, threeHours } from "./runs.ts";
import { SEEDS, strays } from "./strays.ts";

// How often the caution comes, over two hundred noises: rarely of scatter alone, and of a small drift the oftener the longer it
// goes on. straying.test.ts has a large drift.

describe("a caution of readings that stray", () => {
	it("comes by chance in some run of twenty that only scatters", () => {
		expect(strays(threeHours, 0).length / SEEDS).toBeLessThan(0.09); // 5 % and 2.6 standard deviations of 200 draws
		expect(strays(sunsetDay, 0).length / SEEDS).toBeLessThan(0.09);
	});

	it("comes the oftener the longer a small drift goes on", () => {
		const [short, long] = [threeHours, sunsetDay].map((plan) => strays(plan, 0.008).length / SEEDS);
		expect(short).toBeGreaterThan(0.25);
		expect(long).toBeGreaterThan(0.8);
	});
});
