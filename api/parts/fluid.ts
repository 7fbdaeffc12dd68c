import { z } from "@hono/zod-openapi";
import { type Fluid as CoreFluid, FLUID_IDS } from "../../src/index.ts";
import { celsius, fromSi } from "../wire/units.ts";

const Limit = z
	.strictObject({
		temperatureC: celsius("Of the limit."),
		source: z.string().meta({ description: "Where the figure comes from." }),
	})
	.openapi("FluidLimit", {
		description: "A limit of the kind of fluid, generic: the maker's data sheet comes before it.",
	});

export const Fluid = z
	.strictObject({
		id: z.enum(FLUID_IDS).meta({ description: "Its name in requests." }),
		name: z.string(),
		validFromC: celsius("Coldest for which its properties are known."),
		validToC: celsius("Hottest for which its properties are known."),
		potable: z.boolean().meta({ description: "Whether it may leak into drinking water unharmed." }),
		freezes: z.boolean().meta({ description: "Whether it bursts a pipe when it freezes." }),
		limits: z.strictObject({
			bulk: Limit.meta({ description: "Hottest that it bears in the loop, in long service." }),
			film: Limit.meta({ description: "Hottest that it bears at a heated wall." }),
			flash: Limit.meta({ description: "Flash point, open cup. Absent where it does not burn." }).optional(),
			coldest: Limit.meta({ description: "Pour point or freezing point." }),
		}),
		source: z.string().meta({ description: "Of its properties." }),
	})
	.openapi("Fluid", { description: "A liquid that can fill a loop." });

function wireLimit({ temperature, source }: CoreFluid["limits"]["bulk"]): z.input<typeof Limit> {
	return { temperatureC: fromSi.celsius(temperature), source };
}

export function wireFluid(id: z.output<typeof Fluid>["id"], fluid: CoreFluid): z.input<typeof Fluid> {
	const { bulk, film, flash, coldest } = fluid.limits;
	return {
		id,
		name: fluid.name,
		validFromC: fromSi.celsius(fluid.range[0]),
		validToC: fromSi.celsius(fluid.range[1]),
		potable: fluid.potable,
		freezes: fluid.freezes,
		limits: {
			bulk: wireLimit(bulk),
			film: wireLimit(film),
			...(flash && { flash: wireLimit(flash) }),
			coldest: wireLimit(coldest),
		},
		source: fluid.source,
	};
}
