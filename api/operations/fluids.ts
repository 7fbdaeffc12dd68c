import { z } from "@hono/zod-openapi";
import { FLUID_IDS, fluidById } from "../../src/index.ts";
import { Fluid, wireFluid } from "../parts/fluid.ts";
import { NoQuery } from "../wire/query.ts";
import { basicOperation } from "./operation.ts";

const Response = z.strictObject({ fluids: z.array(Fluid) }).openapi("Fluids");

export const fluids = basicOperation({
	method: "get",
	path: "/v1/fluids",
	operationId: "getFluids",
	tag: "Loop",
	summary: "What can fill a loop",
	description: [
		"Water, mineral oils of four ISO grades, propylene glycol in water and vegetable oil: how hot and how cold each may get, with the source.",
		"Kinds of fluid, not products: a maker's data sheet comes before these figures.",
	].join("\n"),
	input: NoQuery,
	output: Response,
	examples: { all: { summary: "No parameters", value: {} } },
	maxAge: 86_400,
	cost: 1,
	answer: () => ({ fluids: FLUID_IDS.map((id) => wireFluid(id, fluidById(id))) }),
});
