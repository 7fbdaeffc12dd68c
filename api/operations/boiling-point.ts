import { z } from "@hono/zod-openapi";
import {
	boilingPoint as boilingTemperature,
	elevationAtPressure,
	measuredBoiling,
	saturationPressure,
	standardPressure,
} from "../../src/index.ts";
import { fromQuery } from "../wire/query.ts";
import { celsius, fromSi, kelvinDifference, kilopascals, metres, toSi } from "../wire/units.ts";
import { basicOperation } from "./operation.ts";

const INPUTS = ["elevationM", "pressureKpa", "boilingPointC"] as const;

const Query = z
	.strictObject({
		elevationM: fromQuery(metres("Elevation above sea level.", -430, 11_000)).optional(),
		pressureKpa: fromQuery(
			kilopascals("Absolute air pressure at the site, not reduced to sea level.", 22.64, 106.59),
		).optional(),
		boilingPointC: fromQuery(celsius("Boiling point of water in an open vessel.", 62.9, 101.4)).optional(),
		thermometerUncertaintyK: fromQuery(
			kelvinDifference("Uncertainty (±) of the thermometer that `boilingPointC` was read from.", 0, 5),
		).optional(),
	})
	.superRefine((query, context) => {
		if (query.thermometerUncertaintyK !== undefined && query.boilingPointC === undefined)
			context.addIssue({
				code: "custom",
				message: "thermometerUncertaintyK applies only to boilingPointC; send boilingPointC too or omit it",
				path: ["thermometerUncertaintyK"],
			});
		const sent = INPUTS.filter((name) => query[name] !== undefined);
		if (sent.length === 1) return;
		const count = sent.length === 0 ? "none was sent" : `${sent.join(" and ")} were sent`;
		const message = `Send exactly one of ${INPUTS.join(", ")}; ${count}`;
		for (const name of sent) context.addIssue({ code: "custom", message, path: [name] });
		if (sent.length === 0) context.addIssue({ code: "custom", message, path: [] });
	});

const Response = z
	.strictObject({
		given: z.enum(INPUTS).openapi({ description: "Which of the three values the request sent." }),
		elevationM: metres("Elevation above sea level, as sent or from the standard atmosphere."),
		pressureKpa: kilopascals(
			"Absolute air pressure: as sent, from the standard atmosphere, or from the boiling point.",
		),
		boilingPointC: celsius("Boiling point of water in an open vessel at that pressure."),
		uncertainty: z
			.strictObject({
				elevationM: metres("Uncertainty (±) of the elevation."),
				pressureKpa: kilopascals("Uncertainty (±) of the air pressure."),
				boilingPointK: kelvinDifference("Uncertainty (±) of the boiling point."),
			})
			.openapi({
				description:
					"Uncertainty of each value due to weather: ordinary weather changes air pressure by ±1.3 kPa. A value that follows from a measured pressure or boiling point without the standard atmosphere has 0, or the effect of `thermometerUncertaintyK`. Weather and thermometer add in squares.",
			}),
		sources: z.array(z.string()).openapi({ description: "Publications behind the numbers." }),
	})
	.openapi("BoilingPoint");

export const boilingPoint = basicOperation({
	method: "get",
	path: "/v1/boiling-point",
	operationId: "getBoilingPoint",
	tag: "Water",
	summary: "Elevation, air pressure and boiling point",
	description: [
		"Converts between elevation, air pressure and boiling point: send exactly one, the response has all three.",
		"The standard atmosphere relates elevation and pressure; the steam tables relate pressure and boiling point.",
		"Weather changes the pressure, so an elevation computed from a boiling point is rough: see `uncertainty`.",
		"`thermometerUncertaintyK` adds the uncertainty of the thermometer. Half a kelvin is about 150 m, and so is ordinary weather.",
	].join("\n"),
	input: Query,
	output: Response,
	examples: {
		elevation: { summary: "Boiling point at 3000 m", value: { elevationM: 3000 } },
		thermometer: {
			summary: "Elevation from a boiling point of 90 ± 0.5 °C",
			value: { boilingPointC: 90, thermometerUncertaintyK: 0.5 },
		},
		boilingPoint: { summary: "Elevation at which water boils at 90 °C", value: { boilingPointC: 90 } },
	},
	maxAge: 86_400,
	cost: 1,
	answer: (query) => {
		const pressure = pressureOf(query);
		const start = INPUTS.find((name) => query[name] !== undefined)!;
		return {
			given: start,
			elevationM: query.elevationM ?? elevationAtPressure(pressure),
			pressureKpa: query.pressureKpa ?? fromSi.kilopascals(pressure),
			boilingPointC: query.boilingPointC ?? fromSi.celsius(boilingTemperature(pressure)),
			uncertainty:
				query.boilingPointC !== undefined && query.thermometerUncertaintyK !== undefined
					? readingOf(query.boilingPointC, query.thermometerUncertaintyK)
					: uncertaintyOf(start, pressure),
			sources: [
				"ISO 2533:1975, standard atmosphere (elevation taken as geopotential)",
				"IAPWS R7-97(2012), saturation equations of region 4",
			],
		};
	},
});

/** Air pressure [Pa] from the value that the request sends. */
function pressureOf(query: z.output<typeof Query>): number {
	if (query.pressureKpa !== undefined) return toSi.kilopascals(query.pressureKpa);
	if (query.boilingPointC !== undefined) return saturationPressure(toSi.celsius(query.boilingPointC));
	return standardPressure(query.elevationM!);
}

/** Uncertainty of a measured boiling point due to weather and thermometer. */
function readingOf(boilingPointC: number, thermometerUncertaintyK: number) {
	const read = measuredBoiling(toSi.celsius(boilingPointC), thermometerUncertaintyK);
	return {
		elevationM: read.elevationUncertainty,
		pressureKpa: fromSi.kilopascals(read.pressureUncertainty),
		boilingPointK: thermometerUncertaintyK,
	};
}

const WEATHER = 1300; // [Pa] swing of the air's pressure about the standard atmosphere; common practice, no source
const STEP = 10; // [Pa] of the difference quotient

/** Uncertainty of each value due to weather: its slope at this pressure, with the step towards the middle of the range. */
function uncertaintyOf(start: (typeof INPUTS)[number], pressure: number) {
	const step = pressure > 60_000 ? -STEP : STEP;
	const swing = (f: (pressure: number) => number) =>
		Math.abs((f(pressure + step) - f(pressure)) / step) * WEATHER;
	const fromElevation = start === "elevationM";
	return {
		elevationM: fromElevation ? 0 : swing(elevationAtPressure),
		pressureKpa: fromElevation ? fromSi.kilopascals(WEATHER) : 0,
		boilingPointK: fromElevation ? swing(boilingTemperature) : 0,
	};
}
