import { expect, it } from "vitest";
import { fuzzed } from "../fuzz.ts";

it("answers or refuses whatever is sent, in its own forms (a slice of `npm run fuzz`)", async () => {
	const statuses = new Set<number>();
	for await (const { operationId, status, sent, fault } of fuzzed(1, 200)) {
		expect(fault, `${operationId} ${sent.slice(0, 500)}`).toBeUndefined();
		statuses.add(status);
	}
	for (const status of [200, 400, 422]) expect(statuses).toContain(status);
});
