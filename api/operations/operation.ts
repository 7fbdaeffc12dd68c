import type { z } from "@hono/zod-openapi";
import type { Caution, Method } from "../../src/index.ts";
import type { Settings } from "../config/settings.ts";
import { wireCaution } from "../parts/caution.ts";
import { type Rule, refuseFaults } from "../validation/rule.ts";
import { type Assumed, appliedDefaults, type Completed } from "../wire/defaults.ts";
import type { Backlog } from "./backlog.ts";
import type { Costs } from "./cost.ts";
import type { Maybe } from "./maybe.ts";

export type Tag = "Sun" | "Water" | "Dish" | "Loop" | "Tank" | "Plant" | "Service";

/** One request that the contract shows, and that the tests send. For a GET the value holds its query. */
export interface Example {
	readonly summary: string;
	readonly value: Readonly<Record<string, unknown>>;
}

/** An answer told in other forms than JSON, from what the JSON would say. */
interface Forms<Input, Output> {
	chart(answer: Output, input: Input): string; // image/svg+xml
	table(answer: Output, input: Input): string; // text/csv
}

/** The media types of an operation's answer, the one for no wish first. */
export const MEDIA_TYPES = ["application/json", "image/svg+xml", "text/csv"] as const;

export type MediaType = (typeof MEDIA_TYPES)[number];

/** What an operation may use besides its input: the deployment's settings, and for a batch a way to have its items answered. */
export interface Means {
	readonly settings: Settings;
	readonly backlog: Backlog; // counts what is put together for callers
	readonly compute: (asked: Job) => Maybe<string>;
	readonly failed: (error: unknown) => void; // tells the operator
}

/** What the contract says of an operation. It knows nothing of HTTP beyond its method and path, so a batch or a worker can
 *  run it as well. */
interface Description<Input extends z.ZodType, Output extends z.ZodType> extends Costs {
	readonly method: "get" | "post";
	readonly path: string; // `{id}` in it is a parameter that the input holds beside the query; no such thing is 404
	readonly operationId: string;
	readonly tag: Tag;
	readonly summary: string;
	readonly description: string;
	readonly input: Input; // query of a GET, body of a POST
	readonly output: Output;
	readonly examples: Readonly<Record<string, Example>>;
	readonly maxAge: number; // how long a caller may keep the answer of a GET [s]; 0 for never
	readonly constant?: true; // it never says anything else, and is worked out once, though a caller must ask each time
	readonly refusals?: readonly (404 | 422 | 503)[]; // what a GET can answer beyond the faults of any query; a POST has 422
	readonly forms?: Forms<z.output<Input>, z.output<Output>>;
	/** Puts the text together out of others' answers, each checked and rounded already, and does next to nothing itself. */
	readonly composite?: (sent: unknown, means: Means) => Maybe<string>;
}

/** One operation of the service: its description, and the plain function that answers it. */
export interface Operation extends Description<z.ZodType, z.ZodType> {
	/** @param request  checked and with its defaults filled in
	 *  @param sent  the request as it came, to tell a default from a choice */
	answer(request: unknown, sent: unknown, means: Means): Maybe<unknown>;
}

export const mediaTypes = ({ forms }: Operation) => (forms ? MEDIA_TYPES : (["application/json"] as const));

/** What every operation's answer is given alike, so that none states it itself. */
type Alike = "assumed" | "cautions" | "methods";

type Body<Output extends z.ZodType> = Omit<z.input<Output>, Alike>;

/** How an operation is answered: a request is judged, planned, computed and put into the words of the wire. */
interface Stages<Request, Designs, Plan, Outcome, Answer> {
	/** What can be designed of a request before it is known to be sound: for its rules to judge, and for its plan. */
	designs?(request: Request, sent: unknown): Designs;
	/** All are run, and every fault is reported at once. */
	readonly rules?: readonly Rule<Request, Designs>[];
	/** The request as the core takes it, and what had to be assumed for it.
	 *  @param sent  the request as it came */
	plan(request: Request, designs: Designs, sent: unknown): Completed<Plan>;
	/** What the core finds. */
	outcome(plan: Plan, means: Means): Outcome;
	/** The outcome in the words and units of the wire. */
	answer(plan: Plan, outcome: Outcome, request: Request): Answer;
	/** What the outcome was found with besides, and nobody stated. */
	assumed?(outcome: Outcome): readonly Assumed[];
	/** Starts of the pointers of what may stand in the request and plays no part here, so that nothing is assumed of it. */
	readonly unused?: readonly string[];
}

/** What an answer that has cautions or methods must state of them, in the words of the core. */
type Backing<Answer, Plan, Outcome> = ("cautions" extends keyof Answer
	? { cautions(plan: Plan, outcome: Outcome): readonly Caution[] }
	: { readonly cautions?: never }) &
	("methods" extends keyof Answer
		? { methods(plan: Plan, outcome: Outcome): readonly Method[] }
		: { readonly methods?: never });

type AnyBacking<Plan, Outcome> = Backing<{ cautions: unknown; methods: unknown }, Plan, Outcome>;

/** An operation in stages, its parts checked against one another at compile time. */
export function operation<Input extends z.ZodType, Output extends z.ZodType, Designs, Plan, Outcome>(
	definition: Description<Input, Output> &
		Stages<z.output<Input>, Designs, Plan, Outcome, Body<Output>> &
		Backing<z.input<Output>, Plan, Outcome>,
): Operation {
	const { input, rules = [], unused = [] } = definition;
	const { cautions, methods }: Partial<AnyBacking<Plan, Outcome>> = definition;
	const answer = (request: z.output<Input>, sent: unknown, means: Means) => {
		const designs = definition.designs?.(request, sent) as Designs;
		refuseFaults(rules.flatMap((rule) => rule(request, designs)));
		const { value: plan, assumed } = definition.plan(request, designs, sent);
		const outcome = definition.outcome(plan, means);
		const taken = [
			...appliedDefaults(input, sent, request),
			...assumed,
			...(definition.assumed?.(outcome) ?? []),
		];
		return {
			...definition.answer(plan, outcome, request),
			assumed: taken.filter(({ pointer }) => !unused.some((start) => pointer.startsWith(start))),
			...(cautions && { cautions: cautions(plan, outcome).map(wireCaution) }),
			...(methods && { methods: methods(plan, outcome).map((method) => ({ ...method })) }),
		};
	};
	return { ...definition, answer } as Operation;
}

/** An operation whose answer rests on nothing that was left out, and takes one step. */
export function basicOperation<Input extends z.ZodType, Output extends z.ZodType>(
	definition: Description<Input, Output> & {
		answer(request: z.output<Input>, sent: unknown, means: Means): Maybe<z.input<Output>>;
	},
): Operation {
	return definition as Operation;
}

/** An operation with its request, and all that its answer depends on. */
export interface Job {
	readonly operation: Operation;
	readonly type: MediaType;
	readonly input: unknown; // checked, with its defaults filled in
	readonly given: unknown; // as it came
	readonly cost: number; // as estimated [cost units]
}
