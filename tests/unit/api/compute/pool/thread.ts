import { parentPort, threadId } from "node:worker_threads";
import type { Task, TaskResult } from "../../../../../api/compute/pool/message.ts";

parentPort?.postMessage(threadId); // it has started

/** A thread that does as it is told: the pool cares only for what comes back, and when. */
export default async function work({ sent }: Task): Promise<TaskResult> {
	const { task, ms = 0 } = sent as { readonly task: string; readonly ms?: number };
	if (task === "die") process.exit(3);
	if (task === "fail") return { failure: new TypeError("unforeseen") };
	if (task === "refuse")
		return { problem: { kind: "impossible", detail: "no", errors: [], headers: { "X-Why": "so" } } };
	const until = performance.now() + ms;
	while (performance.now() < until); // busy, as a march is: nothing but an end of the thread stops it
	return { text: task };
}
