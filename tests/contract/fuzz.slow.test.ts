import { expect, it } from "vitest";
import { operations } from "../../api/operations/index.ts";
import { fuzzed } from "../fuzz.ts";

// A longer slice of `npm run fuzz` than fuzz.test.ts has: every operation is reached some eighty times.

it("answers or refuses 1500 distorted requests in its own forms", async () => {
	const reached = new Set<string>();
	for await (const { operationId, status, sent, fault } of fuzzed(1, 1500)) {
		expect(fault, `${operationId} ${sent.slice(0, 500)}`).toBeUndefined();
		reached.add(`${operationId} ${status}`);
	}
	for (const operation of operations) expect(reached).toContain(`${operation.operationId} 200`);
	for (const status of ["200", "400", "422"])
		expect(
			[...reached].some((one) => one.endsWith(status)),
			status,
		).toBe(true);
}, 240_000);
