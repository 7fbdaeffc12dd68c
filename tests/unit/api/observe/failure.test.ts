import { expect, it } from "vitest";
import { failureLine } from "../../../../api/observe/failure.ts";

it("tells what kind of error it was and where, and nothing of its message", () => {
	const line = failureLine(new RangeError("latitude 27.7, asked by\n    at home (secret.ts:1:2)"));
	expect(line.error).toBe("RangeError");
	expect(line.at?.[0]).toContain("failure.test.ts");
	expect(line.at?.length).toBeLessThanOrEqual(8);
	expect(JSON.stringify(line)).not.toMatch(/latitude|home|secret/);
});

it("tells of what is no error its type alone", () => {
	expect(failureLine("27.7")).toEqual({ error: "string" });
	expect(failureLine(undefined)).toEqual({ error: "undefined" });
});

it("tells an error without a stack by its name", () => {
	const bare = Object.assign(new TypeError("27.7"), { stack: undefined });
	expect(failureLine(bare)).toEqual({ error: "TypeError", at: [] });
});
