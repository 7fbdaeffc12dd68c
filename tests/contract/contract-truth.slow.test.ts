import { expect, it } from "vitest";
import { judged, posts } from "./judged.ts";

// The sweep of which contract-truth.test.ts has a slice: at every place of every body, bounds and their nearest neighbours and
// values of wrong types are judged alike by the contract (Ajv) and by the service (zod).

it.each(posts)("the body of %s is judged alike by the contract and by the service", (_path, operation) => {
	const { yes, no } = judged(operation, 6000);
	expect(Math.min(yes, no)).toBeGreaterThan(300); // the inputs must reach both sides
});
