import { once } from "node:events";
import { connect } from "node:net";
import { text } from "node:stream/consumers";
import { Problem } from "../../../api/problem/problem.ts";
import type { Bound } from "../table.ts";
import { type Answer, ask, type Question } from "./ask.ts";

const ID = "asked-by-me";
const of = (question: Partial<Question>): Question => ({
	...{ name: "refused", method: "GET", path: "/v1/boiling-point?elevationM=0" },
	...question,
	headers: { ...question.headers, "X-Request-Id": ID },
});

/** What nginx refuses by itself while instances are there to be asked. */
export async function refusals(port: number, usual: Answer): Promise<readonly Bound[]> {
	const long = "x".repeat(20_000);
	const body = JSON.stringify({ long: "x".repeat(262_144) });
	const unparsable = await raw(port, "GET / HTTP/1.1\r\nHost: x\r\nX: \u0000\r\n\r\n");
	const judged = judging(usual);
	return [
		judged("a body too large", 413, await ask(port, of({ method: "POST", path: "/v1/tank/warm-up", body }))),
		judged("an address too long", 414, await ask(port, of({ path: `/${long}` }))),
		judged("a header too large", 431, await ask(port, of({ headers: { Cookie: long } }))),
		judged("an address of nginx's own", 404, await ask(port, of({ path: "/problem" }))),
		judged("what is not HTTP", 400, unparsable),
	];
}

/** A problem that the service itself told, for its headers. */
export const usualProblem = (port: number): Promise<Answer> => ask(port, of({ path: "/nothing-there" }));

/** What nginx says when every instance is gone. */
export async function refusalAlone(port: number, usual: Answer): Promise<Bound> {
	return judging(usual)("no instance left", 502, await ask(port, of({})));
}

/** What nginx says when whichever instance it asked sleeps on. */
export async function refusalByTime(port: number, usual: Answer): Promise<Bound> {
	return judging(usual)("no answer in time", 504, await ask(port, of({})));
}

const OF_THE_OCCASION = ["date", "server", "connection", "keep-alive", "content-length", "transfer-encoding"];
const OF_THE_PROBLEM = ["x-request-id", "retry-after"];

/** Tells whether nginx's own answer is what the service's would be: a problem, with the headers that the service's problems have. */
function judging(usual: Answer) {
	const expected = Object.entries(usual.headers).filter(
		([name]) => ![...OF_THE_OCCASION, ...OF_THE_PROBLEM].includes(name),
	);
	return (what: string, status: number, { status: got, headers, body }: Answer): Bound => {
		const problem = Problem.safeParse(parsed(body));
		const faults = [
			...(got === status ? [] : [`status ${got}`]),
			...(problem.success ? [] : [`no problem: ${body.toString("utf8", 0, 200)}`]),
			...(problem.data?.status === status ? [] : ["another status in the body"]),
			...(problem.data?.requestId === headers["x-request-id"] ? [] : ["not the request id of the header"]),
			...(status > 501 === "retry-after" in headers ? [] : ["Retry-After"]),
			...expected
				.filter(([name, value]) => headers[name] !== value)
				.map(([name, value]) => `${name}: ${headers[name]}, the service's: ${value}`),
		];
		return {
			name: `nginx itself refuses ${what} as the service would`,
			holds: faults.length === 0,
			found: faults.length === 0 ? `${got}, a problem with all headers` : faults.join("; "),
		};
	};
}

function parsed(body: Buffer): unknown {
	try {
		return JSON.parse(body.toString("utf8"));
	} catch {
		return undefined;
	}
}

/** Sends bytes that no client library would. */
async function raw(port: number, bytes: string): Promise<Answer> {
	const socket = connect(port, "127.0.0.1");
	await once(socket, "connect");
	socket.end(bytes);
	const [head = "", body = ""] = (await text(socket)).split("\r\n\r\n");
	const [first = "", ...lines] = head.split("\r\n");
	const headers = lines.map((line) => [
		line.split(": ")[0]!.toLowerCase(),
		line.split(": ").slice(1).join(": "),
	]);
	return {
		status: Number(first.split(" ")[1]),
		headers: Object.fromEntries(headers),
		body: Buffer.from(body),
	};
}
