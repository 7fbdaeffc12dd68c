import { admission } from "../../../../../api/compute/pool/admission.ts";
import { uniformStream } from "../../../../../src/numeric/random.ts";

interface Traffic {
	readonly threads: number;
	readonly load: number; // asked, as a share of what the threads can do
	readonly seconds: number;
}

const SERVICE = 20; // [ms] of each request, and its cost

/** Plays arrivals at random moments (a Poisson process) against the gate, with threads that take a fixed time for each. */
export function seeded({ threads, load, seconds }: Traffic) {
	const gate = admission(threads);
	const draw = uniformStream(1);
	const free = Array<number>(threads).fill(0); // [ms] when each thread has done all that it was given
	const starts: number[] = []; // [ms] of those that still wait
	const latencies: number[] = [];
	let [arrived, refused, taken] = [0, 0, 0];
	const events: number[] = []; // [ms] ends of work, in order
	for (let now = 0; now < seconds * 1000; now += (-Math.log(1 - draw()) * SERVICE) / (load * threads)) {
		while (events.length > 0 && events[0]! <= now) {
			const end = events.shift()!;
			while (starts.length > 0 && starts[0]! <= end) starts.shift();
			taken = free.filter((until) => until > end).length;
			gate.busyThreads(taken, end);
		}
		arrived += 1;
		if (!gate.admits(SERVICE, starts.length * SERVICE, now)) {
			refused += 1;
			continue;
		}
		const first = free.indexOf(Math.min(...free));
		const start = Math.max(now, free[first]!);
		free[first] = start + SERVICE;
		if (start > now) starts.push(start);
		events.push(start + SERVICE);
		events.sort((a, b) => a - b);
		latencies.push(start + SERVICE - now);
		gate.busyThreads(free.filter((until) => until > now).length, now);
	}
	return { arrived, refused, latencies, serviceMs: SERVICE };
}
