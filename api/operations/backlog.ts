/** How much of what was worked out is still held for callers. */
export interface Backlog {
	hold(bytes: number): void;
	release(bytes: number): void;
	/** Whether there is too much of it to begin anything new. */
	isFull(): boolean;
}

/** @param most  that may be held [bytes] */
export function backlogOf(most: number): Backlog {
	let held = 0;
	return {
		hold(bytes) {
			held += bytes;
		},
		release(bytes) {
			held -= bytes;
		},
		isFull: () => held > most,
	};
}

/** Nothing counts: where one answer at a time is worked out. */
export const BOUNDLESS = backlogOf(Number.POSITIVE_INFINITY);
