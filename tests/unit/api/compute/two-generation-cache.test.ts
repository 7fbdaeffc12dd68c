import { expect, it } from "vitest";
import { twoGenerations } from "../../../../api/compute/two-generation-cache.ts";

const counting = (room: number, span?: number) =>
	twoGenerations<number>({ room, weightOf: () => 1, ...(span !== undefined && { span }) });

it("keeps what was put for a span at least, and for two at most once others come", () => {
	const memory = counting(1000, 100);
	memory.put("a", 1, 0);
	memory.put("b", 2, 99);
	memory.put("c", 3, 100);
	memory.put("d", 4, 199);
	expect([memory.get("c", 199), memory.get("d", 199)]).toEqual([3, 4]);
	memory.put("e", 5, 200);
	expect([memory.get("a", 200), memory.get("b", 200)]).toEqual([undefined, undefined]);
	memory.put("f", 6, 900); // long after
	expect(["a", "b", "c", "d", "e", "f"].map((name) => memory.get(name, 900))).toEqual([
		...Array(5).fill(undefined),
		6,
	]);
});

it("keeps the last half of its room whatever comes, and never more than its room", () => {
	for (let count = 1; count < 200; count++) {
		const memory = counting(10);
		for (let i = 0; i < count; i++) memory.put(`${i}`, i);
		const names = Array.from({ length: count }, (_, i) => i);
		// From the last on, as a name that is asked for counts as used and moves others out.
		const last = names.slice(-5).reverse();
		expect(last.map((i) => memory.get(`${i}`))).toEqual(last);
		expect(names.filter((i) => memory.get(`${i}`) !== undefined).length).toBeLessThanOrEqual(10);
	}
});

it("keeps longest what is used", () => {
	const memory = counting(8);
	memory.put("used", 1);
	memory.put("idle", 2);
	for (let i = 0; i < 50; i++) {
		memory.put(`${i}`, i);
		expect(memory.get("used")).toBe(1);
	}
	expect(memory.get("idle")).toBeUndefined();
});

it("counts weight, and keeps nothing that takes more than an eighth of the room", () => {
	const texts = twoGenerations<string>({ room: 800, weightOf: (name, text) => name.length + text.length });
	texts.put("a", "x".repeat(99));
	texts.put("b", "x".repeat(100));
	expect(texts.get("a")).toHaveLength(99);
	expect(texts.get("b")).toBeUndefined();
	for (let i = 0; i < 4; i++) texts.put(`${i}`, "x".repeat(99)); // half the room beside "a"
	expect(texts.get("a")).toHaveLength(99);
});

it("holds the latest value, and forgets at a word, in whichever half it is", () => {
	const memory = counting(1000, 100);
	memory.put("a", 1, 0);
	memory.put("x", 0, 100); // a is among the old now
	memory.put("a", 2, 110);
	expect(memory.get("a", 110)).toBe(2);
	memory.drop("a");
	expect(memory.get("a", 110)).toBeUndefined();
});
