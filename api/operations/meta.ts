import { z } from "@hono/zod-openapi";
import { LIMITS, VERSIONS } from "../config/limits.ts";
import { SETTINGS, type Settings } from "../config/settings.ts";
import { NoQuery } from "../wire/query.ts";
import { basicOperation, type Operation } from "./operation.ts";

const Limit = z
	.strictObject({
		name: z.string(),
		value: z.number(),
		unit: z.string(),
		meaning: z.string(),
		beyond: z.string().openapi({ description: "What answers a request beyond it." }),
	})
	.openapi("Limit");

const Meta = z
	.strictObject({
		service: z.string().openapi({ description: "Version of the service." }),
		contract: z
			.string()
			.openapi({ description: "Version of the contract: the first number changes when a client breaks." }),
		data: z.string().openapi({ description: "Version of the tables the service carries." }),
		limits: z.array(Limit),
		costs: z.array(z.strictObject({ operation: z.string(), cost: z.int() })).openapi({
			description:
				"What each operation counts against `computingBudget`, about a millisecond a unit; a range (× 40), a step finer than 120 s, layers, and draws that turn the tank over often multiply it; a test run counts by its rows.",
		}),
	})
	.openapi("Meta");

/** @param operations  whose costs it states; asked for when it is answered, as it is one of them */
export const metaOf = (operations: () => readonly Operation[]) =>
	basicOperation({
		method: "get",
		path: "/v1/meta",
		operationId: "getMeta",
		tag: "Service",
		summary: "Versions and limits",
		description: "The versions of service, contract and data, and every limit in force.",
		input: NoQuery,
		output: Meta,
		examples: { plain: { summary: "No parameters", value: {} } },
		maxAge: 3600,
		cost: 1,
		answer: (_query, _sent, { settings }) => ({
			...VERSIONS,
			limits: [...Object.entries(LIMITS).map(([name, limit]) => ({ name, ...limit })), ...chosen(settings)],
			costs: operations().map(({ operationId, cost }) => ({ operation: operationId, cost })),
		}),
	});

/** What this deployment chose, as far as a caller can meet it. */
function chosen(settings: Settings) {
	return Object.entries(SETTINGS).flatMap(([name, setting]) => {
		const { unit, meaning } = setting;
		if (!("beyond" in setting)) return [];
		return [{ name, value: settings[name as keyof Settings], unit, meaning, beyond: setting.beyond }];
	});
}
