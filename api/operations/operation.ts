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

/** One request that the contract shows and the tests send. For a GET the value holds the query. */
export interface Example {
	readonly summary: string;
	readonly value: Readonly<Record<string, unknown>>;
}

/** Media types other than JSON, rendered from the JSON answer. */
interface Forms<Input, Output> {
	chart(answer: Output, input: Input): string; // image/svg+xml
	table(answer: Output, input: Input): string; // text/csv
}

/** The media types of an operation's answer, the default first. */
export const MEDIA_TYPES = ["application/json", "image/svg+xml", "text/csv"] as const;

export type MediaType = (typeof MEDIA_TYPES)[number];

/** What an operation may use besides its input: the deployment's settings, and for a batch a way to compute its items. */
export interface Means {
	readonly settings: Settings;
	readonly backlog: Backlog; // counts the bytes of answers under assembly
	readonly compute: (job: Job) => Maybe<string>;
	readonly onFailure: (error: unknown) => void; // reports to the operator
}

/** What the contract states about an operation. It knows nothing of HTTP beyond method and path, so a batch or a thread can
 *  run it too. */
interface Description<Input extends z.ZodType, Output extends z.ZodType> extends Costs {
	readonly method: "get" | "post";
	readonly path: string; // `{id}` is a parameter of the input beside the query; an unknown value is 404
	readonly operationId: string;
	readonly tag: Tag;
	readonly summary: string;
	readonly description: string;
	readonly input: Input; // query of a GET, body of a POST
	readonly output: Output;
	readonly examples: Readonly<Record<string, Example>>;
	readonly maxAge: number; // how long a client may cache the answer of a GET [s]; 0 for never
	readonly constant?: true; // the answer never changes: computed once, though clients must revalidate
	readonly refusals?: readonly (404 | 422 | 503)[]; // statuses of a GET beyond 400; a POST has 422
	readonly forms?: Forms<z.output<Input>, z.output<Output>>;
	/** Assembles the text from other operations' answers, each already checked and rounded. */
	readonly composite?: (sent: unknown, means: Means) => Maybe<string>;
}

/** One operation of the service: its description and the function that answers it. */
export interface Operation extends Description<z.ZodType, z.ZodType> {
	/** @param request  checked, with defaults
	 *  @param sent     the raw request, which distinguishes a default from a choice */
	answer(request: unknown, sent: unknown, means: Means): Maybe<unknown>;
}

export const mediaTypes = ({ forms }: Operation) => (forms ? MEDIA_TYPES : (["application/json"] as const));

/** Fields that `operation` adds to every answer. */
type SharedFields = "assumed" | "cautions" | "methods";

type Body<Output extends z.ZodType> = Omit<z.input<Output>, SharedFields>;

/** The stages of an operation: designs, rules, plan, outcome, answer. */
interface Stages<Request, Designs, Plan, Outcome, Answer> {
	/** Designs made from a request before its rules are checked; rules and plan use them. */
	designs?(request: Request, sent: unknown): Designs;
	/** All rules run, and every fault is reported at once. */
	readonly rules?: readonly Rule<Request, Designs>[];
	/** The request in the core's terms, with its assumptions.
	 *  @param sent  the raw request */
	plan(request: Request, designs: Designs, sent: unknown): Completed<Plan>;
	/** The core's result. */
	outcome(plan: Plan, means: Means): Outcome;
	/** The outcome in wire names and units. */
	answer(plan: Plan, outcome: Outcome, request: Request): Answer;
	/** Further assumptions that the outcome depends on. */
	assumed?(outcome: Outcome): readonly Assumed[];
	/** Pointer prefixes of request fields that this operation does not use, so that no default is reported for them. */
	readonly unused?: readonly string[];
}

/** Cautions and methods, in the core's terms, for answers that have them. */
type Backing<Answer, Plan, Outcome> = ("cautions" extends keyof Answer
	? { cautions(plan: Plan, outcome: Outcome): readonly Caution[] }
	: { readonly cautions?: never }) &
	("methods" extends keyof Answer
		? { methods(plan: Plan, outcome: Outcome): readonly Method[] }
		: { readonly methods?: never });

type AnyBacking<Plan, Outcome> = Backing<{ cautions: unknown; methods: unknown }, Plan, Outcome>;

/** An operation in stages, whose types are checked against one another at compile time. */
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
		const assumptions = [
			...appliedDefaults(input, sent, request),
			...assumed,
			...(definition.assumed?.(outcome) ?? []),
		];
		return {
			...definition.answer(plan, outcome, request),
			assumed: assumptions.filter(({ pointer }) => !unused.some((start) => pointer.startsWith(start))),
			...(cautions && { cautions: cautions(plan, outcome).map(wireCaution) }),
			...(methods && { methods: methods(plan, outcome).map((method) => ({ ...method })) }),
		};
	};
	return { ...definition, answer } as Operation;
}

/** An operation in one step, without assumptions, cautions or methods. */
export function basicOperation<Input extends z.ZodType, Output extends z.ZodType>(
	definition: Description<Input, Output> & {
		answer(request: z.output<Input>, sent: unknown, means: Means): Maybe<z.input<Output>>;
	},
): Operation {
	return definition as Operation;
}

/** An operation with its request: all that its answer depends on. */
export interface Job {
	readonly operation: Operation;
	readonly type: MediaType;
	readonly input: unknown; // checked, with defaults
	readonly sent: unknown; // the raw request
	readonly cost: number; // as estimated [cost units]
}
