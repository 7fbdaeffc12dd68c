import { setPriority } from "node:os";
import { parentPort, threadId } from "node:worker_threads";
import { BOUNDLESS } from "../../operations/backlog.ts";
import { operations } from "../../operations/index.ts";
import { problemFrom } from "../../problem/problem.ts";
import { textOf } from "../answer-text.ts";
import type { Task, TaskResult } from "./message.ts";

const NICE = 10; // gives way to the thread that answers callers

// Linux counts a thread as a process here, so this touches no other thread; elsewhere it would touch them all.
if (process.platform === "linux") setPriority(0, NICE);

parentPort?.postMessage(threadId); // it has started: the pool counts it among those that can work

/** Works out one answer. Whatever goes wrong is told, not thrown: a rejection means that the thread is gone. */
export default async function work({ operationId, settings, ...asked }: Task): Promise<TaskResult> {
	const operation = operations.find((candidate) => candidate.operationId === operationId)!;
	const means = { settings, backlog: BOUNDLESS, compute: refuse, failed: refuse };
	try {
		return { text: await textOf({ operation, cost: 0, ...asked }, means) };
	} catch (error) {
		const problem = problemFrom(error, operation.method === "post" ? "body" : "query");
		if (!problem) return { failure: error };
		const { kind, message: detail, errors, headers } = problem;
		return { problem: { kind, detail, errors, headers } };
	}
}

function refuse(): never {
	throw new Error("a composite operation does not run in a thread");
}
