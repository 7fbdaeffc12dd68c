/** A memory of what was put into it within the last `span` [ms]. */
export interface Recent<T> {
	get(id: string): T | undefined;
	put(id: string, value: T, now: number): void;
	drop(id: string): void;
}

/** Two generations instead of a queue: what is put goes into the young one; after a span, or when the young one is full, it
 *  becomes the old one and what was old goes at once. Each step is O(1) (finding the oldest entry of one Map is not: it walks
 *  over all that were deleted before it). Nothing goes sooner than a span after it was put, unless more than half of `most`
 *  others were put since. */
export function recent<T>(span: number, most: number): Recent<T> {
	let young = new Map<string, T>();
	let old = new Map<string, T>();
	let turns = Number.NEGATIVE_INFINITY; // [ms] when the young become old
	return {
		get: (id) => young.get(id) ?? old.get(id),
		put(id, value, now) {
			if (now >= turns || young.size >= most / 2) {
				old = now >= turns + span ? new Map() : young;
				young = new Map();
				turns = now + span;
			}
			old.delete(id);
			young.set(id, value);
		},
		drop(id) {
			young.delete(id);
			old.delete(id);
		},
	};
}
