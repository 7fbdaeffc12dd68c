const MOST_LOGIT = 0.7; // [-] such a value covers a third of the interval between its limits; with a wider spread the mean would differ from the given value

/** A log-normal value: value·e^(deviation·score); its median is the given value.
 *  @param deviation  standard deviation of the logarithm [-], for small values the relative standard deviation */
export function byFactor(value: number, deviation: number, score: number): number {
	return value * Math.exp(deviation * score);
}

/** A logit-normal value between two limits: its median is the given value and its slope there the deviation.
 *  A value at a limit or beyond has no spread.
 *  @param deviation  standard deviation [of the value], valid far from the limits */
export function betweenLimits(
	value: number,
	[low, high]: readonly [low: number, high: number],
	deviation: number,
	score: number,
): number {
	if (!(value > low && value < high)) return value;
	const odds = (value - low) / (high - value);
	const room = ((value - low) * (high - value)) / (high - low);
	const moved = odds * Math.exp(Math.min(deviation / room, MOST_LOGIT) * score);
	return low + ((high - low) * moved) / (1 + moved);
}
