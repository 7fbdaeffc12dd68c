import { beforeEach, expect } from "vitest";
import { createApp } from "../../api/app.ts";
import { operations } from "../../api/operations/index.ts";
import { Problem } from "../../api/problem/problem.ts";
import { createRaykettle } from "../../sdk/index.ts";
import { IN_PROCESS_ONLY } from "./in-process-only.ts";

/** Failures of the service itself: a contract test that meets one it did not provoke must fail. */
export const failures: unknown[] = [];

interface Service {
	readonly request: (path: string, init?: RequestInit) => Promise<Response>;
	readonly fetch: (request: Request) => Promise<Response>;
}

const { SERVICE_URL } = process.env;

/** The real app: in process, or wherever SERVICE_URL says that it runs. */
export const app: Service = SERVICE_URL === undefined ? inProcess() : at(SERVICE_URL);

function inProcess(): Service {
	const { request, fetch } = createApp({
		indexPage: "<!doctype html><title>Raykettle</title>",
		onFailure: (error) => failures.push(error),
	});
	return { request: async (path, init) => request(path, init), fetch: async (request) => fetch(request) };
}

function at(place: string): Service {
	beforeEach(({ task, skip }) => {
		const reason = IN_PROCESS_ONLY.get(task.name);
		if (reason !== undefined) skip(reason);
	});
	return {
		request: (path, init) => fetch(new URL(path, place), init),
		fetch: (request) => {
			const { pathname, search } = new URL(request.url);
			return fetch(new Request(new URL(pathname + search, place), request));
		},
	};
}

/** The SDK on the real app: no mock between them. */
export const raykettle = createRaykettle({
	baseUrl: "http://service.test",
	fetch: (url, init) => app.fetch(new Request(url, init)),
});

/** A body held against the schema that the operation answers in. */
export function parsed(operationId: string, body: unknown): unknown {
	const operation = operations.find((candidate) => candidate.operationId === operationId);
	if (!operation) throw new Error(`no operation ${operationId}`);
	return operation.output.parse(body);
}

/** The problem in an answer, held against its schema and its headers. */
export async function problemIn(response: Response): Promise<Problem> {
	expect(response.headers.get("content-type")).toBe("application/problem+json");
	expect(response.headers.get("access-control-allow-origin")).toBe("*");
	expect(response.headers.get("cache-control")).toBe("no-store");
	const problem = Problem.parse(await response.json());
	expect(problem.status).toBe(response.status);
	expect(problem.requestId).toBe(response.headers.get("x-request-id"));
	return problem;
}

/** The problem that a GET is refused with. */
export async function refusal(url: string): Promise<Problem> {
	return problemIn(await app.request(url));
}
