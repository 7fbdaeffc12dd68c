import { getPosition } from "suncalc";

const CALLS = 50_000;
const WARM = 20;
const TIMED = 20;

function median(values: readonly number[]): number {
	const sorted = [...values].sort((a, b) => a - b);
	const middle = sorted.length >> 1;
	return sorted.length % 2 === 1 ? sorted[middle]! : (sorted[middle - 1]! + sorted[middle]!) / 2;
}

/** Median time of a job [ms]: 20 warm calls, then the median of 20. */
export async function medianTime(job: () => unknown): Promise<number> {
	for (let i = 0; i < WARM; i++) await job();
	const times: number[] = [];
	for (let i = 0; i < TIMED; i++) {
		const before = performance.now();
		await job();
		times.push(performance.now() - before);
	}
	return median(times);
}

/** The yardstick of this project's benchmarks: 50 000 sun positions in the same process [ms]. */
export function yardstick(): Promise<number> {
	const start = Date.UTC(2025, 0, 15);
	let sum = 0;
	return medianTime(() => {
		for (let i = 0; i < CALLS; i++) sum += getPosition(new Date(start + i * 60_000), 31.2, -7.9).altitude;
		return sum;
	});
}

/** One line of a benchmark: a job's cost as a ratio to a yardstick, against the most it may be. */
export interface Measured {
	readonly name: string;
	readonly ratio: number;
	readonly limit: number;
}

/** Prints the lines and sets the exit code to 1 where a ratio exceeds its limit. */
export function report(lines: readonly Measured[]): void {
	for (const { name, ratio, limit } of lines)
		console.log(`${ratio <= limit ? "ok  " : "OVER"} ${name}: ${ratio.toFixed(3)} (limit ${limit})`);
	if (lines.some(({ ratio, limit }) => !(ratio <= limit))) process.exitCode = 1;
}
