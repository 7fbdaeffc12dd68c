/** Something not known exactly. Its score is standard normal: 0 gives what was stated, ±1 a standard deviation to either side. */
export interface UncertainInput<Case> {
	readonly name: string;
	readonly at: (stated: Case, score: number) => Case;
	/** The one quantity through which it acts, where others act through the same one: a march then tells for all of them. */
	readonly through: ((of: Case) => number) | undefined;
}

/** Named numbers that a case comes to; NaN where there is none. */
export type Values = Readonly<Record<string, number>>;

/** What is asked about: answers of a case, each of them smooth as long as its margins keep their sign. */
export interface Question<Case> {
	readonly stated: Case;
	readonly central: Values; // of the case as stated
	readonly inputs: readonly UncertainInput<Case>[];
	readonly values: (of: Case) => Values; // answers and margins; this is what costs
	readonly answers: readonly Answer[];
}

export interface Answer {
	readonly name: string;
	readonly margins: readonly string[]; // distances from where it bends sharply; one side positive, the other negative
}
