import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Key } from "../../../../api/access/keys.ts";
import { type Client, rateLimit } from "../../../../api/access/rate-limit.ts";
import { ProblemError } from "../../../../api/problem/problem.ts";

const POLICY = { requests: 3, windowS: 10, callers: 100 };
const from = (address: string, key?: Key): Client => ({ address, key });
const key = (kind: Key["kind"], requests?: number): Key => ({
	...{ id: `the-${kind}`, kind, sha256: "", origins: [] },
	...(requests !== undefined && { requests }),
});

function refused(count: () => unknown): ProblemError {
	try {
		count();
	} catch (error) {
		if (error instanceof ProblemError) return error;
	}
	throw new Error("it was let through");
}

/** How many of so many requests at one time are let through. */
function letThrough(count: ReturnType<typeof rateLimit>, caller: Client, asked: number, now: number): number {
	let passed = 0;
	for (let i = 0; i < asked; i++)
		try {
			count(caller, now);
			passed += 1;
		} catch {}
	return passed;
}

describe("an address", () => {
	it("has its quota, sees it go down, and is refused what comes after", () => {
		const count = rateLimit(POLICY);
		const fields = [0, 1000, 2500].map((now) => count(from("a"), now));
		expect(fields.map(({ RateLimit }) => RateLimit)).toEqual([
			'"default";r=2;t=10',
			'"default";r=1;t=9',
			'"default";r=0;t=8',
		]);
		expect(fields[0]?.["RateLimit-Policy"]).toBe('"default";q=3;w=10');
		expect(refused(() => count(from("a"), 4000))).toMatchObject({
			kind: "too-many-requests",
			message: "This address may send 3 requests in 10 s; try again in 6 s",
			headers: {
				"Retry-After": "6",
				RateLimit: '"default";r=0;t=6',
				"RateLimit-Policy": '"default";q=3;w=10',
			},
		});
	});

	it("begins anew when its window has ended, whatever it was refused meanwhile", () => {
		const count = rateLimit(POLICY);
		for (const now of [0, 1, 2]) count(from("a"), now);
		for (let now = 3; now < 50; now += 1) refused(() => count(from("a"), now));
		refused(() => count(from("a"), 9999));
		expect(count(from("a"), 10_000).RateLimit).toBe('"default";r=2;t=10');
	});

	it("counts by itself", () => {
		const count = rateLimit(POLICY);
		for (const now of [0, 1, 2]) count(from("a"), now);
		expect(count(from("b"), 3).RateLimit).toBe('"default";r=2;t=10');
		refused(() => count(from("a"), 4));
	});

	it("that comes back when it is told to is let through", () => {
		fc.assert(
			fc.property(
				fc.integer({ min: 0, max: 9999 }),
				fc.double({ min: 0, max: 1e13, noNaN: true }),
				(late, start) => {
					const count = rateLimit({ ...POLICY, requests: 1 });
					count(from("a"), start);
					const wait = Number(refused(() => count(from("a"), start + late)).headers["Retry-After"]);
					expect(wait).toBeGreaterThan(0);
					count(from("a"), start + late + wait * 1000);
				},
			),
			{ seed: 1, numRuns: 500 },
		);
	});

	it("is counted as a plain reckoning of every request has it", () => {
		const step = fc.record({
			caller: fc.constantFrom("a", "b", "c", "d"),
			after: fc.integer({ min: 0, max: 6000 }),
		});
		fc.assert(
			fc.property(fc.array(step, { maxLength: 200 }), (steps) => {
				const count = rateLimit(POLICY);
				const begun: Record<string, number> = {};
				const used: Record<string, number> = {};
				let now = 0;
				for (const { caller, after } of steps) {
					now += after;
					if (now >= (begun[caller] ?? Number.NEGATIVE_INFINITY) + 10_000) {
						begun[caller] = now;
						used[caller] = 0;
					}
					const may = used[caller]! < 3;
					if (may) used[caller]! += 1;
					const told = may ? count(from(caller), now) : refused(() => count(from(caller), now)).headers;
					const wait = Math.ceil((begun[caller]! + 10_000 - now) / 1000);
					expect(told.RateLimit).toBe(`"default";r=${3 - used[caller]!};t=${wait}`);
				}
			}),
			{ seed: 2, numRuns: 300 },
		);
	});
});

