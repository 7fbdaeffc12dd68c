/** Seeded stream of uniform numbers in [0, 1) (mulberry32): the same seed gives the same stream on every platform.
 *  Not for cryptography. Period 2³². */
export function uniformStream(seed: number): () => number {
	let state = seed >>> 0;
	return () => {
		state = (state + 0x6d2b79f5) >>> 0;
		let t = state;
		t = Math.imul(t ^ (t >>> 15), t | 1);
		t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
		return ((t ^ (t >>> 14)) >>> 0) / 4_294_967_296;
	};
}

/** Seeded stream of standard normal numbers (Box & Muller, Ann. Math. Stat. 29 (1958) 610–611). */
export function normalStream(seed: number): () => number {
	const uniform = uniformStream(seed);
	let spare = Number.NaN;
	return () => {
		if (!Number.isNaN(spare)) {
			const value = spare;
			spare = Number.NaN;
			return value;
		}
		const radius = Math.sqrt(-2 * Math.log(1 - uniform()));
		const angle = 2 * Math.PI * uniform();
		spare = radius * Math.sin(angle);
		return radius * Math.cos(angle);
	};
}
