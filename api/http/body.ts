import type { HonoRequest } from "hono";
import { overloaded, ProblemError } from "../problem/problem.ts";
import type { ArrivingBodies } from "./arriving-bodies.ts";

const LONGEST = 200; // [characters] of a Content-Type
const JSON_TYPE = /^application\/(?:[\w.-]+\+)?json$/;
const UTF_8 = /^charset\s*=\s*"?utf-8"?$/;

/** Whether a Content-Type is JSON's, in the one encoding that JSON has. */
function isJson(type: string): boolean {
	if (type === "application/json") return true;
	if (type.length > LONGEST) return false;
	const [name = "", ...parameters] = type.split(";").map((part) => part.trim().toLowerCase());
	return JSON_TYPE.test(name) && parameters.every((parameter) => parameter === "" || UTF_8.test(parameter));
}

function tooLarge(limit: number): ProblemError {
	return new ProblemError(
		"payload-too-large",
		`The body may hold at most ${limit} bytes; GET /v1/meta lists every limit`,
	);
}

/** The length of a body in bytes as its headers state it, else infinity. What they say may refuse it, before a byte is read. */
function lengthStated(request: HonoRequest, limit: number): number {
	const length = request.header("content-length");
	if (length !== undefined && !/^\d+$/.test(length))
		throw new ProblemError("length-required", "Content-Length must be a whole number of bytes");
	if (Number(length) > limit) throw tooLarge(limit);
	const encoding = request.header("content-encoding");
	if (encoding !== undefined && encoding.toLowerCase() !== "identity")
		throw new ProblemError(
			"unsupported-media-type",
			"A body in a Content-Encoding is not read; send it plain",
			[],
			{ "Accept-Encoding": "identity" },
		);
	const type = request.header("content-type");
	if (type === undefined || !isJson(type))
		throw new ProblemError(
			"unsupported-media-type",
			`Content-Type must be application/json, in utf-8; ${type === undefined ? "none was sent" : "another was sent"}`,
			[],
			{ "Accept-Post": "application/json" },
		);
	return length === undefined ? Number.POSITIVE_INFINITY : Number(length);
}

/** A body counted as it comes in, beside all others that are coming. */
async function countedText(request: HonoRequest, limit: number, arriving: ArrivingBodies): Promise<string> {
	const reader = request.raw.body?.getReader();
	const decoder = new TextDecoder();
	let text = "";
	let bytes = 0;
	let gaveWay = false;
	const arrival = arriving(() => {
		gaveWay = true;
		reader?.cancel().catch(() => undefined); // its sender may be gone already
	});
	try {
		for (;;) {
			const chunk = await reader?.read();
			if (gaveWay) throw overloaded("Too many bodies are coming in, and this one has taken longest");
			if (!chunk || chunk.done) return text + decoder.decode();
			bytes += chunk.value.byteLength;
			if (bytes > limit) {
				await reader?.cancel();
				throw tooLarge(limit);
			}
			text += decoder.decode(chunk.value, { stream: true });
			arrival.add(chunk.value.byteLength);
		}
	} finally {
		arrival.end();
	}
}

const SMALL = 16_384; // [bytes] of a body that takes no more room than the connection that it comes by

/** The JSON body of a request. Of a key given twice the last counts, as JSON.parse has it.
 *  @param limit     bytes that it may have
 *  @param arriving  bounds what all bodies that are coming take together */
export function jsonBody(request: HonoRequest, limit: number, arriving: ArrivingBodies): Promise<unknown> {
	const length = lengthStated(request, limit);
	return (length <= SMALL ? request.raw.text() : countedText(request, limit, arriving)).then(
		parsed,
		brokenOff,
	);
}

function parsed(text: string): unknown {
	try {
		return JSON.parse(text.charCodeAt(0) === 0xfeff ? text.slice(1) : text);
	} catch (error) {
		if (text.trim() === "")
			throw new ProblemError("malformed-json", "The body is empty; a JSON object is expected");
		throw new ProblemError("malformed-json", `The body is not JSON: ${wordsOf(error as SyntaxError)}`);
	}
}

/** A body that does not come to its end: its sender is gone, so nobody is at fault. */
function brokenOff(error: unknown): never {
	throw error instanceof ProblemError
		? error
		: new ProblemError("abandoned", "The caller went away before the body was whole");
}

/** What the parser found. Newer engines say the place twice, by position and by line and column; callers of every runtime read
 *  the same. */
const wordsOf = ({ message }: SyntaxError): string => message.replace(/ \(line \d+ column \d+\)$/, "");
