import { describe, expect, it } from "vitest";
import { IN_PLACE, textOf } from "../../../../api/compute/answer-text.ts";
import type { Settings } from "../../../../api/config/settings.ts";
import { BOUNDLESS, backlogOf } from "../../../../api/operations/backlog.ts";
import { batchOf } from "../../../../api/operations/batch/batch.ts";
import { boilingPoint } from "../../../../api/operations/boiling-point.ts";
import type { Means, Operation } from "../../../../api/operations/operation.ts";
import { warmUp } from "../../../../api/operations/warm-up/route.ts";
import { ProblemError } from "../../../../api/problem/problem.ts";

const broken: Operation = {
	...boilingPoint,
	operationId: "getMeta",
	answer: () => {
		throw new TypeError("unforeseen");
	},
};
const batch = batchOf([boilingPoint, broken]);
const items = ["getBoilingPoint", "getMeta", "getBoilingPoint"].map((operation) => ({
	operation,
	body: { elevationM: 100 },
}));

const answered = async (means: Partial<Means>) => {
	const asked = { operation: batch, type: "application/json", input: {}, sent: { items }, cost: 3 } as const;
	return JSON.parse(await textOf(asked, { ...IN_PLACE, ...means }));
};

it("a failure of the service is told as 500 in its item's place, to the operator whole, and leaves the rest", async () => {
	const told: unknown[] = [];
	const answer = batch.output.parse(await answered({ onFailure: (error) => told.push(error) })) as {
		items: { status: number }[];
	};
	expect(answer.items.map(({ status }) => status)).toEqual([200, 500, 200]);
	expect(JSON.stringify(answer)).not.toContain("unforeseen");
	expect(told).toEqual([new TypeError("unforeseen")]);
});

describe("a batch whose answers grow", () => {
	const items = Array.from({ length: 50 }, () => ({
		operation: "getBoilingPoint",
		body: { elevationM: 100 },
	}));
	const tried = async (settings: Partial<Settings>, backlog = BOUNDLESS) => {
		let worked = 0;
		const means: Means = {
			...IN_PLACE,
			settings: { ...IN_PLACE.settings, ...settings },
			backlog,
			compute: () => {
				worked += 1;
				return "x".repeat(10_000);
			},
		};
		const asked = {
			operation: batch,
			type: "application/json",
			input: {},
			sent: { items },
			cost: 3,
		} as const;
		const problem = await Promise.resolve()
			.then(() => textOf(asked, means))
			.catch((error: unknown) => error);
		return { problem, worked };
	};

	it("is refused, and gone on with no further, where they are more than one answer may have", async () => {
		const { problem, worked } = await tried({ answerBytes: 100_000 });
		expect(problem).toMatchObject({ kind: "too-large", errors: [{ in: "body", pointer: "/items" }] });
		expect(worked).toBe(10);
	});

	it("is put off where too much is held for callers already, and lets go of its own", async () => {
		const backlog = backlogOf(1_000_000);
		backlog.hold(900_000);
		const { problem, worked } = await tried({}, backlog);
		expect(problem).toMatchObject({ kind: "overloaded", headers: { "Retry-After": "1" } });
		expect(worked).toBe(10);
		backlog.hold(100_000);
		expect(backlog.isFull()).toBe(false); // just
		expect(typeof (await tried({}, backlogOf(1_000_000))).problem).toBe("string");
	});
});

it("an answer longer than it may be is refused with the rows that make it so", () => {
	const asked = { operation: warmUp, type: "application/json", cost: 25 } as const;
	const sent = { ...warmUp.examples.least!.value, seriesStepMin: 1 };
	const input = warmUp.input.parse(sent);
	const means = { ...IN_PLACE, settings: { ...IN_PLACE.settings, answerBytes: 65_536 } };
	const refused = () => textOf({ ...asked, input, sent }, means);
	expect(refused).toThrow(expect.objectContaining({ kind: "too-large" }));
	expect(refused).toThrow("65536 bytes");
	const wide = { ...sent, seriesStepMin: 60 };
	expect(textOf({ ...asked, input: warmUp.input.parse(wide), sent: wide }, means)).toContain("series");
});

it("goes on with nothing once its caller has left", async () => {
	let asked = 0;
	const gone = () => {
		asked += 1;
		return Promise.reject(new ProblemError("abandoned", "gone"));
	};
	await expect(answered({ compute: gone })).rejects.toMatchObject({ kind: "abandoned" });
	expect(asked).toBe(1);
});
