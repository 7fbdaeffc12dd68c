/** Loaded into the service by `--import`, for runs that must see or do what no service should offer: tells the heap of each
 *  thread after a forced collection, and ends the pool's threads in the middle of their work. */
import { syncBuiltinESMExports } from "node:module";
import threads, { BroadcastChannel, isMainThread, Worker } from "node:worker_threads";

/** What the run asks, and what it is told. */
export type Order = "heaps" | "kill";
export type Told = { readonly heaps: readonly number[] } | { readonly killed: number };

const PATIENCE = 5000; // [ms] for threads that are busy
const channel = new BroadcastChannel("raykettle-load");

function heapAfterCollection(): number {
	globalThis.gc!();
	return process.memoryUsage().heapUsed;
}

if (isMainThread) listen(tracked());
else {
	channel.onmessage = () => channel.postMessage(heapAfterCollection());
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

function heaps(count: number): Promise<readonly number[]> {
	return new Promise((resolve) => {
		const found = [heapAfterCollection()];
		const done = () => {
			clearTimeout(timer);
			resolve(found);
		};
		const timer = setTimeout(done, PATIENCE);
		channel.onmessage = ({ data }) => {
			if (found.push(data as number) === count + 1) done();
		};
		channel.postMessage("tell");
		if (count === 0) done();
	});
}
