import { z } from "@hono/zod-openapi";
import { type Fluid as CoreFluid, FLUID_IDS } from "../../src/index.ts";
import { celsius, fromSi } from "../wire/units.ts";
import { provenance, wireProvenance } from "./provenance.ts";

export const FluidLimit = z
	.strictObject({
		temperatureC: celsius("Temperature of the limit."),
		reason: z.string().meta({ description: "What the limit protects from, or how it was chosen." }),
		...provenance,
	})
	.openapi("FluidLimit", {
		description: "A temperature limit of a kind of fluid. The maker's data sheet takes precedence.",
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
			bulk: FluidLimit.meta({ description: "Hottest that it bears in the loop, in long service." }),
			film: FluidLimit.meta({ description: "Hottest that it bears at a heated wall." }),
			flash: FluidLimit.meta({
				description: "Flash point, open cup. Absent where it does not burn.",
			}).optional(),
			coldest: FluidLimit.meta({ description: "Pour point or freezing point." }),
		}),
		...provenance,
	})
	.openapi("Fluid", {
		description: "A liquid that can fill a loop; basis, source and confirmed concern its properties.",
	});

export function wireFluidLimit(limit: CoreFluid["limits"]["bulk"]): z.input<typeof FluidLimit> {
	return {
		temperatureC: fromSi.celsius(limit.temperature),
		reason: limit.reason,
		...wireProvenance(limit),
	};
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
			bulk: wireFluidLimit(bulk),
			film: wireFluidLimit(film),
			...(flash && { flash: wireFluidLimit(flash) }),
			coldest: wireFluidLimit(coldest),
		},
		...wireProvenance(fluid),
	};
}
