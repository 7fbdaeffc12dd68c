import { z } from "@hono/zod-openapi";
import { INSULATION_MATERIALS, type InsulationId, insulationConductivity } from "../../src/index.ts";
import { NoQuery } from "../wire/query.ts";
import { celsius, fromSi, kilogramsPerCubicMetre, ratio, toSi, wattsPerMetreKelvin } from "../wire/units.ts";
import { basicOperation } from "./operation.ts";

const IDS = Object.keys(INSULATION_MATERIALS) as [InsulationId, ...InsulationId[]];
const ROWS_C = [-20, 0, 10, 25, 50, 75, 100, 150, 200, 250, 300, 400, 500, 600, 700, 800];
const SAMPLE_MOISTURE = 0.05;

const Insulation = z
	.strictObject({
		id: z.enum(IDS).meta({ description: "Its name in requests." }),
		name: z.string(),
		validFromC: celsius("Coldest mean temperature of the layer that its conductivity was fitted to."),
		validToC: celsius("Hottest mean temperature of the layer that its conductivity was fitted to."),
		serviceLimitC: celsius("Hottest that its inner face bears in long service."),
		conductivity: z
			.strictObject({
				meanTemperatureC: z.array(celsius("Half-way between the layer's two faces.")),
				conductivityWPerMK: z.array(wattsPerMetreKelvin("Dry.")),
			})
			.meta({ description: "Thermal conductivity in columns, within the valid range." }),
		densityKgPerM3: kilogramsPerCubicMetre("Of the layer as sold."),
		moistureFactor: ratio(
			"f of ISO 10456: damp lagging conducts e^(f·ψ) times as well as dry, ψ the water in it by volume. 0 where it takes up none.",
		),
		mostMoistFraction: ratio("Water by volume up to which the factor holds."),
		wetOverDry: ratio("Conductivity with 5 % of water by volume, over dry."),
		hazard: z
			.enum(["none", "fibreDust", "carcinogenicFibre"])
			.meta({ description: "To whoever cuts it: nothing, dust of fibres, or fibres that may cause cancer." }),
		source: z.string().meta({ description: "Of its conductivity and its moisture factor." }),
	})
	.openapi("InsulationMaterial", { description: "A kind of lagging, generic for the trade." });

const Response = z.strictObject({ insulations: z.array(Insulation) }).openapi("Insulations");

export const insulations = basicOperation({
	method: "get",
	path: "/v1/insulations",
	operationId: "getInsulations",
	tag: "Loop",
	summary: "Lagging of the trade",
	description: [
		"Conductivity over temperature, service limit, what moisture does to it, and what it does to whoever cuts it.",
		"Kinds of lagging, not products. The conductivities lie in the middle of what products of the named standard declare: ± 8 %.",
		"Above 60 °C vapour carries further heat through wet open-cell lagging, two to four times as much in all (common practice, no source).",
	].join("\n"),
	input: NoQuery,
	output: Response,
	examples: { all: { summary: "No parameters", value: {} } },
	maxAge: 86_400,
	cost: 1,
	answer: () => ({ insulations: IDS.map(wireMaterial) }),
});

function wireMaterial(id: InsulationId): z.input<typeof Insulation> {
	const material = INSULATION_MATERIALS[id];
	const [low, high] = material.range;
	const rows = ROWS_C.filter((t) => toSi.celsius(t) >= low && toSi.celsius(t) <= high);
	const at = (celsius: number, moisture: number) =>
		insulationConductivity(material, toSi.celsius(celsius), moisture);
	return {
		id,
		name: material.name,
		validFromC: fromSi.celsius(low),
		validToC: fromSi.celsius(high),
		serviceLimitC: fromSi.celsius(material.serviceLimit),
		conductivity: { meanTemperatureC: rows, conductivityWPerMK: rows.map((t) => at(t, 0)) },
		densityKgPerM3: material.density,
		moistureFactor: material.moistureFactor,
		mostMoistFraction: material.mostMoisture,
		wetOverDry: at(rows[0]!, SAMPLE_MOISTURE) / at(rows[0]!, 0),
		hazard: material.hazard,
		source: material.source,
	};
}
