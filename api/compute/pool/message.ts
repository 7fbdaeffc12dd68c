import type { Settings } from "../../config/settings.ts";
import type { MediaType } from "../../operations/operation.ts";
import type { FieldFault, ProblemKind } from "../../problem/problem.ts";

/** A task for a thread: plain data that can be copied between threads. */
export interface Task {
	readonly operationId: string;
	readonly type: MediaType;
	readonly input: unknown;
	readonly sent: unknown;
	readonly settings: Settings;
}

/** The result of a task: the text of the answer, the problem of the request, or a server error. */
export type TaskResult =
	| { readonly text: string }
	| { readonly failure: unknown }
	| {
			readonly problem: {
				readonly kind: ProblemKind;
				readonly detail: string;
				readonly errors: readonly FieldFault[];
				readonly headers: Readonly<Record<string, string>>;
			};
	  };
