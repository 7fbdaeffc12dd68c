import { z } from "@hono/zod-openapi";
import { LIMITS } from "../../config/limits.ts";
import { Problem } from "../../problem/problem.ts";
import type { Operation } from "../operation.ts";

/** A request for several operations. An operation outside the list, such as the batch itself, breaks the contract. */
export const batchRequest = (operations: readonly Operation[]) =>
	z
		.strictObject({
			items: z
				.array(
					z.strictObject({
						operation: z.enum(operations.map(({ operationId }) => operationId)).meta({
							description: "`operationId` of the operation in this contract.",
						}),
						body: z.record(z.string(), z.unknown()).meta({
							description:
								"Input of the operation: the body of a POST, or the path and query parameters of a GET by name.",
						}),
					}),
				)
				.min(1)
				.max(LIMITS.batchItems.value)
				.meta({ description: "Operations to run. A failed item does not affect the others." }),
		})
		.openapi("BatchRequest");

const { instance: _instance, requestId: _requestId, ...shared } = Problem.shape;

const ItemProblem = z.strictObject(shared).openapi("ItemProblem", {
	description: "Why an item failed. Its request id is that of the batch.",
});

export type ItemProblem = z.infer<typeof ItemProblem>;

export const BatchResponse = z
	.strictObject({
		items: z
			.array(
				z.union([
					z.strictObject({
						status: z.literal(200).meta({ description: "HTTP status of the item." }),
						result: z
							.record(z.string(), z.unknown())
							.meta({ description: "Response body of the operation." }),
					}),
					z.strictObject({
						status: z
							.int()
							.min(400)
							.max(599)
							.meta({ description: "HTTP status that the operation alone would return." }),
						problem: ItemProblem,
					}),
				]),
			)
			.meta({ description: "Result or problem of each item, in the order of the request." }),
		cost: z
			.int()
			.meta({ description: "Estimated cost of all items, counted against `computingBudget` of /v1/meta." }),
	})
	.openapi("BatchResponse");
