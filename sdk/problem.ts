import { retryAfter } from "./retry.ts";
import type { components } from "./schema.d.ts";

export type Problem = components["schemas"]["Problem"];
export type FieldFault = components["schemas"]["FieldFault"];

/** Thrown when the service returns a problem instead of a result (RFC 9457), or when something else responds in its place. */
export class RaykettleProblem extends Error {
	override readonly name = "RaykettleProblem";
	readonly status: number;
	/** Stable name of the kind of problem, such as `urn:raykettle:problem:invalid-request`. */
	readonly type: string;
	readonly title: string;
	/** Every fault of the request, each with its place, a sentence and a code. */
	readonly errors: readonly FieldFault[];
	/** Id of the request, to quote in a report. */
	readonly requestId: string | undefined;
	/** Seconds until a retry makes sense, where the service states them. */
	readonly retryAfterS: number | undefined;

	constructor(response: Response, text: string) {
		const problem = read(text);
		const hint = response.ok ? "without JSON: is baseUrl right?" : response.statusText;
		super(problem.detail ?? `The service answered ${response.status} ${hint}`.trim());
		this.status = response.status;
		this.type = problem.type ?? "about:blank";
		this.title = problem.title ?? response.statusText;
		this.errors = problem.errors ?? [];
		this.requestId = problem.requestId ?? response.headers.get("x-request-id") ?? undefined;
		const wait = retryAfter(response.headers);
		this.retryAfterS = wait === undefined ? undefined : Math.ceil(wait / 1000);
	}
}

/** The result in a response; another page in the service's place would hold none. */
export function answerIn(response: Response, text: string): unknown {
	try {
		return JSON.parse(text);
	} catch {
		throw new RaykettleProblem(response, text);
	}
}

/** A proxy between client and service may respond in another format; then only the status is known. */
function read(text: string): Partial<Problem> {
	try {
		const body: unknown = JSON.parse(text);
		return typeof body === "object" && body !== null ? body : {};
	} catch {
		return {};
	}
}
