import { z } from "@hono/zod-openapi";

export const Method = z
	.strictObject({
		name: z.string(),
		source: z.string(),
		outsideRange: z.boolean().meta({ description: "Whether it was asked outside its published range." }),
	})
	.openapi("Method", { description: "A correlation or model that the answer rests on." });
