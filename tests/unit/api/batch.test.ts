import { expect, it } from "vitest";
import { IN_PLACE, textOf } from "../../../api/compute.ts";
import type { Means, Operation } from "../../../api/operation.ts";
import { ProblemError } from "../../../api/problem.ts";
import { batchOf } from "../../../api/routes/batch.ts";
import { boilingPoint } from "../../../api/routes/boiling-point.ts";

const broken: Operation = {
	...boilingPoint,
	operationId: "getMeta", // one that costs are stated for
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
	const asked = { operation: batch, type: "application/json", input: {}, given: { items }, cost: 3 } as const;
	return JSON.parse(await textOf(asked, { ...IN_PLACE, ...means }));
};

it("a failure of the service is told as 500 in its item's place, to the operator whole, and leaves the rest", async () => {
	const told: unknown[] = [];
	const answer = batch.output.parse(await answered({ failed: (error) => told.push(error) })) as {
		items: { status: number }[];
	};
	expect(answer.items.map(({ status }) => status)).toEqual([200, 500, 200]);
	expect(JSON.stringify(answer)).not.toContain("unforeseen");
	expect(told).toEqual([new TypeError("unforeseen")]);
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
