import type { Settings } from "../../config/settings.ts";
import type { MediaType } from "../../operations/operation.ts";
import type { FieldFault, ProblemKind } from "../../problem/problem.ts";

/** What a thread is asked: plain data that can be copied between threads. */
export interface Task {
	readonly operationId: string;
	readonly type: MediaType;
	readonly input: unknown;
	readonly given: unknown;
	readonly settings: Settings;
}

/** What comes back: the text of the answer, the problem that the request met, or a failure of the service itself. */
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
