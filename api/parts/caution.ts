import { z } from "@hono/zod-openapi";
import { CAUTION_CODES, type Caution as CoreCaution, type Quantity } from "../../src/index.ts";
import { fromSi } from "../wire/units.ts";

export const Parameters = z.record(z.string(), z.union([z.number(), z.string()])).meta({
	description:
		"Values that the message mentions, by name with unit suffix. A client can use them to phrase the message in another language.",
});

export const Caution = z
	.strictObject({
		code: z
			.enum(CAUTION_CODES)
			.meta({ description: "Machine-readable code of the hazard.", examples: ["scald"] }),
		severity: z.enum(["danger", "warning", "info"]).meta({ description: "How severe the hazard is." }),
		parameters: Parameters,
		message: z.string().meta({ description: "The caution in English, with its parameters filled in." }),
	})
	.openapi("Caution", {
		description: "A safety caution to observe. It does not replace local codes and licensed practice.",
	});

/** Wire format of each kind of quantity: suffix of its name, unit for people, and number. */
const FORMATS: Readonly<
	Record<Quantity["kind"], { suffix: string; unit: string; value: (si: number) => number }>
> = {
	temperature: { suffix: "C", unit: " °C", value: fromSi.celsius },
	difference: { suffix: "K", unit: " K", value: (kelvins) => kelvins },
	pressure: { suffix: "Kpa", unit: " kPa", value: fromSi.kilopascals },
	volume: { suffix: "L", unit: " L", value: fromSi.litres },
	area: { suffix: "M2", unit: " m²", value: (squareMetres) => squareMetres },
	length: { suffix: "M", unit: " m", value: (metres) => metres },
	duration: { suffix: "Min", unit: " min", value: fromSi.minutes },
	power: { suffix: "W", unit: " W", value: (watts) => watts },
	irradiance: { suffix: "WPerM2", unit: " W/m²", value: (wattsPerSquareMetre) => wattsPerSquareMetre },
	energy: { suffix: "Kwh", unit: " kWh", value: fromSi.kilowattHours },
	ratio: { suffix: "", unit: "", value: (ratio) => ratio },
};

/** A caution in wire units, with its message filled in. */
export function wireCaution(caution: CoreCaution): z.input<typeof Caution> {
	const parameters: Record<string, number | string> = {};
	let message = caution.message;
	for (const [name, parameter] of Object.entries(caution.parameters)) {
		if (typeof parameter === "string") parameters[name] = parameter;
		else parameters[name + FORMATS[parameter.kind].suffix] = FORMATS[parameter.kind].value(parameter.value);
		message = message.replaceAll(
			`{${name}}`,
			typeof parameter === "string" ? parameter : quantityText(parameter),
		);
	}
	return { code: caution.code, severity: caution.severity, parameters, message };
}

function quantityText({ kind, value }: Quantity): string {
	if (kind === "irradiance") return `${threeDigits(fromSi.kilowatts(value))} kW/m²`; // in watts a focal spot needs seven digits
	const { unit, value: converted } = FORMATS[kind];
	return `${threeDigits(converted(value))}${unit}`;
}

const threeDigits = (value: number): number => Number(value.toPrecision(3));
