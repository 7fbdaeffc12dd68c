import { overloaded, ProblemError } from "../problem/problem.ts";

/** Whether a signal fired because time was up. */
export const isTimeout = ({ reason }: AbortSignal): boolean =>
	reason instanceof DOMException && reason.name === "TimeoutError";

export const tooLong = (): ProblemError => overloaded("Working out the answer took too long and was stopped");

/** Why somebody no longer waits for an answer, as the problem that he would be told. */
export function problemOf(signal: AbortSignal): ProblemError {
	return isTimeout(signal)
		? tooLong()
		: new ProblemError("abandoned", "The caller went away before the answer was ready");
}
