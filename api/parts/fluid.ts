import { z } from "@hono/zod-openapi";
import { type Fluid as CoreFluid, FLUID_IDS } from "../../src/index.ts";
import { celsius, fromSi } from "../wire/units.ts";
import { provenance, wireProvenance } from "./provenance.ts";

export const FluidLimit = z
	.strictObject({
		temperatureC: celsius("Limit temperature of the fluid."),
		reason: z.string().meta({ description: "What the limit protects from, or how it was chosen." }),
		...provenance,
	})
	.openapi("FluidLimit", {
		description: "A generic limit for this kind of fluid. The manufacturer's data sheet takes precedence.",
	});

export const Fluid = z
	.strictObject({
		id: z.enum(FLUID_IDS).meta({ description: "Identifier of the fluid in requests." }),
		name: z.string().meta({ description: "Name of the fluid." }),
		validFromC: celsius("Lowest temperature for which the fluid's properties are known."),
		validToC: celsius("Highest temperature for which the fluid's properties are known."),
		potable: z
			.boolean()
			.meta({ description: "Whether the fluid is harmless if it leaks into drinking water." }),
		freezes: z.boolean().meta({ description: "Whether the fluid can burst a pipe when it freezes." }),
		limits: z.strictObject({
			bulk: FluidLimit.meta({
				description: "Highest bulk temperature that the fluid withstands in long service.",
			}),
			film: FluidLimit.meta({
				description: "Highest temperature that the fluid withstands at a heated wall.",
			}),
			flash: FluidLimit.meta({
				description: "Flash point of the fluid, open cup. Absent if the fluid does not burn.",
			}).optional(),
			coldest: FluidLimit.meta({ description: "Pour point or freezing point of the fluid." }),
		}),
		...provenance,
	})
	.openapi("Fluid", {
		description: "A heat-transfer fluid for the loop. Basis, source and `confirmed` describe its properties.",
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
