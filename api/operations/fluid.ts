import { z } from "@hono/zod-openapi";
import {
	derived,
	evenTemperatures,
	FLUID_IDS,
	type Fluid,
	fluidById,
	fluidMethods,
	practice,
	propertyTable,
} from "../../src/index.ts";
import { backing } from "../parts/backing.ts";
import { Fluid as WireFluid, wireFluid } from "../parts/fluid.ts";
import { Method } from "../parts/method.ts";
import { ProblemError } from "../problem/problem.ts";
import { assume, type Completed, sentOr } from "../wire/defaults.ts";
import { fromQuery } from "../wire/query.ts";
import {
	celsius,
	fromSi,
	joulesPerKilogramKelvin,
	kelvinDifference,
	kilogramsPerCubicMetre,
	pascalSeconds,
	ratio,
	squareMillimetresPerSecond,
	toSi,
	wattsPerMetreKelvin,
} from "../wire/units.ts";
import { operation } from "./operation.ts";

const Query = z.strictObject({
	id: z.enum(FLUID_IDS).meta({ description: "Id of the fluid, from `GET /v1/fluids`." }),
	fromC: fromQuery(
		celsius(
			"Temperature of the coldest row. When omitted: the lowest known temperature of the fluid.",
			-60,
			300,
		),
	).optional(),
	toC: fromQuery(
		celsius(
			"Temperature of the hottest row. When omitted: the highest known temperature of the fluid.",
			-60,
			300,
		),
	).optional(),
	stepK: assume(
		fromQuery(kelvinDifference("Temperature step between rows; the last step may be smaller.", 0.5, 100)),
		10,
		practice("a table of one page"),
	),
});

const column = (field: z.ZodNumber) => z.array(field).meta({ description: field.description });

const Table = z
	.strictObject({
		temperatureC: column(celsius("Temperature of the row.")),
		densityKgPerM3: column(kilogramsPerCubicMetre("Density of the fluid.")),
		heatCapacityJPerKgK: column(joulesPerKilogramKelvin("Specific heat capacity of the fluid.")),
		conductivityWPerMK: column(wattsPerMetreKelvin("Thermal conductivity of the fluid.")),
		dynamicViscosityPaS: column(pascalSeconds("Dynamic viscosity of the fluid.")),
		kinematicViscosityMm2PerS: column(
			squareMillimetresPerSecond("Kinematic viscosity of the fluid. At 40 °C it is the ISO grade of an oil."),
		),
		prandtl: column(ratio("Prandtl number of the fluid.")),
	})
	.openapi("FluidTable", {
		description:
			"Properties in columns, one row per temperature. Viscosity is not linear between rows: request a smaller step instead of interpolating.",
	});

const Response = z
	.strictObject({
		fluid: WireFluid,
		table: Table,
		assumed: backing.assumed,
		methods: z
			.array(Method)
			.meta({ description: "Models and correlations behind the columns, with their sources." }),
	})
	.openapi("FluidProperties");

export const fluidProperties = operation({
	method: "get",
	path: "/v1/fluids/{id}",
	operationId: "getFluid",
	tag: "Loop",
	summary: "Properties of a fluid over temperature",
	description:
		"Returns density, heat capacity, conductivity, viscosity and Prandtl number of one fluid between two temperatures, and its limits with their sources.",
	input: Query,
	output: Response,
	examples: {
		oil: {
			summary: "Thin mineral oil from a cold morning to a hot noon",
			value: { id: "mineralOilVg32", fromC: 0, toC: 160, stepK: 20 },
		},
		water: { summary: "Water over its whole known range", value: { id: "water" } },
	},
	maxAge: 86_400,
	cost: 1,
	refusals: [404, 422],
	plan: planOf,
	outcome: ({ fluid, temperatures }) => propertyTable(fluid, temperatures),
	answer: ({ fluid }, table, { id }) => ({
		fluid: wireFluid(id, fluid),
		table: {
			temperatureC: table.temperature.map(fromSi.celsius),
			densityKgPerM3: [...table.density],
			heatCapacityJPerKgK: [...table.heatCapacity],
			conductivityWPerMK: [...table.conductivity],
			dynamicViscosityPaS: [...table.viscosity],
			kinematicViscosityMm2PerS: table.kinematicViscosity.map(fromSi.squareMillimetresPerSecond),
			prandtl: [...table.Prandtl],
		},
	}),
	methods: ({ fluid, temperatures }) => fluidMethods(fluid, temperatures),
});

/** A fluid, and the temperatures of the rows [K]. */
interface TablePlan {
	readonly fluid: Fluid;
	readonly temperatures: readonly number[];
}

function planOf(query: z.output<typeof Query>): Completed<TablePlan> {
	const fluid = fluidById(query.id);
	const { low, high, within } = knownRange(fluid);
	const from = sentOr(query.fromC, "/fromC", low, derived("lowest known temperature of this fluid"));
	const to = sentOr(query.toC, "/toC", high, derived("highest known temperature of this fluid"));
	requireKnown({ fromC: from.value, toC: to.value }, low, high, fluid.name);
	const temperatures = evenTemperatures(toSi.celsius(from.value), toSi.celsius(to.value), query.stepK);
	return {
		value: { fluid, temperatures: temperatures.map(within) },
		assumed: [...from.assumed, ...to.assumed],
	};
}

const DECIMALS = 6; // of a degree: removes the round-off of the conversion to kelvins and back

/** The known range of a fluid [°C], and a function that keeps round-off inside it [K]. */
function knownRange({ range: [low, high] }: Fluid) {
	const celsius = (kelvin: number) => Number(fromSi.celsius(kelvin).toFixed(DECIMALS));
	const within = (kelvin: number) => Math.min(Math.max(kelvin, low), high);
	return { low: celsius(low), high: celsius(high), within };
}

/** Refuses rows outside the known range, and rows in falling order. */
function requireKnown(
	ends: { readonly fromC: number; readonly toC: number },
	low: number,
	high: number,
	name: string,
): void {
	const outside = (["fromC", "toC"] as const).filter((end) => !(ends[end] >= low && ends[end] <= high));
	const detail = (end: "fromC" | "toC") =>
		`${end} of ${ends[end]} °C is outside the known range of ${name}; send ${low} to ${high} °C`;
	if (outside.length > 0)
		throw new ProblemError(
			"out-of-range",
			detail(outside[0]!),
			outside.map((end) => ({ in: "query", parameter: end, detail: detail(end), code: "out_of_range" })),
		);
	if (ends.fromC > ends.toC) {
		const backwards = `toC of ${ends.toC} °C is below fromC of ${ends.fromC} °C; send a toC that is not below fromC`;
		throw new ProblemError("contradictory", backwards, [
			{ in: "query", parameter: "toC", detail: backwards, code: "contradictory" },
		]);
	}
}
