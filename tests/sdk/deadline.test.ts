import { setTimeout as pause } from "node:timers/promises";
import { expect, it } from "vitest";
import { deadline } from "../../sdk/limited.ts";

it("fires when the time is up, and says so", async () => {
	const { signal, release } = deadline(new AbortController().signal, 10);
	await pause(50);
	expect(signal.reason).toMatchObject({ name: "TimeoutError" });
	release();
});

it("fires when the caller leaves, or has left, with his reason", () => {
	const caller = new AbortController();
	const [before, released] = [deadline(caller.signal, 60_000), deadline(caller.signal, 60_000)];
	released.release();
	caller.abort("gone");
	const after = deadline(caller.signal, 60_000);
	expect([before.signal.reason, after.signal.reason]).toEqual(["gone", "gone"]);
	expect(released.signal.aborted).toBe(false);
	for (const one of [before, after]) one.release();
});

it("once let go of, fires no more", async () => {
	const { signal, release } = deadline(new AbortController().signal, 10);
	release();
	await pause(50);
	expect(signal.aborted).toBe(false);
});
