import { expect, it } from "vitest";
import { concurrencyLimit } from "../../../../api/access/concurrency-limit.ts";

const gate = () => {
	let open = () => {};
	const opened = new Promise<void>((resolve) => {
		open = resolve;
	});
	return { open, opened };
};

it("refuses what comes while the limit is in flight, without running it", async () => {
	const { check, hold: admit } = concurrencyLimit(2);
	const { open, opened } = gate();
	const running = [admit(() => opened), admit(() => opened)];
	let ran = false;
	const third = async () =>
		admit(() => {
			ran = true;
		});
	await expect(third()).rejects.toMatchObject({ kind: "overloaded", headers: { "Retry-After": "1" } });
	expect(ran).toBe(false);
	expect(check).toThrow("The limit of 2 requests in flight is reached");
	open();
	await Promise.all(running);
	expect(check).not.toThrow();
	expect(await admit(async () => "in")).toBe("in");
});

it("gives a place back when work fails", async () => {
	const { hold: admit } = concurrencyLimit(1);
	const failing = () => admit(() => Promise.reject(new Error("broken")));
	await expect(failing()).rejects.toThrow("broken");
	await expect(failing()).rejects.toThrow("broken");
});

it("takes no place for what is done at once", () => {
	const { hold: admit } = concurrencyLimit(1);
	expect([1, 2, 3].map((n) => admit(() => n))).toEqual([1, 2, 3]);
	expect(() =>
		admit(() => {
			throw new Error("broken");
		}),
	).toThrow("broken");
	expect(admit(() => 4)).toBe(4);
});
