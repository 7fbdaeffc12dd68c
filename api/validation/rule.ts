import { ProblemError, type ProblemKind } from "../problem/problem.ts";

/** A request that keeps the contract and still cannot be answered. */
export interface RuleFault {
	readonly pointer: string;
	readonly code: "contradictory" | "impossible" | "out_of_range" | "too_large";
	readonly detail: string;
}

/** Finds the faults of one kind in a request that keeps the contract, or in what could be designed of it. Every rule is run,
 *  whatever the others find. A rule that looks at less than a whole warm-up serves the operations that ask for less. */
export type Rule<Request, Designs = unknown> = (request: Request, designs: Designs) => readonly RuleFault[];

export const contradictory = (pointer: string, detail: string): RuleFault => ({
	pointer,
	code: "contradictory",
	detail,
});

export const impossible = (pointer: string, detail: string): RuleFault => ({
	pointer,
	code: "impossible",
	detail,
});

export const outOfRange = (pointer: string, detail: string): RuleFault => ({
	pointer,
	code: "out_of_range",
	detail,
});

export const tooLarge = (pointer: string, detail: string): RuleFault => ({
	pointer,
	code: "too_large",
	detail,
});

/** A number as a person would say it. */
export const fourDigits = (value: number): string => String(Number(value.toPrecision(4)));

const KINDS: Readonly<Record<RuleFault["code"], ProblemKind>> = {
	contradictory: "contradictory",
	impossible: "impossible",
	out_of_range: "out-of-range",
	too_large: "too-large",
};

/** Ends a request that keeps the contract but contradicts itself or asks for the impossible, with every fault at once. */
export function refuseFaults(faults: readonly RuleFault[]): void {
	const [first] = faults;
	if (!first) return;
	const detail =
		faults.length === 1 ? first.detail : `${first.detail}; and ${faults.length - 1} more, see errors`;
	throw new ProblemError(
		KINDS[first.code],
		detail,
		faults.map((fault) => ({ in: "body", ...fault })),
	);
}
