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

/** Many operations in one request: each answered as if asked alone, in order, one budget over all. */
export const batchOf = (operations: readonly Operation[]) =>
	basicOperation({
		method: "post",
		path: "/v1/batch",
		operationId: "runBatch",
		tag: "Service",
		summary: "Many operations in one request",
		description: [
			`Up to ${LIMITS.batchItems.value} items, each with an operation and its body; per item its result or its problem, in the same order.`,
			"An item that fails leaves the others as they are. Their estimated cost is counted before anything is computed:",
			"beyond `computingBudget` of /v1/meta, which also lists what each operation costs, nothing is answered. A batch holds no batch.",
		].join("\n"),
		input: batchRequest(operations),
		output: BatchResponse,
		examples: {
			kettles: {
				summary: "Water at three elevations, one of them out of bounds",
				value: {
					items: [
						{ operation: "getBoilingPoint", body: { elevationM: 0 } },
						{ operation: "getBoilingPoint", body: { elevationM: 2350 } },
						{ operation: "getBoilingPoint", body: { elevationM: 99_000 } },
					],
				},
			},
			dish: {
				summary: "A dish's optics and the sun it would see",
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
		composite: (sent, means) => answersOf(operations, sent, means),
		answer: async (_request, sent, means) => JSON.parse(await answersOf(operations, sent, means)),
	});

/** The batch's answer as text, at once where all of it is light. The items' answers, which can be long, go into it as they are. */
function answersOf(operations: readonly Operation[], sent: unknown, means: Means): Maybe<string> {
	const { items } = sent as { readonly items: readonly Item[] }; // as sent: a checked copy would lose odd keys that an item's own check must see
	const { answers, keep, release } = collected(means);
	/** Answers from an item on, until one has to be waited for or the turn is over. */
	const from = (first: number): Maybe<string> => {
		let untilPause = TURN;
		for (let i = first; i < items.length; i++) {
			if (untilPause <= 0) return pause().then(() => from(i));
			const item = items[i]!;
			const operation = operationOf(operations, item);
			const answer = answered(operation, item, means);
			if (answer instanceof Promise) return answer.then((text) => from(keep(text)));
			keep(answer);
			untilPause -= operation.cost;
		}
		return `{"items":[${answers.join(",")}],"cost":${costOf(operations, items)}}`;
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

/** The items' answers, held for the caller until they are let go of. No more is kept than one answer may have, nor than there is
 *  room for: then nothing is answered. */
function collected({ settings: { answerBytes }, backlog }: Means) {
	const answers: string[] = [];
	let size = 0; // [bytes], a letter each
	/** @returns  how many there are */
	const keep = (text: string): number => {
		size += text.length;
		backlog.hold(text.length);
		if (size > answerBytes) throw tooLong(answerBytes);
		if (backlog.isFull()) throw overloaded("Too many answers wait for their callers to take them");
		return answers.push(text);
	};
	return { answers, keep, release: () => backlog.release(size) };
}

function tooLong(most: number): ProblemError {
	const detail = `The items' answers are longer than the ${most} bytes that one answer may have here; send them in several batches`;
	return new ProblemError("too-large", detail, [
		{ in: "body", pointer: "/items", detail, code: "too_large" },
	]);
}

const operationOf = (operations: readonly Operation[], item: Item) =>
	operations.find(({ operationId }) => operationId === item.operation)!;

/** What all items cost together. */
function costOf(operations: readonly Operation[], items: readonly Item[]): number {
	return items.reduce((sum, item) => sum + estimatedCost(operationOf(operations, item), item.body), 0);
}

const TURN = 10; // [cost units] of items between two pauses: some milliseconds

/** Lets requests that wait have their turn. */
const pause = () => new Promise<void>((resolve) => setTimeout(resolve, 0));

/** One item as the operation alone would answer it, a failure of the service itself among what it may answer. */
function answered(
	operation: Operation,
	{ body }: Item,
	{ settings, compute, onFailure }: Means,
): Maybe<string> {
	const isQuery = operation.method === "get";
	const refused = (error: unknown): string => {
		const known = problemFrom(error, isQuery ? "query" : "body");
		if (known?.kind === "abandoned") throw known;
		if (!known) onFailure(error);
		const answer = itemProblem(known ?? new ProblemError("internal", "The service failed on this item"));
		return JSON.stringify({ status: answer.status, problem: answer });
	};
	try {
		const sent = isQuery ? asParameters(body) : body;
		const job = jobFor(operation, "application/json", sent, operation.path, settings.computingBudget);
		const answer = after(compute(job), (text) => `{"status":200,"result":${text}}`);
		return answer instanceof Promise ? answer.catch(refused) : answer;
	} catch (error) {
		return refused(error);
	}
}

function itemProblem({ kind, message, errors }: ProblemError): ItemProblem {
	const { instance: _instance, requestId: _requestId, ...shared } = problem(kind, message, "", errors);
	return shared;
}

/** Parameters as a query would bring them: texts, or lists of texts. */
function asParameters(body: Item["body"]): Readonly<Record<string, unknown>> {
	const text = (value: unknown) =>
		typeof value === "number" || typeof value === "boolean" ? String(value) : value;
	const parameters: Record<string, unknown> = Object.create(null);
	for (const [name, value] of Object.entries(body))
		parameters[name] = Array.isArray(value) ? value.map(text) : text(value);
	return parameters;
}
