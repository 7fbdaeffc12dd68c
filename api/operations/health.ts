import { z } from "@hono/zod-openapi";
import { boilingPoint } from "../../src/index.ts";
import { ProblemError } from "../problem/problem.ts";
import { NoQuery } from "../wire/query.ts";
import { basicOperation } from "./operation.ts";

const Live = z
	.strictObject({ status: z.enum(["live"]).meta({ description: "Always `live`." }) })
	.openapi("Live", { description: "The process runs." });

const Ready = z
	.strictObject({
		status: z.enum(["ready"]).meta({ description: "Always `ready`; otherwise the response is 503." }),
		check: z
			.strictObject({
				calculation: z.string().meta({ description: "Name of the test calculation." }),
				expected: z.number().meta({ description: "Published result of the test calculation." }),
				computed: z.number().meta({ description: "Result computed by this service." }),
				unit: z.string().meta({ description: "Unit of both results." }),
			})
			.meta({ description: "Test calculation against a published value." }),
	})
	.openapi("Ready", { description: "The service computes a published value correctly." });

export const live = basicOperation({
	method: "get",
	path: "/health/live",
	operationId: "getLiveness",
	tag: "Service",
	summary: "Liveness of the process",
	description: "Returns 200 as long as the process runs. Restart the process when this fails.",
	input: NoQuery,
	output: Live,
	examples: { plain: { summary: "Request without parameters", value: {} } },
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
	summary: "Readiness of the service",
	description:
		"Computes the boiling point of water at 0.1 MPa and compares it with IAPWS R7-97(2012), table 36. Send no traffic while this returns 503.",
	input: NoQuery,
	output: Ready,
	examples: { plain: { summary: "Request without parameters", value: {} } },
	maxAge: 0,
	cost: 1,
	refusals: [503],
	answer: () => {
		const computed = boilingPoint(CHECK_PRESSURE);
		if (!(Math.abs(computed - CHECK_TEMPERATURE) <= CHECK_TOLERANCE))
			throw new ProblemError(
				"overloaded",
				`The service computes a wrong boiling point of water at 0.1 MPa: ${computed} K`,
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
