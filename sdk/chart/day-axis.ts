/** A day's rows along a horizontal axis: minutes since the first row, and where the whole hours of the local clock stand. */
export interface DayAxis {
	readonly minutes: readonly number[];
	readonly hours: readonly { readonly at: number; readonly hour: number }[];
}

const MINUTE = 60_000; // [ms]

/** Minutes since local midnight as an ISO time with offset shows them on its face. */
export function clockMinutes(time: string): number {
	return Number(time.slice(11, 13)) * 60 + Number(time.slice(14, 16)) + Number(time.slice(17, 19)) / 60;
}

/** The axis of rows in ISO times with offset. Across a change of the clocks, hours stand where the clock shows them.
 *  @param most  hours that may be marked at most */
export function dayAxis(times: readonly string[], most: number): DayAxis {
	const instants = times.map((time) => Date.parse(time));
	const minutes = instants.map((instant) => (instant - instants[0]!) / MINUTE);
	const first = clockMinutes(times[0]!) / 60;
	const whole = new Map<number, number>(Number.isInteger(first) ? [[0, first]] : []);
	for (let i = 1; i < times.length; i++) {
		const start = clockMinutes(times[i]!) - (minutes[i]! - minutes[i - 1]!); // by the clock of the row's end
		for (let hour = Math.floor(start / 60 + 1e-9) + 1; hour * 60 <= clockMinutes(times[i]!) + 1e-9; hour++)
			whole.set(Math.round(minutes[i - 1]! + hour * 60 - start), (hour + 24) % 24);
	}
	const found = [...whole].map(([at, hour]) => ({ at, hour }));
	const every = [1, 2, 3, 4, 6, 12].find((step) => found.length / step <= most) ?? 12;
	return { minutes, hours: found.filter(({ hour }) => hour % every === 0) };
}
