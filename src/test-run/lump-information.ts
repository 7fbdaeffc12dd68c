import { leastSquares } from "../numeric/least-squares.ts";
import type { Driver } from "./reduced-model.ts";
import type { Column } from "./run.ts";
import { innovationsOf, whitening } from "./whitening.ts";

/** Errors of the readings of a run. */
export interface Noise {
	readonly reading: number; // standard deviation of a measured heat content [J]
	readonly straying: number; // standard deviation of its drift from the model in a second [J]
}

/** Lower bounds of the standard errors of unbiased estimates of the lump's factors: the Cramér–Rao bound for a free level, known
 *  drivers, and Gaussian noise of known size.
 *  @returns  by driver, in the unit of its factor; undefined where drivers are proportional
 *  Source  Kay, Fundamentals of Statistical Signal Processing I (1993), ch. 3–4 (from memory)
 *  Check   the spread of seeded simulations of the complete plant, tests/unit/test-run/advice.test.ts */
export function leastErrors(
	time: Column,
	drivers: readonly Driver[],
	{ reading, straying }: Noise,
): Readonly<Partial<Record<Driver["name"], number>>> | undefined {
	const weights = whitening(time, (straying / reading) ** 2);
	const columns = drivers.map(({ column }) => innovationsOf(column, weights));
	const information = columns[0] && leastSquares(columns, columns[0]);
	if (!information) return undefined;
	return Object.fromEntries(
		drivers.map(({ name }, k) => [name, reading * Math.sqrt(information.inverse[k]![k]!)]),
	);
}
