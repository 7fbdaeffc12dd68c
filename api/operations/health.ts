import { z } from "@hono/zod-openapi";
import { boilingPoint } from "../../src/index.ts";
import { ProblemError } from "../problem/problem.ts";
import { NoQuery } from "../wire/query.ts";
import { basicOperation } from "./operation.ts";

const Live = z.strictObject({ status: z.enum(["live"]) }).openapi("Live");

const Ready = z
	.strictObject({
		status: z.enum(["ready"]),
		check: z.strictObject({
			calculation: z.string(),
			expected: z.number(),
			computed: z.number(),
			unit: z.string(),
		}),
	})
	.openapi("Ready");

export const live = basicOperation({
	method: "get",
	path: "/health/live",
	operationId: "getLiveness",
	tag: "Service",
	summary: "Whether the process answers",
	description: "Answers as long as the process runs. Restart it when this fails.",
	input: NoQuery,
	output: Live,
	examples: { plain: { summary: "No parameters", value: {} } },
	maxAge: 0,
	cost: 1,
	constant: true,
	answer: () => ({ status: "live" as const }),
});

const CHECK_PRESSURE = 1e5; // [Pa] row of IAPWS R7-97(2012), table 36
const CHECK_TEMPERATURE = 372.755919; // [K] its saturation temperature there
const CHECK_TOLERANCE = 1e-6; // [K] the last digit printed

export const ready = basicOperation({
	method: "get",
	path: "/health/ready",
	operationId: "getReadiness",
	tag: "Service",
	summary: "Whether the service computes rightly",
	description:
		"Computes the boiling point of water at 0.1 MPa and compares it with the release of IAPWS R7-97(2012), table 36. Send no traffic while this answers 503.",
	input: NoQuery,
	output: Ready,
	examples: { plain: { summary: "No parameters", value: {} } },
	maxAge: 0,
	cost: 1,
	refusals: [503],
	answer: () => {
		const computed = boilingPoint(CHECK_PRESSURE);
		if (!(Math.abs(computed - CHECK_TEMPERATURE) <= CHECK_TOLERANCE))
			throw new ProblemError(
				"overloaded",
				`Water boils at ${computed} K at 0.1 MPa here; the service computes wrongly`,
				[],
				{
					"Retry-After": "30",
				},
			);
		return {
			status: "ready" as const,
			check: {
				calculation: "boiling point of water at 0.1 MPa",
				expected: CHECK_TEMPERATURE,
				computed,
				unit: "K",
			},
		};
	},
});
