import { asked, type RaykettleOptions } from "../call.ts";
import type { Answer, Body } from "../method.ts";
import { RaykettleProblem } from "../problem.ts";

/** Why there is no answer. */
export type Trouble = "refused" | "barred" | "tooOften" | "busy" | "failed" | "offline" | "timeout";

export type Outcome =
	| { readonly kind: "answer"; readonly answer: Answer<"warmUpTank"> }
	| { readonly kind: "trouble"; readonly trouble: Trouble; readonly problem: RaykettleProblem | undefined };

const TROUBLES: Readonly<Record<number, Trouble>> = {
	200: "failed", // sent by something other than the service
	401: "barred",
	403: "barred",
	429: "tooOften",
	503: "busy",
};
const PATIENCE = 20_000; // [ms] timeout of the widget

/** Calls the service, and sorts failures by what the visitor can do about them. */
export async function ask(
	options: RaykettleOptions,
	body: Body<"warmUpTank">,
	signal: AbortSignal,
): Promise<Outcome> {
	try {
		const answer = await asked({ timeoutMs: PATIENCE, ...options }, "/v1/tank/warm-up", body, {
			signal,
		});
		return { kind: "answer", answer: answer as Answer<"warmUpTank"> };
	} catch (error) {
		if (signal.aborted) throw error;
		if (!(error instanceof RaykettleProblem))
			return { kind: "trouble", trouble: isTimeout(error) ? "timeout" : "offline", problem: undefined };
		const trouble = TROUBLES[error.status] ?? (error.status >= 500 ? "failed" : "refused");
		return { kind: "trouble", trouble, problem: error };
	}
}

const isTimeout = (error: unknown) => error instanceof DOMException && error.name === "TimeoutError";
