import { z } from "@hono/zod-openapi";
import { Assumed } from "./assumed.ts";
import { Caution } from "./caution.ts";
import { Method } from "./method.ts";

/** What backs the numbers of a response, in the order in which a reader needs it. */
export const backing = {
	cautions: z.array(Caution).meta({ description: "Cautions to observe, the most serious first." }),
	assumed: z
		.array(Assumed)
		.meta({ description: "Every value that the request omitted, with the reason for the value used." }),
	methods: z
		.array(Method)
		.meta({ description: "Models and correlations behind the numbers, with their sources." }),
};
