import { it } from "vitest";
import { expectLaws } from "./laws.ts";

// The sweep of which day.test.ts has the first hundred: a law that only a rare combination of sizes would break shows here.

it("a thousand random plants close their balances, stay below boiling and keep to the second law", {
	timeout: 300_000,
}, () => {
	for (let seed = 1; seed <= 1000; seed++) expectLaws(seed);
});
