export type Environment = Readonly<Record<string, string | undefined>>;

interface WholeNumber {
	readonly variable: string;
	readonly least: number;
	readonly most: number;
}

/** Reads variables out of an environment and remembers what is wrong with them; undefined is one that is not set. */
export interface Reader {
	wholeNumber(asked: WholeNumber): number | undefined;
	/** @param fits   what a value must look like
	 *  @param words  the same in words: `HOST must be …` */
	text(variable: string, fits: RegExp, words: string): string | undefined;
	/** Every fault found so far, a sentence each. */
	readonly faults: readonly string[];
}

export function reader(environment: Environment): Reader {
	const faults: string[] = [];
	const text: Reader["text"] = (variable, fits, words) => {
		const value = environment[variable];
		if (value === undefined || fits.test(value)) return value;
		faults.push(`${variable} must be ${words}, not "${value}"`);
		return undefined;
	};
	return {
		faults,
		text,
		wholeNumber: ({ variable, least, most }) => {
			const value = environment[variable];
			if (value === undefined) return undefined;
			const number = /^\d{1,9}$/.test(value) ? Number(value) : Number.NaN;
			if (number >= least && number <= most) return number;
			faults.push(`${variable} must be a whole number from ${least} to ${most}, not "${value}"`);
			return undefined;
		},
	};
}
