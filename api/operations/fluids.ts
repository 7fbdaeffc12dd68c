import { z } from "@hono/zod-openapi";
import { FLUID_IDS, fluidById } from "../../src/index.ts";
import { Fluid, wireFluid } from "../parts/fluid.ts";
import { NoQuery } from "../wire/query.ts";
import { basicOperation } from "./operation.ts";

const Response = z
	.strictObject({ fluids: z.array(Fluid).meta({ description: "Fluids that a loop can be filled with." }) })
	.openapi("Fluids");

export const fluids = basicOperation({
	method: "get",
	path: "/v1/fluids",
	operationId: "getFluids",
	tag: "Loop",
	summary: "Heat-transfer fluids",
	description: [
		"Lists water, mineral oils of four ISO grades, propylene glycol in water and vegetable oil, with the temperature limits of each and their sources.",
		"These are kinds of fluid, not products: the data sheet of the manufacturer takes precedence.",
	].join("\n"),
	input: NoQuery,
	output: Response,
	examples: { all: { summary: "Request without parameters", value: {} } },
	maxAge: 86_400,
	cost: 1,
	answer: () => ({ fluids: FLUID_IDS.map((id) => wireFluid(id, fluidById(id))) }),
});
