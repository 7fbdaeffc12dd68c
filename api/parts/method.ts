import { z } from "@hono/zod-openapi";

export const Method = z
	.strictObject({
		name: z.string().meta({ description: "Name of the correlation or model." }),
		source: z
			.string()
			.meta({
				description:
					"Publication of the correlation or model. Absent where the request's own data are the source.",
			})
			.optional(),
		confirmed: z.boolean().meta({
			description: "False where its formula or a coefficient has not yet been compared with its source.",
		}),
		outsideRange: z
			.boolean()
			.meta({ description: "Whether the correlation or model was used outside its published range." }),
	})
	.openapi("Method", { description: "A correlation or model that the response is based on." });
