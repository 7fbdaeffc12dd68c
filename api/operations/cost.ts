import { ProblemError } from "../problem/problem.ts";

export type Body = Readonly<Record<string, unknown>>;

/** What makes a request expensive: a field, and what to send instead. */
export type CostAdvice = readonly [pointer: string, advice: string];

/** What an operation states of its cost. A unit is about a millisecond of one core, rounded up from a measurement of the
 *  contract's examples. */
export interface Costs {
	readonly cost: number; // of its usual request
	readonly rangeCost?: number; // of one computation of a range, of which a range takes at most `RANGE`
	readonly costFactor?: (body: Body) => number; // of a request, over the usual one; 1 unless stated. The body may not have been checked
	readonly costAdvice?: (body: Body) => CostAdvice;
	readonly estimate?: (body: Body) => number; // in place of all these, where an answer costs what others cost
}

const RANGE = 40;

const STEP = 15e-6; // [s] of one step of a day: measured
const MARGIN = 2; // for a slower machine

/** Refuses a range, once its first day is marched, where the rest would surely outlast the time for one answer: a plant whose
 *  dish turns away and back all day takes ten times the usual steps.
 *  @param time   for one answer [s]
 *  @param days   that the range works out at most
 *  @param steps  of the day as stated */
export function rangeWithin(time: number, days: number, steps: number): void {
	if (steps * days * STEP * MARGIN <= time) return;
	const detail = `The range would work out some ${days} days, and this plant's takes ${steps} steps, short ones wherever its fluid nears a limit or its dish turns: longer than the ${time} s that one answer may take here. Ask without a range, or for a longer step if yours is short`;
	throw new ProblemError("too-large", detail, [
		{ in: "body", pointer: "/withRange", detail, code: "too_large" },
	]);
}

/** What costs no more than this is worked out where it arrives: handing it to another thread would cost as much. */
export const LIGHT = 1;

/** Estimated cost of one request, before anything is computed. Measured cost of generated requests lies within some three times of
 *  it either way; a plant whose dish turns away and back all day can take ten times as long. */
export function estimatedCost({ cost, rangeCost = 0, costFactor, estimate }: Costs, body: Body): number {
	if (estimate) return estimate(body);
	const range = body.withRange === true ? RANGE * rangeCost : 0;
	return Math.ceil((cost + range) * (costFactor?.(body) ?? 1));
}

/** The estimated cost of a checked request; one beyond the budget is refused, with what makes it dear. */
export function costWithin(budget: number, operation: Costs, body: Body): number {
	const cost = estimatedCost(operation, body);
	if (cost <= budget) return cost;
	const [pointer, advice] = dearest(operation, body);
	const detail = `This request costs ${cost} units and one may cost ${budget}; ${advice}`;
	throw new ProblemError("too-large", detail, [{ in: "body", pointer, detail, code: "too_large" }]);
}

function dearest({ estimate, costAdvice }: Costs, body: Body): CostAdvice {
	if (estimate) return ["/items", "send the items in several batches"];
	return costAdvice?.(body) ?? ["/withRange", "ask for it without a range"];
}
