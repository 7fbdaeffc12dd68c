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
	/** Whether KEYS_REQUIRED is set, which makes no sense without the keys that another variable brings. */
	keysRequired(keys: string): boolean;
	/** Throws one sentence that names every fault found. */
	end(): void;
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
		text,
		keysRequired(keys) {
			const required = text("KEYS_REQUIRED", /^(?:true|false)$/, "true or false") === "true";
			if (required && environment[keys] === undefined)
				faults.push(`KEYS_REQUIRED needs ${keys}, which says who may ask`);
			return required;
		},
		end() {
			if (faults.length > 0) throw new Error(faults.join("; "));
		},
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
