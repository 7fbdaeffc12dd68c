import { z } from "@hono/zod-openapi";

export const Method = z
	.strictObject({
		name: z.string().meta({ description: "What it computes." }),
		source: z
			.string()
			.meta({
				description: "Publication that it comes from. Absent where the request's own data are the source.",
			})
			.optional(),
		confirmed: z.boolean().meta({
			description: "False where its formula or a coefficient was not yet compared with its source.",
		}),
		outsideRange: z.boolean().meta({ description: "Whether it was used outside its published range." }),
	})
	.openapi("Method", { description: "A correlation or model that the answer rests on." });
