/** A day's rows along a horizontal axis: minutes since the first row, and the positions of the local hours. */
export interface DayAxis {
	readonly minutes: readonly number[];
	readonly hours: readonly { readonly at: number; readonly hour: number }[];
}

const MINUTE = 60_000; // [ms]

/** Minutes since local midnight of an ISO time with offset, by its local clock. */
export function clockMinutes(time: string): number {
	return Number(time.slice(11, 13)) * 60 + Number(time.slice(14, 16)) + Number(time.slice(17, 19)) / 60;
}

/** The axis of rows in ISO times with offset. Across a change of clocks, hours are where the clock shows them. A short period also marks
 *  halves, quarters or twelfths of hours.
 *  @param most  greatest number of marks */
export function dayAxis(times: readonly string[], most: number): DayAxis {
	const instants = times.map((time) => Date.parse(time));
	const minutes = instants.map((instant) => (instant - instants[0]!) / MINUTE);
	const grain = [5, 15, 30].find((step) => minutes.at(-1)! / step < 5) ?? 60; // [min]
	const first = clockMinutes(times[0]!) / grain;
	const whole = new Map<number, number>(Number.isInteger(first) ? [[0, first]] : []);
	for (let i = 1; i < times.length; i++) {
		const end = clockMinutes(times[i]!);
		const start = end - (minutes[i]! - minutes[i - 1]!); // by the clock at the row's end
		for (let mark = Math.floor(start / grain + 1e-9) + 1; mark * grain <= end + 1e-9; mark++)
			whole.set(Math.round(minutes[i - 1]! + mark * grain - start), mark);
	}
	const every = [1, 2, 3, 4, 6, 12].find((step) => whole.size / step <= most) ?? 12;
	return {
		minutes,
		hours: [...whole]
			.filter(([, mark]) => mark % every === 0)
			.map(([at, mark]) => ({ at, hour: ((mark * grain) / 60 + 24) % 24 })),
	};
}
