/** Bytes of answers that clients have not read yet. */
export interface Backlog {
	hold(bytes: number): void;
	release(bytes: number): void;
	/** Whether too much is held to accept new requests. */
	isFull(): boolean;
}

/** @param limit  bytes that may be held */
export function backlogOf(limit: number): Backlog {
	let held = 0;
	return {
		hold(bytes) {
			held += bytes;
		},
		release(bytes) {
			held -= bytes;
		},
		isFull: () => held > limit,
	};
}

/** Without limit: where one answer at a time is computed. */
export const BOUNDLESS = backlogOf(Number.POSITIVE_INFINITY);
