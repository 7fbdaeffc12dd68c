import type { WarmUpRequest } from "../schemas/warm-up-request.ts";

/** A request that keeps the contract and still cannot be answered. */
export interface RuleFault {
	readonly pointer: string;
	readonly code: "contradictory" | "impossible" | "out_of_range";
	readonly detail: string;
}

/** Finds the faults of one kind in a request that keeps the contract. Every rule is run, whatever the others find. */
export type Rule = (request: WarmUpRequest) => readonly RuleFault[];

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

/** A number as a person would say it. */
export const said = (value: number): string => String(Number(value.toPrecision(4)));