describe("a key", () => {
	it("that is secret counts by itself, wherever it comes from, and apart from its address", () => {
		const count = rateLimit(POLICY);
		for (const address of ["a", "b", "c"]) count(from(address, key("secret")), 0);
		expect(refused(() => count(from("d", key("secret")), 1)).message).toMatch(
			/^This key may send 3 requests/,
		);
		expect(count(from("a"), 2).RateLimit).toBe('"default";r=2;t=10');
	});

	it("that is secret may have a quota of its own, more or less than the deployment's", () => {
		for (const requests of [1, 5]) {
			const count = rateLimit(POLICY);
			const caller = from("a", key("secret", requests));
			expect(count(caller, 0)).toEqual({
				RateLimit: `"key";r=${requests - 1};t=10`,
				"RateLimit-Policy": `"key";q=${requests};w=10`,
			});
			expect(letThrough(count, caller, 10, 1)).toBe(requests - 1);
		}
	});

	it("that is publishable leaves each visitor the quota of an address", () => {
		const count = rateLimit(POLICY);
		expect(letThrough(count, from("a", key("publishable")), 5, 0)).toBe(3);
		expect(letThrough(count, from("b", key("publishable")), 5, 0)).toBe(3);
		refused(() => count(from("a"), 1)); // the same visitor without the key
	});

	it("that is publishable may have a quota over all its visitors; both are told, and the stricter holds", () => {
		const count = rateLimit(POLICY);
		const visitor = (address: string) => from(address, key("publishable", 4));
		expect(count(visitor("a"), 0)).toEqual({
			RateLimit: '"key";r=3;t=10, "default";r=2;t=10',
			"RateLimit-Policy": '"key";q=4;w=10, "default";q=3;w=10',
		});
		expect(letThrough(count, visitor("a"), 5, 1000)).toBe(2);
		expect(refused(() => count(visitor("a"), 1000)).headers).toMatchObject({
			RateLimit: '"key";r=1;t=9, "default";r=0;t=9',
		});
		expect(letThrough(count, visitor("b"), 5, 2000)).toBe(1); // what a was refused cost the key nothing
		const { message, headers } = refused(() => count(visitor("c"), 3000));
		expect(message).toBe("This key may send 4 requests in 10 s; try again in 7 s");
		expect(headers["Retry-After"]).toBe("7");
		expect(count(from("c"), 3000).RateLimit).toBe('"default";r=2;t=10'); // and c nothing
	});

	it("waits for the later of two quotas that are both used up", () => {
		const count = rateLimit({ ...POLICY, requests: 1 });
		count(from("z", key("publishable", 2)), 0);
		count(from("a", key("publishable", 2)), 4000);
		expect(refused(() => count(from("a", key("publishable", 2)), 5000)).headers["Retry-After"]).toBe("9");
	});
});

describe("a deployment without a limit", () => {
	const count = rateLimit({ ...POLICY, requests: 0 });
	it("lets all through and says nothing of it", () => {
		for (const caller of [from("a"), from("a", key("secret")), from("a", key("publishable"))]) {
			expect(letThrough(count, caller, 100, 0)).toBe(100);
			expect(count(caller, 0)).toEqual({});
		}
	});

	it("keeps to the quota that a key has", () => {
		for (const kind of ["secret", "publishable"] as const)
			expect(letThrough(rateLimit({ ...POLICY, requests: 0 }), from("a", key(kind, 2)), 5, 0)).toBe(2);
	});
});

describe("a flood of new addresses", () => {
	const flood = (count: ReturnType<typeof rateLimit>, callers: number, requests = 1) => {
		for (let i = 0; i < callers; i++) letThrough(count, from(`flood-${i}`), requests, 1);
	};

	it("gives nobody who was refused another try, however large it is", () => {
		const count = rateLimit(POLICY);
		const limited = Array.from({ length: 30 }, (_, i) => from(`limited-${i}`));
		for (const caller of limited) letThrough(count, caller, 3, 0);
		flood(count, 20_000, 2);
		for (const caller of limited) refused(() => count(caller, 9999));
	});

	it("must spend the quota of half of `callers` to have one address forgotten that has nothing left", () => {
		const count = rateLimit(POLICY);
		letThrough(count, from("limited"), 3, 0);
		flood(count, POLICY.callers / 2 - 1, 3);
		refused(() => count(from("limited"), 2));
		flood(count, POLICY.callers + 1, 3);
		expect(count(from("limited"), 2).RateLimit).toContain("r=2"); // the bound is real: memory does not grow without end
	});

	it("must bring half of `callers` to renew the quota of one address that had some left", () => {
		const count = rateLimit(POLICY);
		letThrough(count, from("some"), 2, 0);
		flood(count, POLICY.callers / 2 - 1);
		expect(count(from("some"), 2).RateLimit).toContain("r=0");
	});

	it("touches no key", () => {
		const count = rateLimit(POLICY);
		letThrough(count, from("a", key("secret")), 2, 0);
		flood(count, 20_000, 3);
		expect(count(from("a", key("secret")), 2).RateLimit).toContain("r=0");
		refused(() => count(from("b", key("secret")), 3));
	});
});

it("writes structured fields: lists of strings, each with integers as its parameters (RFC 9651)", () => {
	const item = '"[a-z]+"(?:;[a-z]+=\\d{1,15})+';
	const count = rateLimit({ requests: 10_000_000, windowS: 3600, callers: 10 });
	for (const caller of [from("a"), from("a", key("publishable", 10_000_000))])
		for (const field of Object.values(count(caller, 1.5e12 + 0.123)))
			expect(field).toMatch(new RegExp(`^${item}(?:, ${item})*$`));
});
