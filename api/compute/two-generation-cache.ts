/** Values by name within bounded memory; the most recently used stay longest. */
export interface TwoGenerations<T> {
	/** The value of a name; reading it counts as use. */
	get(name: string, now?: number): T | undefined;
	put(name: string, value: T, now?: number): void;
	drop(name: string): void;
}

interface Bounds<T> {
	readonly room: number; // total weight
	readonly weightOf: (name: string, value: T) => number; // weight of one value; one above an eighth of the total is not stored
	readonly span?: number; // [ms] a value is kept at least, and twice that at most while others arrive; unlimited by default
}

/** Two generations instead of a queue: entries that are added or used go into the young one. When it reaches half the total weight,
 *  or its span ends, it becomes the old one, and old entries unused since are dropped. Each step is O(1); finding the oldest entry
 *  of one Map is not, as it walks over all entries deleted before it. */
export function twoGenerations<T>({
	room,
	weightOf,
	span = Number.POSITIVE_INFINITY,
}: Bounds<T>): TwoGenerations<T> {
	let young = new Map<string, T>();
	let old = new Map<string, T>();
	let weight = 0; // of the young generation
	let ends = Number.NEGATIVE_INFINITY; // [ms] when the young generation becomes old
	const drop = (name: string): void => {
		const value = young.get(name);
		if (value !== undefined) weight -= weightOf(name, value);
		young.delete(name);
		old.delete(name);
	};
	const put = (name: string, value: T, now = 0): void => {
		const own = weightOf(name, value);
		if (own > room / 8) return;
		drop(name);
		if (now >= ends || weight + own > room / 2) {
			old = now >= ends + span ? new Map() : young;
			young = new Map();
			weight = 0;
			ends = now + span;
		}
		young.set(name, value);
		weight += own;
	};
	const get = (name: string, now = 0): T | undefined => {
		const value = young.get(name);
		if (value !== undefined) return value;
		const before = old.get(name);
		if (before !== undefined) put(name, before, now);
		return before;
	};
	return { get, put, drop };
}
