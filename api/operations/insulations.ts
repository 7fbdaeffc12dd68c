import { z } from "@hono/zod-openapi";
import { INSULATION_MATERIALS, type InsulationId, insulationConductivity } from "../../src/index.ts";
import { provenance, wireProvenance } from "../parts/provenance.ts";
import { NoQuery } from "../wire/query.ts";
import { celsius, fromSi, kilogramsPerCubicMetre, ratio, toSi, wattsPerMetreKelvin } from "../wire/units.ts";
import { basicOperation } from "./operation.ts";

const IDS = Object.keys(INSULATION_MATERIALS) as [InsulationId, ...InsulationId[]];
const ROWS_C = [-20, 0, 10, 25, 50, 75, 100, 150, 200, 250, 300, 400, 500, 600, 700, 800];
const SAMPLE_MOISTURE = 0.05;

const column = (field: z.ZodNumber) => z.array(field).meta({ description: field.description });

const Insulation = z
	.strictObject({
		id: z.enum(IDS).meta({ description: "Id of the material in requests." }),
		name: z.string().meta({ description: "Name of the material in English." }),
		validFromC: celsius("Lowest mean temperature of the insulation for which its conductivity is valid."),
		validToC: celsius("Highest mean temperature of the insulation for which its conductivity is valid."),
		serviceLimitC: celsius("Highest temperature of the insulation's inner face in long service."),
		conductivity: z
			.strictObject({
				meanTemperatureC: column(
					celsius("Mean temperature of the insulation: half-way between its two faces."),
				),
				conductivityWPerMK: column(wattsPerMetreKelvin("Thermal conductivity of the dry insulation.")),
			})
			.meta({
				description: "Thermal conductivity over mean temperature in columns, within the valid range.",
			}),
		densityKgPerM3: kilogramsPerCubicMetre("Density of the insulation as sold."),
		moistureFactor: ratio(
			"Moisture conversion factor f of ISO 10456. Moist insulation conducts e^(f·ψ) times as much heat as dry, with ψ its water by volume. 0 where it absorbs none.",
		),
		mostMoistFraction: ratio("Largest volume fraction of water for which `moistureFactor` is valid."),
		wetOverDry: ratio("Conductivity with 5 % of water by volume, divided by dry conductivity."),
		hazard: z.enum(["none", "fibreDust", "carcinogenicFibre"]).meta({
			description: "Hazard when cutting the material: none, fibre dust, or fibres that may cause cancer.",
		}),
		...provenance,
	})
	.openapi("InsulationMaterial", {
		description:
			"A kind of insulation, generic for the trade. Basis, source and `confirmed` describe its conductivity and moisture factor.",
	});

const Response = z
	.strictObject({
		insulations: z.array(Insulation).meta({ description: "Insulation materials that requests can name." }),
	})
	.openapi("Insulations");

export const insulations = basicOperation({
	method: "get",
	path: "/v1/insulations",
	operationId: "getInsulations",
	tag: "Loop",
	summary: "Insulation materials",
	description: [
		"Lists conductivity over temperature, service limit, effect of moisture and hazard when cutting for each insulation material.",
		"These are kinds of insulation, not products. The conductivities are mid-range for products of the named standard: ± 8 %.",
		"Above 60 °C, vapour carries further heat through wet open-cell insulation: two to four times as much in all. That factor is common practice.",
	].join("\n"),
	input: NoQuery,
	output: Response,
	examples: { all: { summary: "Request without parameters", value: {} } },
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
		...wireProvenance(material),
	};
}
