import { LIMITS } from "../../config/limits.ts";
import { overloaded, ProblemError, problem, problemFrom } from "../../problem/problem.ts";
import { estimatedCost } from "../cost.ts";
import { jobFor } from "../job.ts";
import { after, type Maybe, whenSettled } from "../maybe.ts";
import { basicOperation, type Means, type Operation } from "../operation.ts";
import { BatchResponse, batchRequest, type ItemProblem } from "./schema.ts";

interface Item {
	readonly operation: string;
	readonly body: Readonly<Record<string, unknown>>;
}

/** Many operations in one request: each is computed as if sent alone, in order, under one budget. */
export const batchOf = (operations: readonly Operation[]) =>
	basicOperation({
		method: "post",
		path: "/v1/batch",
		operationId: "runBatch",
		tag: "Service",
		summary: "Several operations in one request",
		description: [
			`Runs up to ${LIMITS.batchItems.value} items, each with an operation and its body. Each item returns its result or its problem, in the same order.`,
			"A failed item does not affect the others. The estimated cost of all items is checked before any is computed.",
			"A batch above `computingBudget` is refused as a whole; `/v1/meta` lists the cost of each operation. A batch cannot contain a batch.",
		].join("\n"),
		input: batchRequest(operations),
		output: BatchResponse,
		examples: {
			kettles: {
				summary: "Boiling points at three elevations, one of them out of bounds",
				value: {
					items: [
						{ operation: "getBoilingPoint", body: { elevationM: 0 } },
						{ operation: "getBoilingPoint", body: { elevationM: 2350 } },
						{ operation: "getBoilingPoint", body: { elevationM: 99_000 } },
					],
				},
			},
			dish: {
				summary: "Optics of a dish, and the position of the sun",
				value: {
					items: [
						{ operation: "getDishOptics", body: { dish: { diameterM: 1.8 } } },
						{
							operation: "getSunPosition",
							body: { latitude: 27.7, longitude: 85.3, elevationM: 1400, time: ["2025-01-15T06:00:00Z"] },
						},
					],
				},
			},
		},
		maxAge: 0,
		cost: 0, // its items' costs, by `estimate`
		estimate: (body) => costOf(operations, body.items as readonly Item[]),
		composite: (sent, means) => batchText(operations, sent, means),
		answer: async (_request, sent, means) => JSON.parse(await batchText(operations, sent, means)),
	});

/** The response as text, without a promise where every item is cheap. Item texts can be long and are inserted unparsed. */
function batchText(operations: readonly Operation[], sent: unknown, means: Means): Maybe<string> {
	const { items } = sent as { readonly items: readonly Item[] }; // unparsed: a parsed copy would lose unknown keys that the item's own schema must refuse
	const { texts, keep, release } = textStore(means);
	/** Runs items from an index on, until one returns a promise or the turn is over. */
	const from = (first: number): Maybe<string> => {
		let untilPause = TURN;
		for (let i = first; i < items.length; i++) {
			if (untilPause <= 0) return pause().then(() => from(i));
			const item = items[i]!;
			const operation = operationOf(operations, item);
			const answer = itemText(operation, item, means);
			if (answer instanceof Promise) return answer.then((text) => from(keep(text)));
			keep(answer);
			untilPause -= operation.cost;
		}
		return `{"items":[${texts.join(",")}],"cost":${costOf(operations, items)}}`;
	};
	try {
		const text = from(0);
		if (text instanceof Promise) return whenSettled(text, release);
		release();
		return text;
	} catch (error) {
		release();
		throw error;
	}
}

/** Keeps the texts of items until they are released. Refuses the whole batch when they exceed the size of one response or the
 *  memory for unsent responses. */
function textStore({ settings: { answerBytes }, backlog }: Means) {
	const texts: string[] = [];
	let size = 0; // [bytes], one per character
	/** @returns  number of texts kept */
	const keep = (text: string): number => {
		size += text.length;
		backlog.hold(text.length);
		if (size > answerBytes) throw tooLong(answerBytes);
		if (backlog.isFull()) throw overloaded("Too many responses wait for their clients to read them");
		return texts.push(text);
	};
	return { texts, keep, release: () => backlog.release(size) };
}

function tooLong(most: number): ProblemError {
	const detail = `The results of the items exceed the limit of ${most} bytes for one response; send fewer items per batch`;
	return new ProblemError("too-large", detail, [
		{ in: "body", pointer: "/items", detail, code: "too_large" },
	]);
}

const operationOf = (operations: readonly Operation[], item: Item) =>
	operations.find(({ operationId }) => operationId === item.operation)!;

/** Estimated cost of all items together. */
function costOf(operations: readonly Operation[], items: readonly Item[]): number {
	return items.reduce((sum, item) => sum + estimatedCost(operationOf(operations, item), item.body), 0);
}

const TURN = 10; // [cost units] of items between two pauses: some milliseconds

/** Gives waiting requests their turn. */
const pause = () => new Promise<void>((resolve) => setTimeout(resolve, 0));

/** Text of one item: the result or the problem that the operation alone would return, an internal failure included. */
function itemText(
	operation: Operation,
	{ body }: Item,
	{ settings, compute, onFailure }: Means,
): Maybe<string> {
	const isQuery = operation.method === "get";
	const problemText = (error: unknown): string => {
		const known = problemFrom(error, isQuery ? "query" : "body");
		if (known?.kind === "abandoned") throw known;
		if (!known) onFailure(error);
		const failure = itemProblem(
			known ?? new ProblemError("internal", "An internal error occurred in this item"),
		);
		return JSON.stringify({ status: failure.status, problem: failure });
	};
	try {
		const sent = isQuery ? queryParameters(body) : body;
		const job = jobFor(operation, "application/json", sent, operation.path, settings.computingBudget);
		const answer = after(compute(job), (text) => `{"status":200,"result":${text}}`);
		return answer instanceof Promise ? answer.catch(problemText) : answer;
	} catch (error) {
		return problemText(error);
	}
}

function itemProblem({ kind, message, errors }: ProblemError): ItemProblem {
	const { instance: _instance, requestId: _requestId, ...shared } = problem(kind, message, "", errors);
	return shared;
}

/** Parameters as in a query: texts, or lists of texts. */
function queryParameters(body: Item["body"]): Readonly<Record<string, unknown>> {
	const text = (value: unknown) =>
		typeof value === "number" || typeof value === "boolean" ? String(value) : value;
	const parameters: Record<string, unknown> = Object.create(null);
	for (const [name, value] of Object.entries(body))
		parameters[name] = Array.isArray(value) ? value.map(text) : text(value);
	return parameters;
}
