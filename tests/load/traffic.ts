import { operations } from "../../api/operations/index.ts";
import { uniformStream } from "../../src/numeric/random.ts";
import { addressOf } from "./address.ts";
import type { Question } from "./asked.ts";
import { sensitivity, varied, warmUp } from "./bodies.ts";

/** A request, and how it may be answered. */
export interface Sent {
	readonly question: Question;
	readonly expected: readonly number[]; // statuses
}

export const OVERLOADED = 503; // may come of any request that costs something
const LEFT = 0; // no answer: the client went away first

/** Requests as they come to a service in use: every example of the contract, fresh ones, mistakes, and callers who go away;
 *  the same for the same seed. */
export function* traffic(seed: number): Generator<Sent, never> {
	const uniform = uniformStream(seed);
	const pick = <T>(of: readonly T[]): T => of[Math.floor(uniform() * of.length)]!;
	for (let nth = 0; ; nth++) {
		const dice = uniform();
		const fresh = (job: { readonly path: string; readonly post: string }) =>
			post(job.path, varied(job.post, nth));
		if (dice < 0.6) yield { question: pick(gets), expected: [200, OVERLOADED] };
		else if (dice < 0.75) yield { question: pick(posts), expected: [200, OVERLOADED] };
		else if (dice < 0.85) yield { question: fresh(warmUp), expected: [200, OVERLOADED] };
		else if (dice < 0.87) yield { question: fresh(sensitivity), expected: [200, OVERLOADED] };
		else if (dice < 0.95) yield pick(mistakes);
		else
			yield {
				question: { ...fresh(pick([warmUp, sensitivity])), leaveAfter: 30 * uniform() },
				expected: [LEFT, 200, OVERLOADED],
			};
	}
}

const post = (path: string, body: string): Question => ({ method: "POST", path, body });

const gets: readonly Question[] = operations
	.filter(({ method }) => method === "get")
	.flatMap(({ path, examples }) =>
		Object.values(examples).map(({ value }) => ({ method: "GET", path: addressOf(path, value) })),
	);

const posts: readonly Question[] = operations
	.filter(({ method }) => method === "post")
	.flatMap(({ path, examples }) =>
		Object.values(examples).map(({ value }) => post(path, JSON.stringify(value))),
	);

const mistakes: readonly Sent[] = [
	{ question: { method: "GET", path: "/v1/boiling-point?elevationM=high" }, expected: [400] },
	{ question: { method: "GET", path: "/v1/nothing-here" }, expected: [404] },
	{ question: { method: "DELETE", path: warmUp.path }, expected: [405] },
	{ question: post(warmUp.path, "{"), expected: [400] },
	{ question: post(warmUp.path, '{"site":{"latitude":1e9},"__proto__":{}}'), expected: [400] },
	{ question: { ...post(warmUp.path, "<day/>"), type: "text/xml" }, expected: [415] },
	// A connection may end while the rest of its body is still coming, and would take with it whoever asked next on it.
	{
		question: { ...post(warmUp.path, `"${"x".repeat(300_000)}"`), alone: true },
		expected: [413, LEFT],
	},
];
