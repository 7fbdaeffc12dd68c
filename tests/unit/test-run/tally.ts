export const TRIALS = 200;
export const LEAST = 0.9 * TRIALS; // of trials whose 95 % interval holds the truth
export const MOST = 0.99 * TRIALS;
export const THERMOMETER = 0.1; // [K] standard deviation of a reading

interface Tally {
	held: number;
	halfWidth: number; // sum over trials, over the true value
}

/** How often an interval holds the truth, and how wide it is. */
export function tallied(
	interval: (seed: number) => { readonly low: number; readonly high: number },
	value: number,
) {
	const tally: Tally = { held: 0, halfWidth: 0 };
	for (let seed = 1; seed <= TRIALS; seed++) {
		const { low, high } = interval(seed);
		if (low <= value && value <= high) tally.held++;
		tally.halfWidth += (high - low) / 2 / value / TRIALS;
	}
	return tally;
}
