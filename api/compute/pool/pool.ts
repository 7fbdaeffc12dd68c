import type { Piscina } from "piscina";
import type { Settings } from "../../config/settings.ts";
import type { Job } from "../../operations/operation.ts";
import { overloaded, ProblemError } from "../../problem/problem.ts";
import { isTimeout, problemOf, tooLong } from "../abandoned.ts";
import type { Compute } from "../answer-text.ts";
import { admission } from "./admission.ts";
import type { Task, TaskResult } from "./message.ts";

/** [cost units] What a new thread costs to start. Work that nobody waits for any more is let run for as long as that where it
 *  should end sooner: else a stranger who connects and leaves could keep us busy with starting threads. */
const RESTART = 300;
const UNIT = 2; // [ms] of a cost unit in a thread that shares its core
const HEAP = { maxOldGenerationSizeMb: 256, maxYoungGenerationSizeMb: 4 }; // of one thread; a single answer holds a few

export interface PoolOptions {
	readonly threads: number;
	readonly thread: URL; // the module each thread runs
	readonly execArgv?: readonly string[]; // how Node starts it; as this process was started unless given
	readonly settings: Settings;
	readonly onLoss: (error: unknown) => void; // told of a thread that ended with nothing to do
}

export interface Pool {
	readonly compute: Compute;
	/** Starts the threads, so that the first request need not wait for them. */
	start(): void;
	/** How many answers are being worked out, and how many wait. */
	depth(): { readonly running: number; readonly waiting: number };
	close(): Promise<void>;
}

interface Queued {
	readonly job: Job;
	readonly signal: AbortSignal;
	readonly resolve: (text: string) => void;
	readonly reject: (error: unknown) => void;
	readonly leave: () => void; // what its signal does while it is in the queue
}

/** Threads that work out costly answers, a bounded queue, and a way out for each of them. */
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
			threadsTaken();
		});
		return started;
	};

	/** Work that waits for its thread to start takes none: a start is no sign that more is asked than the threads can do. */
	function threadsTaken(): void {
		gate.threadsTaken(Math.max(0, running - (threads - ready)), performance.now());
	}

	function leave(waiting: Queued): void {
		const place = queue.indexOf(waiting);
		if (place < 0) return; // it runs already
		queue.splice(place, 1);
		waiting.reject(problemOf(waiting.signal));
	}

	function next(): void {
		while (running < threads && queue.length > 0) {
			running += 1;
			void runTask(piscina(), queue.shift()!, options.settings).then(() => {
				running -= 1;
				next();
			});
		}
		threadsTaken();
	}

	const compute: Compute = (job, signalOf) =>
		new Promise((resolve, reject) => {
			const before = queue.reduce((sum, other) => sum + other.job.cost, 0);
			if (!gate.admits(job.cost, before, performance.now()))
				return reject(overloaded("More is asked than can be worked out now"));
			const signal = signalOf();
			if (signal.aborted) return reject(problemOf(signal));
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

/** Runs one piece of work to its end, whatever that is, and tells whoever waits for it. Never rejects. */
async function runTask(
	piscina: Promise<Piscina<Task, TaskResult>>,
	work: Queued,
	settings: Settings,
): Promise<void> {
	const { job, signal, resolve, reject } = work;
	signal.removeEventListener("abort", work.leave);
	const { operation, type, input, given, cost } = job;
	const stop = new AbortController();
	let timer = setTimeout(() => {
		reject(tooLong());
		stop.abort();
	}, settings.computingTime * 1000); // whether or not anyone waits
	const onAbort = () => {
		reject(problemOf(signal));
		if (isTimeout(signal) || cost >= RESTART) return stop.abort();
		clearTimeout(timer);
		timer = setTimeout(() => stop.abort(), Math.min(RESTART * UNIT, settings.computingTime * 1000));
	};
	signal.addEventListener("abort", onAbort, { once: true });
	try {
		const errand = { operationId: operation.operationId, type, input, given, settings };
		const done = await (await piscina).run(errand, { signal: stop.signal });
		if ("text" in done) return resolve(done.text);
		if ("failure" in done) return reject(done.failure);
		const { kind, detail, errors, headers } = done.problem;
		reject(new ProblemError(kind, detail, errors, headers));
	} catch {
		reject(overloaded("The thread that worked out the answer was lost; another takes its place"));
	} finally {
		clearTimeout(timer);
		signal.removeEventListener("abort", onAbort);
	}
}
