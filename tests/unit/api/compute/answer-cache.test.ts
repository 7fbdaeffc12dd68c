import { describe, expect, it } from "vitest";
import { answerCache } from "../../../../api/compute/answer-cache.ts";
import type { Compute } from "../../../../api/compute/answer-text.ts";
import { boilingPoint } from "../../../../api/operations/boiling-point.ts";
import type { Job } from "../../../../api/operations/operation.ts";
import { warmUp } from "../../../../api/operations/warm-up/route.ts";
import { ProblemError, type ProblemKind } from "../../../../api/problem/problem.ts";

const never = () => new AbortController().signal;
const asked = (sent: unknown, more: Partial<Job> = {}): Job => ({
	...{ operation: warmUp, type: "application/json", input: {}, cost: 20 },
	sent,
	...more,
});

/** A counted computation; `answers` says what each call in turn gives. */
function counted(answers: (call: number, job: Job) => string | ProblemKind) {
	const calls: Job[] = [];
	const compute: Compute = async (one) => {
		calls.push(one);
		await Promise.resolve();
		const answer = answers(calls.length, one);
		if (answer.startsWith("!")) throw new ProblemError(answer.slice(1) as ProblemKind, "no");
		return answer;
	};
	return { calls, compute };
}

describe("remembering", () => {
	it("works out the same request once, one after the other or at the same time", async () => {
		const { calls, compute } = counted((call) => `answer ${call}`);
		const ask = answerCache(compute, 1e6);
		const together = await Promise.all([1, 2, 3].map(() => ask(asked({ a: 1 }), never)));
		expect([...together, await ask(asked({ a: 1 }), never)]).toEqual(Array(4).fill("answer 1"));
		expect(calls).toHaveLength(1);
	});

	it("takes nothing else for the same", async () => {
		const { calls, compute } = counted((call) => `answer ${call}`);
		const ask = answerCache(compute, 1e6);
		const others = [
			asked({ a: 1 }),
			asked({ a: 2 }),
			asked({ a: "1" }),
			asked({ a: 1, b: 1 }),
			asked({ a: 1 }, { type: "text/csv" }),
			asked({ a: 1 }, { operation: boilingPoint }),
		];
		for (const one of others) await ask(one, never);
		expect(calls).toHaveLength(others.length);
	});

	it("remembers no problem, and tells it to all who waited", async () => {
		const { calls, compute } = counted((call) => ["!impossible", "!overloaded"][call - 1] ?? "later");
		const ask = answerCache(compute, 1e6);
		for (const kind of ["impossible", "overloaded"]) {
			const both = await Promise.allSettled([1, 2].map(() => ask(asked("y"), never)));
			for (const one of both) expect(one).toMatchObject({ reason: { kind } });
		}
		expect(calls).toHaveLength(2);
		expect(await ask(asked("y"), never)).toBe("later");
	});

	it("goes on with shared work until the last who waits has left, and stops it then", async () => {
		const signals: AbortSignal[] = [];
		const ask = answerCache((_asked, signal) => {
			signals.push(signal());
			return new Promise(() => {});
		}, 1e6);
		const callers = [1, 2, 3].map(() => new AbortController());
		const answers = callers.map(({ signal }) =>
			ask(asked("z"), () => signal).catch((error: unknown) => error),
		);
		for (const caller of callers.slice(0, 2)) caller.abort();
		expect(signals.map(({ aborted }) => aborted)).toEqual([false]);
		expect(await answers[0]).toMatchObject({ kind: "abandoned" });
		callers[2]!.abort();
		expect(signals.map(({ aborted }) => aborted)).toEqual([true]);
		for (const answer of answers) expect(await answer).toMatchObject({ kind: "abandoned" });

		void ask(asked("z"), never).catch(() => {});
		expect(signals.map(({ aborted }) => aborted)).toEqual([true, false]); // whoever comes later waits for work of his own
	});

	it("works out nothing for one who has left", async () => {
		const { calls, compute } = counted(() => "text");
		const gone = answerCache(compute, 1e6)(asked("w"), () => AbortSignal.abort());
		await expect(gone).rejects.toMatchObject({ kind: "abandoned" });
		expect(calls).toHaveLength(0);
	});

	it("keeps within its room: what was used last stays", async () => {
		const { calls, compute } = counted(() => "x".repeat(400));
		const ask = answerCache(compute, 10_000); // about eleven answers
		for (let i = 0; i < 100; i += 1) {
			await ask(asked("often"), never);
			await ask(asked(i), never);
		}
		expect(calls.filter(({ sent }) => sent === "often")).toHaveLength(1);
		expect(calls).toHaveLength(101);
		await ask(asked(0), never);
		expect(calls).toHaveLength(102); // forgotten long ago
	});

	it("does not let one answer push out all others, and keeps nothing where there is no room", async () => {
		const { calls, compute } = counted((_call, { sent }) => (sent === "huge" ? "x".repeat(5000) : "small"));
		const ask = answerCache(compute, 10_000);
		for (const sent of ["small", "huge", "huge", "small"]) await ask(asked(sent), never);
		expect(calls.map(({ sent }) => sent)).toEqual(["small", "huge", "huge"]);
		const none = counted(() => "text");
		const forgetful = answerCache(none.compute, 0);
		for (let i = 0; i < 2; i += 1) await forgetful(asked(1), never);
		expect(none.calls).toHaveLength(2);
	});
});
