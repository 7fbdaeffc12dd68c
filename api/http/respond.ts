import { type Deadline, deadline } from "../../sdk/limited.ts";
import { textOf } from "../compute/answer-text.ts";
import type { TwoGenerations } from "../compute/two-generation-cache.ts";
import { USUAL_SETTINGS } from "../config/settings.ts";
import type { Backlog } from "../operations/backlog.ts";
import { LIGHT } from "../operations/cost.ts";
import { jobFor } from "../operations/job.ts";
import { after, type Maybe, whenSettled } from "../operations/maybe.ts";
import type { Job } from "../operations/operation.ts";
import { type Means, type MediaType, mediaTypes, type Operation } from "../operations/operation.ts";
import { pathNames } from "../operations/path.ts";
import { ProblemError } from "../problem/problem.ts";
import { queryOf } from "../wire/query.ts";
import type { AppOptions } from "./app-options.ts";
import { jsonBody } from "./body.ts";
import { EMBEDDED, type Headers } from "./headers.ts";
import type { IncomingBodies } from "./incoming-bodies.ts";
import { preferredType } from "./negotiate.ts";
import { cacheControl, type EdgeContext } from "./reply.ts";
import { sendText, type Tagged, taggedText } from "./send.ts";

/** State shared by all operations. */
export interface SharedState {
	readonly memory: TwoGenerations<Tagged>; // cached answers of GETs that never change: the same address gives the same bytes
	readonly incoming: IncomingBodies;
	readonly backlog: Backlog; // bytes held for clients
}

/** Counts a request in flight while its work runs. */
export type Hold = <T>(work: () => Maybe<T>) => Maybe<T>;

/** Answers the requests of one operation, from query or body to bytes.
 *  @param hold  counts a request in flight once it has arrived completely */
export function responder(
	operation: Operation,
	config: AppOptions,
	{ memory, incoming, backlog }: SharedState,
	hold: Hold,
): (c: EdgeContext) => Maybe<Response> {
	const { maxAge } = operation;
	const caching = cacheControl(maxAge, config.admit?.keysRequired ? "private" : "public"); // a shared cache would answer requests without a key
	const cacheable = maxAge > 0 || operation.constant === true;
	const settings = config.settings ?? USUAL_SETTINGS;
	const offered = mediaTypes(operation);
	const headers = offered.length > 1 ? NEGOTIATED : FIXED;
	const names = pathNames(operation.path);
	const isQuery = operation.method === "get";
	return (c) => {
		const type = preferredType<MediaType>(c.req.header("accept"), offered);
		if (type === undefined)
			throw new ProblemError(
				"not-acceptable",
				`This operation returns ${offered.join(", ")}; send one of them in Accept`,
			);
		const name = cacheable ? cacheName(c, type) : undefined;
		const known = name && memory.get(name);
		if (known) return hold(() => sendText(c, known, caching, headers[type], config.pack));
		const respond = (sent: unknown) => {
			const job = jobFor(operation, type, sent, c.req.path, settings.computingBudget);
			return after(answerText(job, c, config, { settings, backlog }), (text) => {
				const answer = maxAge > 0 ? taggedText(text) : { text, tag: undefined };
				if (name) memory.put(name, answer);
				return sendText(c, answer, caching, headers[type], config.pack);
			});
		};
		if (isQuery) return hold(() => respond(parametersOf(c, names)));
		return jsonBody(c.req, settings.bodyBytes, incoming).then((sent) => hold(() => respond(sent)));
	};
}

const LONGEST = 512; // [characters] of an address whose answer is cached

/** The cache key of an answer: the complete address and the media type. */
function cacheName(c: EdgeContext, type: MediaType): string | undefined {
	const { url } = c.req;
	return url.length <= LONGEST ? `${type} ${url.slice(url.indexOf("/", 8))}` : undefined;
}

/** The query and path parameters of a GET. */
function parametersOf(c: EdgeContext, names: readonly string[]): Readonly<Record<string, string | string[]>> {
	const query = queryOf(c.req.url);
	if (names.length === 0) return query;
	const doubled = names.filter((name) => Object.hasOwn(query, name));
	if (doubled.length > 0)
		throw new ProblemError(
			"invalid-request",
			`The query repeats path parameters: ${doubled.join(", ")}`,
			doubled.map((parameter) => ({
				in: "query",
				parameter,
				detail: `${parameter} is a path parameter; omit it from the query`,
				code: "unknown",
			})),
		);
	return { ...query, ...c.req.param() };
}

/** Computes an answer: in place if it is light, else where the deployment computes expensive answers, until it is done, times out
 *  or the client disconnects. */
function answerText(
	job: Job,
	c: EdgeContext,
	config: AppOptions,
	{ settings, backlog }: Pick<Means, "settings" | "backlog">,
): Maybe<string> {
	const onFailure = (error: unknown) => config.onFailure(error, c.get("requestId"));
	const { compute } = config;
	let timeout: Deadline | undefined;
	const means: Means = {
		settings,
		backlog,
		onFailure,
		compute: (one) => {
			if (one.cost <= LIGHT || one.operation.composite || !compute) return textOf(one, means);
			return compute(one, () => {
				timeout ??= deadline(c.req.raw.signal, settings.computingTime * 1000);
				return timeout.signal;
			});
		},
	};
	const text = means.compute(job);
	return text instanceof Promise ? whenSettled(text, () => timeout?.release()) : text;
}

type ByType = Readonly<Record<MediaType, Headers>>;

/** Headers of an operation with one media type. */
const FIXED: ByType = {
	"application/json": { "Content-Type": "application/json" },
	"image/svg+xml": { ...EMBEDDED, "Content-Type": "image/svg+xml" },
	"text/csv": { ...EMBEDDED, "Content-Type": "text/csv; charset=utf-8; header=present" },
};

/** Headers of an operation whose media type depends on Accept. */
const NEGOTIATED: ByType = {
	"application/json": { Vary: "Accept", ...FIXED["application/json"] },
	"image/svg+xml": { Vary: "Accept", ...FIXED["image/svg+xml"] },
	"text/csv": { Vary: "Accept", ...FIXED["text/csv"] },
};
