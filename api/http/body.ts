import type { HonoRequest } from "hono";
import { overloaded, ProblemError } from "../problem/problem.ts";
import type { IncomingBodies } from "./incoming-bodies.ts";

const LONGEST = 200; // [characters] of a Content-Type header
const JSON_TYPE = /^application\/(?:[\w.-]+\+)?json$/;
const UTF_8 = /^charset\s*=\s*"?utf-8"?$/;

/** Whether a Content-Type is JSON in UTF-8. */
function isJson(type: string): boolean {
	if (type === "application/json") return true;
	if (type.length > LONGEST) return false;
	const [name = "", ...parameters] = type.split(";").map((part) => part.trim().toLowerCase());
	return JSON_TYPE.test(name) && parameters.every((parameter) => parameter === "" || UTF_8.test(parameter));
}

function tooLarge(limit: number): ProblemError {
	return new ProblemError(
		"payload-too-large",
		`The body exceeds the limit of ${limit} bytes; GET /v1/meta lists every limit`,
	);
}

/** The Content-Length of a body [bytes], infinity without one. Throws for headers that are refused, before a byte is read. */
function contentLength(request: HonoRequest, limit: number): number {
	const length = request.header("content-length");
	if (length !== undefined && !/^\d+$/.test(length))
		throw new ProblemError("length-required", "Content-Length must be a whole number of bytes");
	if (Number(length) > limit) throw tooLarge(limit);
	const encoding = request.header("content-encoding");
	if (encoding !== undefined && encoding.toLowerCase() !== "identity")
		throw new ProblemError(
			"unsupported-media-type",
			"A Content-Encoding of the body is not supported; send it uncompressed",
			[],
			{ "Accept-Encoding": "identity" },
		);
	const type = request.header("content-type");
	if (type === undefined || !isJson(type))
		throw new ProblemError(
			"unsupported-media-type",
			`Content-Type must be application/json in UTF-8; ${type === undefined ? "none was sent" : "another was sent"}`,
			[],
			{ "Accept-Post": "application/json" },
		);
	return length === undefined ? Number.POSITIVE_INFINITY : Number(length);
}

/** The text of a body, counted together with all other incoming bodies. */
async function bodyText(request: HonoRequest, limit: number, incoming: IncomingBodies): Promise<string> {
	const reader = request.raw.body?.getReader();
	const decoder = new TextDecoder();
	let text = "";
	let bytes = 0;
	let dropped = false;
	const body = incoming(() => {
		dropped = true;
		reader?.cancel().catch(() => undefined); // the client may have disconnected
	});
	try {
		for (;;) {
			const chunk = await reader?.read();
			if (dropped)
				throw overloaded("Too many request bodies are being received, and this one has taken longest");
			if (!chunk || chunk.done) return text + decoder.decode();
			bytes += chunk.value.byteLength;
			if (bytes > limit) {
				await reader?.cancel();
				throw tooLarge(limit);
			}
			text += decoder.decode(chunk.value, { stream: true });
			body.add(chunk.value.byteLength);
		}
	} finally {
		body.end();
	}
}

const SMALL = 16_384; // [bytes] a body no larger than the memory of its connection

/** The JSON body of a request. Of duplicate keys the last counts, as in JSON.parse.
 *  @param limit     bytes allowed
 *  @param incoming  limits the memory of all incoming bodies together */
export function jsonBody(request: HonoRequest, limit: number, incoming: IncomingBodies): Promise<unknown> {
	const length = contentLength(request, limit);
	return (length <= SMALL ? request.raw.text() : bodyText(request, limit, incoming)).then(
		parsed,
		interrupted,
	);
}

function parsed(text: string): unknown {
	try {
		return JSON.parse(text.charCodeAt(0) === 0xfeff ? text.slice(1) : text);
	} catch (error) {
		if (text.trim() === "") throw new ProblemError("malformed-json", "The body is empty; send a JSON object");
		throw new ProblemError("malformed-json", `The body is not JSON: ${parserMessage(error as SyntaxError)}`);
	}
}

/** An incomplete body: the client disconnected. */
function interrupted(error: unknown): never {
	throw error instanceof ProblemError
		? error
		: new ProblemError("abandoned", "The client disconnected before the body was complete");
}

/** The parser's message. Newer engines add line and column to the position; clients of every runtime get the same text. */
const parserMessage = ({ message }: SyntaxError): string => message.replace(/ \(line \d+ column \d+\)$/, "");
