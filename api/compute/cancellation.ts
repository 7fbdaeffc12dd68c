import { overloaded, ProblemError } from "../problem/problem.ts";

/** Whether a signal fired because of a timeout. */
export const isTimeout = ({ reason }: AbortSignal): boolean =>
	reason instanceof DOMException && reason.name === "TimeoutError";

export const computingTimeout = (): ProblemError =>
	overloaded("Computing the answer took too long and was stopped");

/** The problem for a request whose signal fired. */
export function cancellationProblem(signal: AbortSignal): ProblemError {
	return isTimeout(signal)
		? computingTimeout()
		: new ProblemError("abandoned", "The client disconnected before the answer was ready");
}
