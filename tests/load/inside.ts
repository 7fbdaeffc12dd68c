/** Loaded into the service by `--import`, for runs that must see or do what no service should offer: tells the heap of each
 *  thread after a forced collection, and ends the pool's threads in the middle of their work. */
import { syncBuiltinESMExports } from "node:module";
import { getHeapCodeStatistics } from "node:v8";
import threads, { BroadcastChannel, isMainThread, threadId, Worker } from "node:worker_threads";

/** What the run asks, and what it is told. */
export type Order = "heaps" | "kill";
export type Told = { readonly heaps: readonly Heap[] } | { readonly killed: number };

/** What a thread holds after a forced collection; 0 is the main thread, and one that is started anew has a new number. */
export interface Heap {
	readonly thread: number;
	readonly bytes: number; // all it holds
	readonly code: number; // of which compiled functions [bytes]
}

const PATIENCE = 5000; // [ms] for threads that are busy
const CALL = "tell"; // all listen on one channel, so each hears the others' answers too
const channel = new BroadcastChannel("raykettle-load");

function heapAfterCollection(): Heap {
	globalThis.gc!();
	const code = getHeapCodeStatistics().code_and_metadata_size;
	return { thread: threadId, bytes: process.memoryUsage().heapUsed, code };
}

if (isMainThread) listen(tracked());
else {
	channel.onmessage = ({ data }) => {
		if (data === CALL) channel.postMessage(heapAfterCollection());
	};
	(channel as unknown as { unref(): void }).unref();
}

/** Every thread that is started from now on, as long as it lives. */
function tracked(): ReadonlySet<Worker> {
	const alive = new Set<Worker>();
	threads.Worker = class extends Worker {
		constructor(...given: ConstructorParameters<typeof Worker>) {
			super(...given);
			alive.add(this);
			this.once("exit", () => alive.delete(this));
		}
	};
	syncBuiltinESMExports();
	return alive;
}

function listen(alive: ReadonlySet<Worker>): void {
	process.on("message", async (order: Order) => {
		const told: Told = order === "kill" ? { killed: await kill(alive) } : { heaps: await heaps(alive.size) };
		process.send!(told);
	});
	process.channel!.unref();
	(channel as unknown as { unref(): void }).unref();
}

async function kill(alive: ReadonlySet<Worker>): Promise<number> {
	return (await Promise.all([...alive].map((worker) => worker.terminate()))).length;
}

function heaps(count: number): Promise<readonly Heap[]> {
	return new Promise((resolve) => {
		const own = heapAfterCollection();
		const found = new Map([[own.thread, own]]); // an answer to an earlier call may come late
		const done = () => {
			clearTimeout(timer);
			resolve([...found.values()]);
		};
		const timer = setTimeout(done, PATIENCE);
		channel.onmessage = ({ data }) => {
			const heap = data as Heap;
			if (found.set(heap.thread, heap).size === count + 1) done();
		};
		channel.postMessage(CALL);
		if (count === 0) done();
	});
}
