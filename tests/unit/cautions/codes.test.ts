import { expect, it } from "vitest";
import { CAUTION_CODES } from "../../../src/cautions/codes.ts";
import { sourcesIn } from "../../sources.ts";

/** Sources that give cautions, without the list itself. */
const rules = [...sourcesIn("src/cautions"), ...sourcesIn("src/test-run")].filter(
	({ path }) => path !== "src/cautions/codes.ts",
);

/** Files that give a code: plain, or one of two by a condition. The compiler sees to it that none gives one beside the list. */
const producers = (code: string) =>
	rules.filter(({ text }) => new RegExp(`\\bcode: [^\\n]*"${code}"`).test(text)).map(({ path }) => path);

it("names each code once", () => {
	expect(new Set(CAUTION_CODES).size).toBe(CAUTION_CODES.length);
});

it.each(CAUTION_CODES)("%s is given by one rule", (code) => {
	expect(producers(code)).toHaveLength(1);
});
