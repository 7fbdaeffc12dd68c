/** A linear scale from numbers to numbers. */
interface Scale {
	(value: number): number;
	/** Widens the domain to round values. */
	readonly nice: (count: number) => Scale;
	/** About that many round values of the domain. */
	readonly ticks: (count: number) => number[];
}

/** Takes the place of d3-scale in the widget's bundle, without its colours, formats and dates. */
export function scaleLinear([low, high]: [number, number], [from, to]: [number, number]): Scale {
	const scale = ((value) => from + ((value - low) / (high - low)) * (to - from)) as Scale;
	const widened = (count: number, before: number): Scale => {
		const step = roundStep(high - low, count);
		[low, high] = [clean(Math.floor(clean(low / step)) * step), clean(Math.ceil(clean(high / step)) * step)];
		return step === before ? scale : widened(count, step); // a wider domain can need a wider step
	};
	return Object.assign(scale, {
		nice: (count: number) => widened(count, 0),
		ticks: (count: number) => {
			const step = roundStep(high - low, count);
			const first = Math.ceil(clean(low / step));
			const length = Math.floor(clean(high / step)) - first + 1;
			return Array.from({ length }, (_, i) => clean((first + i) * step));
		},
	});
}

/** A number without the last digits, which are rounding errors. */
const clean = (value: number) => Number(value.toPrecision(12));

/** The step of 1, 2 or 5 times a power of ten that is closest, by ratio, to a part of a span. */
function roundStep(span: number, count: number): number {
	const power = 10 ** Math.floor(Math.log10(span / count));
	const ratio = span / count / power;
	return power * (ratio >= Math.sqrt(50) ? 10 : ratio >= Math.sqrt(10) ? 5 : ratio >= Math.SQRT2 ? 2 : 1);
}
