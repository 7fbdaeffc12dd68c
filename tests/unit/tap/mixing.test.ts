import { describe, expect, it } from "vitest";
import { hotShare } from "../../../src/tap/mixing.ts";

describe("hotShare", () => {
	it("mixes half and half to the middle", () => {
		expect(hotShare(200, 100, 150)).toBe(0.5);
	});

	it("is all hot where the hot water is not hot enough", () => {
		expect(hotShare(140, 100, 150)).toBe(1);
		expect(hotShare(90, 100, 150)).toBe(1);
		expect(hotShare(150, 100, 150)).toBe(1);
	});

	it("is none where the mains is warm enough", () => {
		expect(hotShare(200, 150, 150)).toBe(0);
		expect(hotShare(200, 160, 150)).toBe(0);
	});

	it("does not jump as hot water cools through the wanted", () => {
		expect(hotShare(150.000001, 100, 150)).toBeCloseTo(1, 6);
	});
});
