const DAY = 86_400; // [s]
const COLDEST = 6 * 3600; // [s] solar time, sunrise at the equinox; common practice, no source
const WARMEST = 15 * 3600; // [s] solar time; common practice, no source

/** Air temperature through a clear day: half a cosine up from dawn to mid-afternoon, half a cosine down to the next dawn.
 *  Dawn is fixed at 6:00; at 45° latitude it varies by ± 2 h, which hardly affects a collector in daytime.
 *  @param minimum,maximum  of the day [K]     @param solarTime  since solar midnight [s], any number of days
 *  @returns  [K], the minimum at 6:00 and the maximum at 15:00 exactly */
export function ambientThroughDay(minimum: number, maximum: number, solarTime: number): number {
	const sinceColdest = solarTime - COLDEST - DAY * Math.floor((solarTime - COLDEST) / DAY);
	const rise = WARMEST - COLDEST;
	const phase = sinceColdest < rise ? sinceColdest / rise : 1 + (sinceColdest - rise) / (DAY - rise);
	const warmth = (1 - Math.cos(Math.PI * phase)) / 2;
	return minimum * (1 - warmth) + maximum * warmth;
}
