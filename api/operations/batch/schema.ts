import { z } from "@hono/zod-openapi";
import { LIMITS } from "../../config/limits.ts";
import { Problem } from "../../problem/problem.ts";
import type { Operation } from "../operation.ts";

/** A request for many operations at once. An operation that is not in the list, the batch itself above all, is a fault of the contract. */
export const batchRequest = (operations: readonly Operation[]) =>
	z
		.strictObject({
			items: z
				.array(
					z.strictObject({
						operation: z.enum(operations.map(({ operationId }) => operationId)).meta({
							description: "The operation's `operationId` in this contract.",
						}),
						body: z.record(z.string(), z.unknown()).meta({
							description:
								"What the operation alone would be sent: its body, or the parameters of a GET (path and query) by name.",
						}),
					}),
				)
				.min(1)
				.max(LIMITS.batchItems.value)
				.meta({ description: "Each is answered by itself: one that fails leaves the others as they are." }),
		})
		.openapi("BatchRequest");

const { instance: _instance, requestId: _requestId, ...shared } = Problem.shape;

const ItemProblem = z.strictObject(shared).openapi("ItemProblem", {
	description: "Why an item was not answered; the request id is the batch's.",
});

export type ItemProblem = z.infer<typeof ItemProblem>;

export const BatchResponse = z
	.strictObject({
		items: z
			.array(
				z.union([
					z.strictObject({
						status: z.literal(200),
						result: z
							.record(z.string(), z.unknown())
							.meta({ description: "What the operation alone answers." }),
					}),
					z.strictObject({
						status: z.int().min(400).max(599).meta({ description: "The status the operation alone gives." }),
						problem: ItemProblem,
					}),
				]),
			)
			.meta({ description: "In the order of the request." }),
		cost: z
			.int()
			.meta({ description: "Estimated cost of all items, counted against `computingBudget` of /v1/meta." }),
	})
	.openapi("BatchResponse");
