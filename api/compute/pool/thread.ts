import { setPriority } from "node:os";
import { parentPort, threadId } from "node:worker_threads";
import { BOUNDLESS } from "../../operations/backlog.ts";
import { operations } from "../../operations/index.ts";
import { problemFrom } from "../../problem/problem.ts";
import { textOf } from "../answer-text.ts";
import type { Task, TaskResult } from "./message.ts";

const NICE = 10; // lower priority than the thread that serves requests

// On Linux this sets the priority of this thread alone; elsewhere it would set that of the process.
if (process.platform === "linux") setPriority(0, NICE);

parentPort?.postMessage(threadId); // the pool counts this thread as started

/** Computes one answer. Errors are returned, not thrown: a rejection means that the thread ended. */
export default async function work({ operationId, settings, ...job }: Task): Promise<TaskResult> {
	const operation = operations.find((candidate) => candidate.operationId === operationId)!;
	const means = { settings, backlog: BOUNDLESS, compute: refuse, onFailure: refuse };
	try {
		return { text: await textOf({ operation, cost: 0, ...job }, means) };
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
