import { LIMITS } from "../config/limits.ts";
import { ProblemError } from "../problem/problem.ts";
import { bodyFaults } from "../validation/faults.ts";
import { queryFaults } from "../validation/query-faults.ts";
import { costWithin } from "./cost.ts";
import type { Job, MediaType, Operation } from "./operation.ts";
import { pathNames } from "./path.ts";

/** The checked input of an operation, with defaults. Throws one problem that names every fault.
 *  @param sent  the body of a POST, the parameters of a GET
 *  @param place  the requested path, for the detail of a 404 */
export function checkedInput(operation: Operation, sent: unknown, place: string): unknown {
	const read = operation.input.safeParse(sent);
	if (read.success) return read.data;
	const isQuery = operation.method === "get";
	const errors = isQuery
		? queryFaults(read.error, operation.input, sent as object)
		: bodyFaults(read.error, operation.input, sent);
	const more = errors.length === LIMITS.faultsListed.value ? " or more" : "";
	const names = pathNames(operation.path);
	const unknown = errors.find(({ parameter }) => parameter !== undefined && names.includes(parameter));
	if (unknown) throw new ProblemError("not-found", `There is nothing at ${place}: ${unknown.detail}`);
	const count = errors.length === 1 ? "one fault" : `${errors.length}${more} faults, the first of them`;
	const holder = isQuery ? "query" : "body";
	throw new ProblemError("invalid-request", `The ${holder} has ${count}: ${errors[0]?.detail}`, errors);
}

/** The job of a request to an operation, alone or in a batch: its input checked, its cost within the budget.
 *  @param place  the requested path, for the detail of a 404 */
export function jobFor(
	operation: Operation,
	type: MediaType,
	sent: unknown,
	place: string,
	budget: number,
): Job {
	const input = checkedInput(operation, sent, place);
	const cost = costWithin(budget, operation, sent as Readonly<Record<string, unknown>>);
	return { operation, type, input, sent, cost };
}
