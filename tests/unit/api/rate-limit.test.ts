import { expect, it } from "vitest";
import { rateLimit } from "../../../api/rate-limit.ts";

const POLICY = { requests: 3, windowS: 10, callers: 2 };
const refused = (count: () => unknown) => {
	try {
		count();
	} catch (error) {
		return error;
	}
	throw new Error("it was let through");
};

it("lets a quota through, counts down, and refuses what comes after", () => {
	const count = rateLimit(POLICY);
	const fields = [0, 1000, 2500].map((now) => count("a", now));
	expect(fields.map(({ RateLimit }) => RateLimit)).toEqual([
		'"default";r=2;t=10',
		'"default";r=1;t=9',
		'"default";r=0;t=8',
	]);
	expect(fields[0]?.["RateLimit-Policy"]).toBe('"default";q=3;w=10');
	expect(refused(() => count("a", 4000))).toMatchObject({
		kind: "too-many-requests",
		headers: { "Retry-After": "6", RateLimit: '"default";r=0;t=6' },
	});
});

it("begins anew when the window has ended, and counts refused requests against nobody", () => {
	const count = rateLimit(POLICY);
	for (const now of [0, 1, 2]) count("a", now);
	for (let now = 3; now < 50; now += 1) refused(() => count("a", now));
	expect(count("a", 10_000).RateLimit).toBe('"default";r=2;t=10');
});

it("counts callers apart", () => {
	const count = rateLimit(POLICY);
	for (const now of [0, 1, 2]) count("a", now);
	expect(count("b", 3).RateLimit).toBe('"default";r=2;t=10');
	refused(() => count("a", 4));
});

it("remembers no more callers than it may: the oldest window goes first", () => {
	const count = rateLimit(POLICY);
	for (const caller of ["a", "a", "b", "c"]) count(caller, 0);
	expect(count("b", 1).RateLimit).toContain("r=1");
	expect(count("a", 1).RateLimit).toContain("r=2"); // forgotten when c came
});
