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
import { Assumed } from "../parts/assumed.ts";
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
	id: z.enum(FLUID_IDS).meta({ description: "Name of the fluid; `GET /v1/fluids` lists them." }),
	fromC: fromQuery(
		celsius("Coldest row. Left out: the coldest that is known of the fluid.", -60, 300),
	).optional(),
	toC: fromQuery(celsius("Hottest row. Left out: the hottest that is known of it.", -60, 300)).optional(),
	stepK: assume(
		fromQuery(kelvinDifference("Between rows; the last may be nearer.", 0.5, 100)),
		10,
		practice("a page of rows"),
	),
});

const column = (field: z.ZodNumber) => z.array(field);

const Table = z
	.strictObject({
		temperatureC: column(celsius("Of the row.")),
		densityKgPerM3: column(kilogramsPerCubicMetre("Mass of a cubic metre.")),
		heatCapacityJPerKgK: column(joulesPerKilogramKelvin("Specific heat.")),
		conductivityWPerMK: column(wattsPerMetreKelvin("Thermal conductivity.")),
		dynamicViscosityPaS: column(pascalSeconds("Dynamic viscosity.")),
		kinematicViscosityMm2PerS: column(
			squareMillimetresPerSecond("Kinematic viscosity; an oil's grade is that at 40 °C."),
		),
		prandtl: column(ratio("Prandtl number.")),
	})
	.openapi("FluidTable", {
		description:
			"Properties in columns, one row per temperature. Between rows viscosity does not run straight: ask for closer rows instead of interpolating.",
	});

const Response = z
	.strictObject({
		fluid: WireFluid,
		table: Table,
		assumed: z.array(Assumed),
		methods: z.array(Method).meta({ description: "What the columns rest on." }),
	})
	.openapi("FluidProperties");

export const fluidProperties = operation({
	method: "get",
	path: "/v1/fluids/{id}",
	operationId: "getFluid",
	tag: "Loop",
	summary: "A fluid's properties over temperature",
	description:
		"Density, heat capacity, conductivity, viscosity and Prandtl number of one fluid between two temperatures, and its limits, each with its source.",
	input: Query,
	output: Response,
	examples: {
		oil: {
			summary: "A thin mineral oil from a cold morning to a hot noon",
			value: { id: "mineralOilVg32", fromC: 0, toC: 160, stepK: 20 },
		},
		water: { summary: "All that is known of water", value: { id: "water" } },
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
	const { low, high, within } = knownOf(fluid);
	const from = sentOr(query.fromC, "/fromC", low, derived("the coldest that is known of this fluid"));
	const to = sentOr(query.toC, "/toC", high, derived("the hottest that is known of this fluid"));
	requireKnown({ fromC: from.value, toC: to.value }, low, high, fluid.name);
	const temperatures = evenTemperatures(toSi.celsius(from.value), toSi.celsius(to.value), query.stepK);
	return {
		value: { fluid, temperatures: temperatures.map(within) },
		assumed: [...from.assumed, ...to.assumed],
	};
}

const DECIMALS = 6; // of a degree: rounds off what the way to kelvins and back leaves behind

/** The range of a fluid as a person would say it [°C], and a way back into it for what rounding puts beside it [K]. */
function knownOf({ range: [low, high] }: Fluid) {
	const celsius = (kelvin: number) => Number(fromSi.celsius(kelvin).toFixed(DECIMALS));
	const within = (kelvin: number) => Math.min(Math.max(kelvin, low), high);
	return { low: celsius(low), high: celsius(high), within };
}

/** Refuses rows of which nothing is known, and rows that run backwards. */
function requireKnown(
	ends: { readonly fromC: number; readonly toC: number },
	low: number,
	high: number,
	name: string,
): void {
	const outside = (["fromC", "toC"] as const).filter((end) => !(ends[end] >= low && ends[end] <= high));
	const detail = (end: "fromC" | "toC") =>
		`${end} of ${ends[end]} °C lies outside what is known of ${name}: ${low} to ${high} °C`;
	if (outside.length > 0)
		throw new ProblemError(
			"out-of-range",
			detail(outside[0]!),
			outside.map((end) => ({ in: "query", parameter: end, detail: detail(end), code: "out_of_range" })),
		);
	if (ends.fromC > ends.toC) {
		const backwards = `the rows would run from ${ends.fromC} °C down to ${ends.toC} °C; toC must not lie below fromC`;
		throw new ProblemError("contradictory", backwards, [
			{ in: "query", parameter: "toC", detail: backwards, code: "contradictory" },
		]);
	}
}
