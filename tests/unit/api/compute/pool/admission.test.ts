import { describe, expect, it } from "vitest";
import { admission } from "../../../../../api/compute/pool/admission.ts";
import { seeded } from "./queue.ts";

describe("a pool that keeps up", () => {
	it("lets a burst wait, up to a bound", () => {
		const gate = admission(2);
		gate.busyThreads(2, 0);
		expect(gate.admits(25, 700, 1)).toBe(true);
		expect(gate.admits(25, 800, 1)).toBe(false);
	});

	it("refuses next to nobody at four fifths of its capacity", () => {
		const { refused, arrived } = seeded({ threads: 2, load: 0.8, seconds: 300 });
		expect(refused / arrived).toBeLessThan(0.03);
	});
});

describe("a pool that is asked for four times what it can do", () => {
	const { refused, arrived, latencies, serviceMs } = seeded({ threads: 2, load: 4, seconds: 60 });

	it("answers what it can, and refuses the rest", () => {
		expect(refused / arrived).toBeGreaterThan(0.7);
		expect(refused / arrived).toBeLessThan(0.8);
	});

	it("answers what it accepts within three times what it takes itself", () => {
		const late = latencies.slice(100).toSorted((a, b) => a - b); // after the first burst
		expect(late[Math.floor(late.length * 0.99)]!).toBeLessThan(3 * serviceMs);
	});
});
