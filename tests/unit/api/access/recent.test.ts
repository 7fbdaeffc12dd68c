import { expect, it } from "vitest";
import { recent } from "../../../../api/access/recent.ts";

it("keeps what was put for a span at least, and for two at most once others come", () => {
	const memory = recent<number>(100, 1000);
	memory.put("a", 1, 0);
	memory.put("b", 2, 99);
	memory.put("c", 3, 100);
	expect([memory.get("a"), memory.get("b"), memory.get("c")]).toEqual([1, 2, 3]);
	memory.put("d", 4, 200);
	expect([memory.get("a"), memory.get("b"), memory.get("c")]).toEqual([undefined, undefined, 3]);
	memory.put("e", 5, 900); // long after
	expect(["a", "b", "c", "d", "e"].map(memory.get)).toEqual([...Array(4).fill(undefined), 5]);
});

it("keeps the last half of `most` whatever comes, and never more than `most`", () => {
	const memory = recent<number>(1e9, 10);
	const kept = (upTo: number) =>
		Array.from({ length: upTo + 1 }, (_, i) => i).filter((i) => memory.get(`${i}`) !== undefined);
	for (let i = 0; i < 200; i++) {
		memory.put(`${i}`, i, i);
		const last = kept(i);
		expect(last.length).toBeLessThanOrEqual(10);
		expect(last.slice(-5)).toEqual(
			Array.from({ length: Math.min(5, i + 1) }, (_, k) => Math.max(0, i - 4) + k),
		);
	}
});

it("holds the latest value, and forgets at a word, in whichever half it is", () => {
	const memory = recent<number>(100, 1000);
	memory.put("a", 1, 0);
	memory.put("x", 0, 100); // a is among the old now
	memory.put("a", 2, 110);
	expect(memory.get("a")).toBe(2);
	memory.drop("a");
	expect(memory.get("a")).toBeUndefined();
});
