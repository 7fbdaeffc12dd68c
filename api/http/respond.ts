import { type Deadline, deadline } from "../../sdk/limited.ts";
import { textOf } from "../compute/answer-text.ts";
import type { TwoGenerations } from "../compute/two-generation-cache.ts";
import { USUAL_SETTINGS } from "../config/settings.ts";
import type { Backlog } from "../operations/backlog.ts";
import { LIGHT } from "../operations/cost.ts";
import { jobFor } from "../operations/job.ts";
import { after, type Maybe, settled } from "../operations/maybe.ts";
import type { Job } from "../operations/operation.ts";
import { type Means, type MediaType, mediaTypes, type Operation } from "../operations/operation.ts";
import { pathNames } from "../operations/path.ts";
import { ProblemError } from "../problem/problem.ts";
import { queryOf } from "../wire/query.ts";
import type { AppOptions } from "./app-options.ts";
import type { ArrivingBodies } from "./arriving-bodies.ts";
import { jsonBody } from "./body.ts";
import { EMBEDDED, type Headers } from "./headers.ts";
import { preferredType } from "./negotiate.ts";
import { cacheControl, type EdgeContext } from "./reply.ts";
import { sendText, type Tagged, taggedText } from "./send.ts";

/** What all operations share. */
export interface SharedState {
	readonly memory: TwoGenerations<Tagged>; // of what a GET was answered that does not change: the same address gives the same bytes
	readonly arriving: ArrivingBodies;
	readonly backlog: Backlog; // of what is held for callers
}

/** Does work in the place that a request is given. */
export type Hold = <T>(work: () => Maybe<T>) => Maybe<T>;

/** Answers the requests for one operation, from query or body to bytes.
 *  @param hold  gives a request its place once all of it is there */
export function responder(
	operation: Operation,
	config: AppOptions,
	{ memory, arriving, backlog }: SharedState,
	hold: Hold,
): (c: EdgeContext) => Maybe<Response> {
	const { maxAge } = operation;
	const kept = cacheControl(maxAge, config.admit?.keysRequired ? "private" : "public"); // else a cache would answer who has no key
	const remembered = maxAge > 0 || operation.constant === true;
	const settings = config.settings ?? USUAL_SETTINGS;
	const offered = mediaTypes(operation);
	const headers = offered.length > 1 ? CHOSEN : ONLY;
	const names = pathNames(operation.path);
	const isQuery = operation.method === "get";
	return (c) => {
		const type = preferredType<MediaType>(c.req.header("accept"), offered);
		if (type === undefined)
			throw new ProblemError("not-acceptable", `This operation answers in ${offered.join(", ")}`);
		const name = remembered ? cacheName(c, type) : undefined;
		const known = name && memory.get(name);
		if (known) return hold(() => sendText(c, known, kept, headers[type], config.pack));
		const answered = (sent: unknown) => {
			const asked = jobFor(operation, type, sent, c.req.path, settings.computingBudget);
			return after(answerText(asked, c, config, { settings, backlog }), (text) => {
				const answer = maxAge > 0 ? taggedText(text) : { text, tag: undefined };
				if (name) memory.put(name, answer);
				return sendText(c, answer, kept, headers[type], config.pack);
			});
		};
		if (isQuery) return hold(() => answered(parametersOf(c, names)));
		return jsonBody(c.req, settings.bodyBytes, arriving).then((sent) => hold(() => answered(sent)));
	};
}

const LONGEST = 512; // [characters] of an address whose answer is remembered

/** What the same bytes are kept under: the address job, letter for letter, and the form wanted. */
function cacheName(c: EdgeContext, type: MediaType): string | undefined {
	const { url } = c.req;
	return url.length <= LONGEST ? `${type} ${url.slice(url.indexOf("/", 8))}` : undefined;
}

/** A GET's query, and beside it what stands in the path. */
function parametersOf(c: EdgeContext, names: readonly string[]): Readonly<Record<string, string | string[]>> {
	const query = queryOf(c.req.url);
	if (names.length === 0) return query;
	const doubled = names.filter((name) => Object.hasOwn(query, name));
	if (doubled.length > 0)
		throw new ProblemError(
			"invalid-request",
			`The query repeats what stands in the path: ${doubled.join(", ")}`,
			doubled.map((parameter) => ({
				in: "query",
				parameter,
				detail: `${parameter} stands in the path; the query may not hold it`,
				code: "unknown",
			})),
		);
	return { ...query, ...c.req.param() };
}

/** Works an answer out: in place where it is light, else wherever the deployment has costly work done, until it is done,
 *  takes too long, or the caller goes away. */
function answerText(
	job: Job,
	c: EdgeContext,
	config: AppOptions,
	{ settings, backlog }: Pick<Means, "settings" | "backlog">,
): Maybe<string> {
	const failed = (error: unknown) => config.onFailure(error, c.get("requestId"));
	const { compute } = config;
	let until: Deadline | undefined;
	const means: Means = {
		settings,
		backlog,
		failed,
		compute: (one) => {
			if (one.cost <= LIGHT || one.operation.composite || !compute) return textOf(one, means);
			return compute(one, () => {
				until ??= deadline(c.req.raw.signal, settings.computingTime * 1000);
				return until.signal;
			});
		},
	};
	const text = means.compute(job);
	return text instanceof Promise ? settled(text, () => until?.release()) : text;
}

type ByType = Readonly<Record<MediaType, Headers>>;

/** Headers of an answer of which there is one form. */
const ONLY: ByType = {
	"application/json": { "Content-Type": "application/json" },
	"image/svg+xml": { ...EMBEDDED, "Content-Type": "image/svg+xml" },
	"text/csv": { ...EMBEDDED, "Content-Type": "text/csv; charset=utf-8; header=present" },
};

/** And of one that the caller chose by Accept. */
const CHOSEN: ByType = {
	"application/json": { Vary: "Accept", ...ONLY["application/json"] },
	"image/svg+xml": { Vary: "Accept", ...ONLY["image/svg+xml"] },
	"text/csv": { Vary: "Accept", ...ONLY["text/csv"] },
};
