/** An uncertain input. Its score is standard normal: 0 is the stated value, ±1 a standard deviation to either side. */
export interface UncertainInput<Case> {
	readonly name: string;
	readonly at: (stated: Case, score: number) => Case;
	/** Quantity through which it acts, where other inputs act through the same one: one simulation then covers all of them. */
	readonly through: ((of: Case) => number) | undefined;
}

/** Named results of a case; NaN where there is none. */
export type Values = Readonly<Record<string, number>>;

/** Answers of a case for which ranges are computed, each smooth as long as its margins keep their sign. */
export interface Question<Case> {
	readonly stated: Case;
	readonly central: Values; // of the stated case
	readonly inputs: readonly UncertainInput<Case>[];
	readonly values: (of: Case) => Values; // answers and margins; the expensive part
	readonly answers: readonly Answer[];
}

export interface Answer {
	readonly name: string;
	readonly margins: readonly string[]; // distances from points where it is not smooth; positive on one side, negative on the other
}
