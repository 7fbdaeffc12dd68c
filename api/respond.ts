import { acceptable } from "./accept.ts";
import { jsonBody } from "./body.ts";
import { type Asked, textOf } from "./compute.ts";
import type { Config } from "./config.ts";
import { LIGHT } from "./cost.ts";
import { askedFor } from "./input.ts";
import { type Means, type MediaType, mediaTypes, type Operation } from "./operation.ts";
import { pathNames } from "./path.ts";
import { ProblemError } from "./problem.ts";
import { queryOf } from "./query.ts";
import type { EdgeContext } from "./reply.ts";
import { type Settings, USUAL_SETTINGS } from "./settings.ts";
import { told } from "./told.ts";

/** Runs an operation for a request, from its query or body to its bytes. */
export async function answer(c: EdgeContext, operation: Operation, config: Config): Promise<Response> {
	const settings = config.settings ?? USUAL_SETTINGS;
	const offered = mediaTypes(operation);
	const type = acceptable<MediaType>(c.req.header("accept"), offered);
	if (type === undefined)
		throw new ProblemError("not-acceptable", `This operation answers in ${offered.join(", ")}`);
	const asked = await askedOf(c, operation, type, settings);
	const text = await worked(asked, c, config, settings);
	return told(c, text, operation.maxAge, { "Content-Type": CONTENT_TYPES[type] }, config.pack);
}

/** What a request asks: its input checked and within the budget, and beside it what was sent. */
async function askedOf(
	c: EdgeContext,
	operation: Operation,
	type: MediaType,
	{ bodyBytes, computingBudget }: Settings,
): Promise<Asked> {
	const given = operation.method === "get" ? parametersOf(c, operation) : await jsonBody(c.req, bodyBytes);
	return askedFor(operation, type, given, c.req.path, computingBudget);
}

/** A GET's query, and beside it what stands in the path. */
function parametersOf(c: EdgeContext, operation: Operation): Readonly<Record<string, string | string[]>> {
	const query = queryOf(c.req.url);
	const names = pathNames(operation.path);
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
	return names.length === 0 ? query : { ...query, ...c.req.param() };
}

/** Works an answer out: in place where it is light, else wherever the deployment has costly work done, until it is done,
 *  takes too long, or the caller goes away. */
function worked(asked: Asked, c: EdgeContext, config: Config, settings: Settings): Promise<string> {
	const failed = (error: unknown) => config.onFailure(error, c.get("requestId"));
	const inPlace = (one: Asked): Promise<string> => textOf(one, means);
	const { compute = inPlace } = config;
	let signal: AbortSignal | undefined;
	const means: Means = {
		settings,
		failed,
		compute: (one) => {
			if (one.cost <= LIGHT || one.operation.composite) return inPlace(one);
			signal ??= AbortSignal.any([c.req.raw.signal, AbortSignal.timeout(settings.computingTime * 1000)]);
			return compute(one, signal);
		},
	};
	return means.compute(asked);
}

const CONTENT_TYPES: Readonly<Record<MediaType, string>> = {
	"application/json": "application/json",
	"image/svg+xml": "image/svg+xml",
	"text/csv": "text/csv; charset=utf-8; header=present",
};
