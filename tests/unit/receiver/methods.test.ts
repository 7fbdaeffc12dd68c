import { describe, expect, it } from "vitest";
import { receiverMethods } from "../../../src/receiver/methods.ts";
import { all, cavity, measured, openCoil } from "./receivers.ts";

describe("methods of a receiver", () => {
	it("name a source each", () => {
		for (const receiver of all)
			for (const method of receiverMethods(receiver, 423.15, 298.15))
				expect(method.source.length).toBeGreaterThan(10);
	});

	it("own up to a cavity cooler than those measured, and to lagging hotter than its table", () => {
		const stretched = (wall: number) =>
			receiverMethods(cavity, wall, 298.15)
				.filter((method) => method.outsideRange)
				.map((method) => method.name);
		expect(stretched(423.15)).toEqual(["receiver: free convection from the cavity"]);
		expect(stretched(773.15)).toEqual([]);
		expect(stretched(973)).toEqual(["receiver: lagging of rock wool pipe section"]);
		const bare = { ...openCoil, insulation: { ...openCoil.insulation, thickness: 0 } };
		expect(receiverMethods(bare, 1000, 298.15).some((method) => method.outsideRange)).toBe(false);
		expect(receiverMethods(measured, 900, 298.15)[0]!.outsideRange).toBe(false);
	});
});
