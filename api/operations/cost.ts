import { ProblemError } from "../problem/problem.ts";

export type Body = Readonly<Record<string, unknown>>;

/** The field that makes a request expensive, and what to send instead. */
export type CostAdvice = readonly [pointer: string, advice: string];

/** Cost of an operation. A unit is about a millisecond of one core, rounded up from a measurement of the contract's examples. */
export interface Costs {
	readonly cost: number; // of a typical request
	readonly rangeCost?: number; // of one computation of a range, which needs at most `RANGE` of them
	readonly costFactor?: (body: Body) => number; // cost of a request relative to the typical one; 1 by default. The body may be unchecked
	readonly costAdvice?: (body: Body) => CostAdvice;
	readonly estimate?: (body: Body) => number; // replaces all of these for a composite operation
}

const RANGE = 40;

const STEP = 15e-6; // [s] computing time of one step of a day, measured
const MARGIN = 2; // [-] for slower machines

/** Refuses a range, after its first day, if the rest would exceed the computing time: a plant whose dish turns away and back
 *  all day takes ten times the typical number of steps.
 *  @param time   computing time allowed for one answer [s]
 *  @param days   days that the range computes at most
 *  @param steps  steps of the day as stated */
export function rangeWithin(time: number, days: number, steps: number): void {
	if (steps * days * STEP * MARGIN <= time) return;
	const detail = `The range needs about ${days} days of ${steps} steps each, which exceeds the computing time of ${time} s. Steps are short where the fluid nears a limit or the dish turns. Omit withRange, or send a longer stepS`;
	throw new ProblemError("too-large", detail, [
		{ in: "body", pointer: "/withRange", detail, code: "too_large" },
	]);
}

/** Requests up to this cost are computed in place: passing them to a thread would cost as much. */
export const LIGHT = 1;

/** Estimated cost of one request, before anything is computed. The measured cost of generated requests is within a factor of three;
 *  a plant whose dish turns away and back all day can take ten times as long. */
export function estimatedCost({ cost, rangeCost = 0, costFactor, estimate }: Costs, body: Body): number {
	if (estimate) return estimate(body);
	const range = body.withRange === true ? RANGE * rangeCost : 0;
	return Math.ceil((cost + range) * (costFactor?.(body) ?? 1));
}

/** The estimated cost of a checked request; one above the budget is refused, naming the field that makes it expensive. */
export function costWithin(budget: number, operation: Costs, body: Body): number {
	const cost = estimatedCost(operation, body);
	if (cost <= budget) return cost;
	const [pointer, advice] = mostExpensive(operation, body);
	const detail = `This request costs ${cost} units and the limit is ${budget}; ${advice}`;
	throw new ProblemError("too-large", detail, [{ in: "body", pointer, detail, code: "too_large" }]);
}

function mostExpensive({ estimate, costAdvice }: Costs, body: Body): CostAdvice {
	if (estimate) return ["/items", "send the items in several batches"];
	return costAdvice?.(body) ?? ["/withRange", "omit withRange"];
}
