import { z } from "@hono/zod-openapi";
import { LIMITS, VERSIONS } from "../config/limits.ts";
import { SETTINGS, type Settings } from "../config/settings.ts";
import { NoQuery } from "../wire/query.ts";
import { basicOperation, type Operation } from "./operation.ts";

const Limit = z
	.strictObject({
		name: z.string().meta({ description: "Name of the limit." }),
		value: z.number().meta({ description: "Value of the limit, in `unit`." }),
		unit: z.string().meta({ description: "Unit of the limit." }),
		meaning: z.string().meta({ description: "Quantity that the limit bounds." }),
		beyond: z
			.string()
			.openapi({ description: "Response to a request above the limit: status and kind of problem." }),
	})
	.openapi("Limit", { description: "A limit in force in this deployment." });

const Meta = z
	.strictObject({
		service: z.string().openapi({ description: "Version of the service." }),
		contract: z
			.string()
			.openapi({ description: "Version of the contract. The first number changes with breaking changes." }),
		data: z.string().openapi({ description: "Version of the data tables of the service." }),
		limits: z.array(Limit).meta({ description: "Every limit in force in this deployment." }),
		costs: z
			.array(
				z.strictObject({
					operation: z.string().meta({ description: "`operationId` of the operation." }),
					cost: z.int().meta({ description: "Basic cost of the operation in cost units." }),
				}),
			)
			.openapi({
				description:
					"Cost of each operation, counted against `computingBudget`; one unit is about a millisecond. A range multiplies it by 40. A step finer than 120 s, more layers, and draws that turn the tank over often also multiply it. The cost of a test run depends on its rows.",
			}),
	})
	.openapi("Meta", { description: "Versions, limits and costs of this deployment." });

/** @param operations  listed with their costs; a function, since the list includes this operation */
export const metaOf = (operations: () => readonly Operation[]) =>
	basicOperation({
		method: "get",
		path: "/v1/meta",
		operationId: "getMeta",
		tag: "Service",
		summary: "Versions and limits",
		description:
			"Returns the versions of service, contract and data, every limit in force, and the cost of each operation.",
		input: NoQuery,
		output: Meta,
		examples: { plain: { summary: "Request without parameters", value: {} } },
		maxAge: 3600,
		cost: 1,
		answer: (_query, _sent, { settings }) => ({
			...VERSIONS,
			limits: [
				...Object.entries(LIMITS).map(([name, limit]) => ({ name, ...limit })),
				...deploymentLimits(settings),
			],
			costs: operations().map(({ operationId, cost }) => ({ operation: operationId, cost })),
		}),
	});

/** The settings of this deployment that clients can run into. */
function deploymentLimits(settings: Settings) {
	return Object.entries(SETTINGS).flatMap(([name, setting]) => {
		const { unit, meaning } = setting;
		if (!("beyond" in setting)) return [];
		return [{ name, value: settings[name as keyof Settings], unit, meaning, beyond: setting.beyond }];
	});
}
