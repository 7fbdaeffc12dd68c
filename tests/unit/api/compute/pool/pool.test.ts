import { setTimeout as pause } from "node:timers/promises";
import { afterAll, expect, it } from "vitest";
import { pool } from "../../../../../api/compute/pool/pool.ts";
import { USUAL_SETTINGS } from "../../../../../api/config/settings.ts";
import { boilingPoint } from "../../../../../api/operations/boiling-point.ts";

const threads = pool({
	threads: 1,
	thread: new URL("./thread.ts", import.meta.url),
	execArgv: ["--import", "tsx"],
	settings: USUAL_SETTINGS,
	onLoss: () => {},
});
afterAll(() => threads.close());

const never = new AbortController().signal;

/** Has a task done: the text that it answers with, or the problem or failure. */
const done = (task: string, signal = never, { ms = 0, cost = 20 } = {}) =>
	threads.compute(
		{ operation: boilingPoint, type: "application/json", input: {}, sent: { task, ms }, cost },
		() => signal,
	);
const outcome = (work: Promise<string>) => work.catch((error: unknown) => error);

it("answers, and passes on problems and failures as what they are", async () => {
	expect(await done("tea")).toBe("tea");
	expect(await outcome(done("refuse"))).toMatchObject({ kind: "impossible", headers: { "X-Why": "so" } });
	expect(await outcome(done("fail"))).toMatchObject({ name: "TypeError", message: "unforeseen" });
});

it("a thread that dies costs its own request alone: 503, and the next is answered", async () => {
	const work = ["a", "die", "b"].map((task) => outcome(done(task)));
	const [before, lost, after] = await Promise.all(work);
	expect([before, after]).toEqual(["a", "b"]);
	expect(lost).toMatchObject({ kind: "overloaded", headers: { "Retry-After": "1" } });
	expect(threads.depth()).toEqual({ running: 0, waiting: 0 });
});

it("stops work whose time is up", async () => {
	const begun = performance.now();
	const late = await outcome(done("spin", AbortSignal.timeout(100), { ms: 60_000 }));
	expect(late).toMatchObject({ kind: "overloaded", message: expect.stringContaining("too long") });
	expect(await done("next")).toBe("next"); // the thread is free again, a minute early
	expect(performance.now() - begun).toBeLessThan(30_000);
});

it("a caller who goes away: waiting work leaves the line, short work runs to its end, long work is stopped at once", async () => {
	const gone = new AbortController();
	const short = outcome(done("short", gone.signal, { ms: 300 }));
	const waiting = outcome(done("waiting", gone.signal, { ms: 60_000 }));
	expect(threads.depth()).toEqual({ running: 1, waiting: 1 });
	gone.abort();
	expect(threads.depth()).toEqual({ running: 1, waiting: 0 });
	for (const work of [short, waiting]) expect(await work).toMatchObject({ kind: "abandoned" });
	expect(threads.depth().running).toBe(1);

	const leaving = new AbortController();
	const long = outcome(done("long", leaving.signal, { ms: 60_000, cost: 1000 }));
	while (threads.depth().waiting > 0) await pause(5);
	leaving.abort();
	expect(await long).toMatchObject({ kind: "abandoned" });
	expect(await done("next")).toBe("next");
});

it("work that should be short and is not: stopped soon after its caller left", async () => {
	const gone = new AbortController();
	const endless = outcome(done("endless", gone.signal, { ms: 600_000, cost: 20 }));
	while (threads.depth().running === 0) await pause(5);
	gone.abort();
	expect(await endless).toMatchObject({ kind: "abandoned" });
	expect(await done("next")).toBe("next");
});

it("stops work at the computing limit, whether or not anyone times it", async () => {
	const hasty = pool({
		...{ threads: 1, thread: new URL("./thread.ts", import.meta.url), execArgv: ["--import", "tsx"] },
		...{ settings: { ...USUAL_SETTINGS, computingTime: 2 }, onLoss: () => {} },
	});
	const ask = (task: string, ms: number) =>
		hasty.compute(
			{ operation: boilingPoint, type: "application/json", input: {}, sent: { task, ms }, cost: 20 },
			() => never,
		);
	try {
		expect(await ask("first", 0)).toBe("first");
		expect(await outcome(ask("endless", 600_000))).toMatchObject({
			...{ kind: "overloaded", message: expect.stringContaining("too long") },
		});
		expect(await ask("next", 0)).toBe("next");
	} finally {
		await hasty.close();
	}
});

it("a thread that takes long to start, or is being replaced, turns nobody away", async () => {
	const slow = pool({
		...{ threads: 1, thread: new URL("./slow-thread.ts", import.meta.url), execArgv: ["--import", "tsx"] },
		...{ settings: USUAL_SETTINGS, onLoss: () => {} },
	});
	const ask = (task: string) =>
		outcome(
			slow.compute(
				{ operation: boilingPoint, type: "application/json", input: {}, sent: { task }, cost: 20 },
				() => never,
			),
		);
	const burst = (tasks: readonly string[]) => Promise.all(tasks.map(ask));
	try {
		const early = ask("early");
		await pause(500); // in which no thread is free, as none is there
		expect(await burst(["a", "b", "c"])).toEqual(["a", "b", "c"]);
		expect(await early).toBe("early");
		expect(await ask("die")).toMatchObject({ kind: "overloaded" });
		const late = ask("late");
		await pause(500);
		expect(await burst(["d", "e", "f"])).toEqual(["d", "e", "f"]);
		expect(await late).toBe("late");
	} finally {
		await slow.close();
	}
});

it("refuses at once what would wait too long", async () => {
	const callers = Array.from({ length: 60 }, () => new AbortController());
	const line = callers.map(({ signal }) => outcome(done("wait", signal, { ms: 5 })));
	const refused = await outcome(done("one more"));
	expect(refused).toMatchObject({ kind: "overloaded", headers: { "Retry-After": "1" } });
	expect(threads.depth().waiting).toBeLessThan(60);
	for (const caller of callers) caller.abort();
	await Promise.all(line);
});
