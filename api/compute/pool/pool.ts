import type { Piscina } from "piscina";
import type { Settings } from "../../config/settings.ts";
import type { Job } from "../../operations/operation.ts";
import { overloaded, ProblemError } from "../../problem/problem.ts";
import type { Compute } from "../answer-text.ts";
import { cancellationProblem, computingTimeout, isTimeout } from "../cancellation.ts";
import { admission } from "./admission.ts";
import type { Task, TaskResult } from "./message.ts";

/** Cost of starting a thread [cost units]. Cancelled work that should end sooner than that may finish: otherwise a client that
 *  connects and disconnects could keep the service busy starting threads. */
const RESTART = 300;
const UNIT = 2; // [ms] duration of a cost unit in a thread that shares its core
const HEAP = { maxOldGenerationSizeMb: 256, maxYoungGenerationSizeMb: 4 }; // of one thread; a single answer needs a few MB

export interface PoolOptions {
	readonly threads: number;
	readonly thread: URL; // module that each thread runs
	readonly execArgv?: readonly string[]; // Node's arguments; those of this process by default
	readonly settings: Settings;
	readonly onLoss: (error: unknown) => void; // called when an idle thread ends
}

export interface Pool {
	readonly compute: Compute;
	/** Starts the threads ahead of the first request. */
	start(): void;
	/** Number of answers being computed and waiting. */
	depth(): { readonly running: number; readonly waiting: number };
	close(): Promise<void>;
}

interface Queued {
	readonly job: Job;
	readonly signal: AbortSignal;
	readonly resolve: (text: string) => void;
	readonly reject: (error: unknown) => void;
	readonly leave: () => void; // called by its signal while it is queued
}

/** Threads for expensive answers, with a bounded queue whose entries can be cancelled. */
export function pool(options: PoolOptions): Pool {
	const { threads } = options;
	const gate = admission(threads);
	const queue: Queued[] = [];
	let running = 0;
	let ready = 0; // threads that have started
	let started: Promise<Piscina<Task, TaskResult>> | undefined;
	const piscina = () => {
		started ??= startedThreads(options, (count) => {
			ready = count;
			countBusy();
		});
		return started;
	};

	/** Work that waits for its thread to start takes none: a start is no sign that more is asked than the threads can do. */
	function countBusy(): void {
		gate.busyThreads(Math.max(0, running - (threads - ready)), performance.now());
	}

	function leave(waiting: Queued): void {
		const place = queue.indexOf(waiting);
		if (place < 0) return; // already running
		queue.splice(place, 1);
		waiting.reject(cancellationProblem(waiting.signal));
	}

	function next(): void {
		while (running < threads && queue.length > 0) {
			running += 1;
			void runTask(piscina(), queue.shift()!, options.settings).then(() => {
				running -= 1;
				next();
			});
		}
		countBusy();
	}

	const compute: Compute = (job, signalOf) =>
		new Promise((resolve, reject) => {
			const before = queue.reduce((sum, other) => sum + other.job.cost, 0);
			if (!gate.admits(job.cost, before, performance.now()))
				return reject(overloaded("The service is at capacity"));
			const signal = signalOf();
			if (signal.aborted) return reject(cancellationProblem(signal));
			const waiting: Queued = { job, signal, resolve, reject, leave: () => leave(waiting) };
			queue.push(waiting);
			signal.addEventListener("abort", waiting.leave, { once: true });
			next();
		});

	return {
		compute,
		start: () => void piscina(),
		depth: () => ({ running, waiting: queue.length }),
		close: async () => (await started)?.destroy(),
	};
}

/** The package is read when the threads are: after the first light answers, which need neither.
 *  @param onReady  called with the number of threads that have started, whenever that changes */
async function startedThreads(
	options: PoolOptions,
	onReady: (count: number) => void,
): Promise<Piscina<Task, TaskResult>> {
	const { threads, thread, execArgv, onLoss } = options;
	const { Piscina } = await import("piscina");
	const piscina: Piscina<Task, TaskResult> = new Piscina({
		filename: thread.href,
		minThreads: threads,
		maxThreads: threads,
		idleTimeout: Number.POSITIVE_INFINITY,
		resourceLimits: HEAP,
		...(execArgv && { execArgv: [...execArgv] }),
	});
	let ready: readonly number[] = []; // ids
	const recount = (ids: readonly number[]) => {
		const present = new Set(piscina.threads.map(({ threadId }) => threadId));
		ready = ids.filter((id) => present.has(id));
		onReady(ready.length);
	};
	piscina.on("message", (id: number) => recount([...ready, id]));
	piscina.on("workerDestroy", () => queueMicrotask(() => recount(ready))); // it is taken off the list after this event
	return piscina.on("error", onLoss);
}

/** Runs one task to its end and settles the promise of its request. Never rejects. */
async function runTask(
	piscina: Promise<Piscina<Task, TaskResult>>,
	work: Queued,
	settings: Settings,
): Promise<void> {
	const { job, signal, resolve, reject } = work;
	signal.removeEventListener("abort", work.leave);
	const { operation, type, input, sent, cost } = job;
	const stop = new AbortController();
	let timer = setTimeout(() => {
		reject(computingTimeout());
		stop.abort();
	}, settings.computingTime * 1000); // whether or not a client waits
	const onAbort = () => {
		reject(cancellationProblem(signal));
		if (isTimeout(signal) || cost >= RESTART) return stop.abort();
		clearTimeout(timer);
		timer = setTimeout(() => stop.abort(), Math.min(RESTART * UNIT, settings.computingTime * 1000));
	};
	signal.addEventListener("abort", onAbort, { once: true });
	try {
		const task = { operationId: operation.operationId, type, input, sent, settings };
		const done = await (await piscina).run(task, { signal: stop.signal });
		if ("text" in done) return resolve(done.text);
		if ("failure" in done) return reject(done.failure);
		const { kind, detail, errors, headers } = done.problem;
		reject(new ProblemError(kind, detail, errors, headers));
	} catch {
		reject(overloaded("The thread that computed the answer ended unexpectedly; send the request again"));
	} finally {
		clearTimeout(timer);
		signal.removeEventListener("abort", onAbort);
	}
}
