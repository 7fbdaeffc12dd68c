import { z } from "@hono/zod-openapi";
import { CAUTION_CODES, type Caution as CoreCaution, type Quantity } from "../../src/index.ts";
import { fromSi } from "../wire/units.ts";

export const Parameters = z.record(z.string(), z.union([z.number(), z.string()])).meta({
	description:
		"What the sentence speaks of, by name and unit, so that a page can say it in its own language.",
});

export const Caution = z
	.strictObject({
		code: z
			.enum(CAUTION_CODES)
			.meta({ description: "Which hazard, for a program to branch on.", examples: ["scald"] }),
		severity: z.enum(["danger", "warning", "info"]).meta({ description: "How bad it can get." }),
		parameters: Parameters,
		message: z.string().meta({ description: "The same in English." }),
	})
	.openapi("Caution", {
		description: "One thing to be careful of. It does not replace local codes and licensed practice.",
	});

/** How each kind of quantity leaves: its unit's suffix, its number, and what a person reads. */
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

/** A caution in wire units, its sentence filled in. */
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
	if (kind === "irradiance") return `${threeDigits(fromSi.kilowatts(value))} kW/m²`; // in watts a focus takes seven digits
	const { unit, value: converted } = FORMATS[kind];
	return `${threeDigits(converted(value))}${unit}`;
}

const threeDigits = (value: number): number => Number(value.toPrecision(3));
