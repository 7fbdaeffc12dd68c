import { ProblemError, type ProblemKind } from "../problem/problem.ts";
import { sentenceAt } from "./schema-words.ts";

/** A request that keeps the contract and still cannot be answered. */
export interface RuleFault {
	readonly pointer: string;
	readonly code: "contradictory" | "impossible" | "out_of_range" | "too_large";
	readonly detail: string;
}

/** Finds the faults of one kind in a request that keeps the contract, or in the parts designed from it. Every rule runs,
 *  whatever the others find. A rule that needs only part of a request also serves operations with smaller requests. */
export type Rule<Request, Designs = unknown> = (request: Request, designs: Designs) => readonly RuleFault[];

/** A maker of faults of one code. A detail that begins with "must" gets the field's name as its subject. */
const faultOf =
	(code: RuleFault["code"]) =>
	(pointer: string, detail: string): RuleFault => ({
		pointer,
		code,
		detail: sentenceAt(pathOf(pointer), detail),
	});

export const contradictory = faultOf("contradictory");
export const impossible = faultOf("impossible");
export const outOfRange = faultOf("out_of_range");
export const tooLarge = faultOf("too_large");

/** The path of a pointer to a field of the contract, whose names need no escaping. */
const pathOf = (pointer: string): readonly PropertyKey[] =>
	pointer
		.split("/")
		.slice(1)
		.map((key) => (/^\d+$/.test(key) ? Number(key) : key));

/** A number for a sentence, to four digits. */
export const fourDigits = (value: number): string => String(Number(value.toPrecision(4)));

const KINDS: Readonly<Record<RuleFault["code"], ProblemKind>> = {
	contradictory: "contradictory",
	impossible: "impossible",
	out_of_range: "out-of-range",
	too_large: "too-large",
};

/** Refuses a request that keeps the contract but breaks a rule, with every fault at once. */
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
