import { leastSquares } from "../numeric/least-squares.ts";
import type { Driver } from "./reduced-model.ts";
import type { Column } from "./run.ts";
import { whitened, whitening } from "./whitened.ts";

/** What stands in the way of a fit. */
export interface Noise {
	readonly reading: number; // standard deviation of the heat content as read [J]
	readonly straying: number; // by which it strays from the model in a second, standard deviation [J]
}

/** Standard errors that no unbiased estimate of the lump's factors can beat: the Cramér–Rao bound for a free level, known
 *  drivers, and Gaussian noise of known size.
 *  @returns  by driver, in its factor's unit; undefined where drivers are proportional
 *  Source  Kay, Fundamentals of Statistical Signal Processing I (1993), ch. 3–4 (from memory)
 *  Check   the spread of seeded trials of the whole plant's simulation, tests/unit/test-run/advice.test.ts */
export function leastErrors(
	time: Column,
	drivers: readonly Driver[],
	{ reading, straying }: Noise,
): Readonly<Partial<Record<Driver["name"], number>>> | undefined {
	const weights = whitening(time, (straying / reading) ** 2);
	const columns = drivers.map(({ column }) => whitened(column, weights));
	const information = columns[0] && leastSquares(columns, columns[0]);
	if (!information) return undefined;
	return Object.fromEntries(
		drivers.map(({ name }, k) => [name, reading * Math.sqrt(information.inverse[k]![k]!)]),
	);
}
