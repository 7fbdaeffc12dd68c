/** Values by name within a bounded room; what was used last stays longest. */
export interface TwoGenerations<T> {
	/** The value of a name, which counts as used. */
	get(name: string, now?: number): T | undefined;
	put(name: string, value: T, now?: number): void;
	drop(name: string): void;
}

interface Room<T> {
	readonly room: number; // weight of all that is kept
	readonly weightOf: (name: string, value: T) => number; // of one value; one of more than an eighth of the room is not kept
	readonly span?: number; // [ms] that a value is kept at least, and twice that at most while others come; for good unless given
}

/** Two generations instead of a queue: what is put or used goes into the young one; when that fills half the room, or its span
 *  is over, it becomes the old one, and what was old and not used since goes. Each step is O(1) (finding the oldest entry of one
 *  Map is not: it walks over all that were deleted before it). */
export function twoGenerations<T>({
	room,
	weightOf,
	span = Number.POSITIVE_INFINITY,
}: Room<T>): TwoGenerations<T> {
	let young = new Map<string, T>();
	let old = new Map<string, T>();
	let weight = 0; // of the young
	let ends = Number.NEGATIVE_INFINITY; // [ms] when the young become old
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
