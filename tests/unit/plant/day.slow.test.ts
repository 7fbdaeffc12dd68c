import { it } from "vitest";
import { expectLaws } from "./laws.ts";

// The sweep of which day.test.ts holds the first hundred: plants that one in a few hundred draws has, such as a closed tank
// under a large dish, meet the laws as well.

it("a thousand random plants close their balances, stay below boiling and keep to the second law", {
	timeout: 300_000,
}, () => {
	for (let seed = 1; seed <= 1000; seed++) expectLaws(seed);
});
