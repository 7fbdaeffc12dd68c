const MOST_LOGIT = 0.7; // [-] a value this uncertain fills a third of the room between its limits; wider, and the mean would leave the value given

/** A value that errs by a factor: value·e^(deviation·score); its median is the value given.
 *  @param deviation  standard deviation of the logarithm [-], for small ones the relative standard deviation */
export function byFactor(value: number, deviation: number, score: number): number {
	return value * Math.exp(deviation * score);
}

/** A value that errs between limits it cannot pass: logit-normal, its median the value given and its slope there the deviation.
 *  At a limit, or beyond it, there is nothing to err by.
 *  @param deviation  standard deviation [of the value], far from the limits */
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
