import { expect } from "vitest";
import { createApp } from "../../api/app.ts";
import { Problem } from "../../api/problem.ts";
import { operations } from "../../api/routes/index.ts";
import { createRaykettle } from "../../sdk/index.ts";

/** Failures of the service itself: a contract test that meets one it did not provoke must fail. */
export const failures: unknown[] = [];

/** The real app, in process. */
export const app = createApp({
	indexPage: "<!doctype html><title>Raykettle</title>",
	onFailure: (error) => failures.push(error),
});

/** The SDK on the real app: no port and no mock between them. */
export const raykettle = createRaykettle({
	baseUrl: "http://service.test",
	fetch: async (request) => app.fetch(request),
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
