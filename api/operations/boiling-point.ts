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

const GIVENS = ["elevationM", "pressureKpa", "boilingPointC"] as const;

const Query = z
	.strictObject({
		elevationM: fromQuery(metres("Elevation above sea level.", -430, 11_000)).optional(),
		pressureKpa: fromQuery(
			kilopascals("Absolute pressure of the air at the place, not reduced to sea level.", 22.64, 106.59),
		).optional(),
		boilingPointC: fromQuery(celsius("Boiling point of water in an open vessel.", 62.9, 101.4)).optional(),
		thermometerUncertaintyK: fromQuery(
			kelvinDifference("Plus or minus of the thermometer that the boiling point was read from.", 0, 5),
		).optional(),
	})
	.superRefine((query, context) => {
		if (query.thermometerUncertaintyK !== undefined && query.boilingPointC === undefined)
			context.addIssue({
				code: "custom",
				message: "must come with boilingPointC, which it is the uncertainty of",
				path: ["thermometerUncertaintyK"],
			});
		const sent = GIVENS.filter((name) => query[name] !== undefined);
		if (sent.length === 1) return;
		const count = sent.length === 0 ? "none is given" : `${sent.join(" and ")} are given`;
		const message = `Give exactly one of ${GIVENS.join(", ")}; ${count}`;
		for (const name of sent) context.addIssue({ code: "custom", message, path: [name] });
		if (sent.length === 0) context.addIssue({ code: "custom", message, path: [] });
	});

const Response = z
	.strictObject({
		given: z.enum(GIVENS).openapi({ description: "Which of the three was asked from." }),
		elevationM: metres("Elevation above sea level, of the standard atmosphere unless given."),
		pressureKpa: kilopascals("Absolute pressure of the air, of the standard atmosphere unless given."),
		boilingPointC: celsius("Boiling point of water in an open vessel at that pressure."),
		uncertainty: z
			.strictObject({
				elevationM: metres("Plus or minus."),
				pressureKpa: kilopascals("Plus or minus."),
				boilingPointK: kelvinDifference("Plus or minus."),
			})
			.openapi({
				description:
					"How far weather moves each: ordinary weather moves the air's pressure by ±1.3 kPa. What follows from a measured pressure or boiling point without the standard atmosphere carries 0, or what `thermometerUncertaintyK` makes of it; weather and thermometer add in squares.",
			}),
		sources: z.array(z.string()).openapi({ description: "What the numbers rest on." }),
	})
	.openapi("BoilingPoint");

export const boilingPoint = basicOperation({
	method: "get",
	path: "/v1/boiling-point",
	operationId: "getBoilingPoint",
	tag: "Water",
	summary: "Elevation, air pressure and boiling point",
	description: [
		"Takes exactly one of elevation, air pressure and boiling point, and answers all three.",
		"Elevation and pressure are joined by the standard atmosphere, pressure and boiling point by the steam tables.",
		"Weather moves the pressure, so an elevation found from a boiling point is rough: see `uncertainty`.",
		"With the ± of the thermometer that is counted as well: half a kelvin is about 150 m, and so is ordinary weather.",
	].join("\n"),
	input: Query,
	output: Response,
	examples: {
		elevation: { summary: "Where water boils at 3000 m", value: { elevationM: 3000 } },
		thermometer: {
			summary: "The same, read from a thermometer good to half a kelvin",
			value: { boilingPointC: 90, thermometerUncertaintyK: 0.5 },
		},
		boilingPoint: { summary: "How high a pot stands that boils at 90 °C", value: { boilingPointC: 90 } },
	},
	maxAge: 86_400,
	cost: 1,
	answer: (query) => {
		const pressure = pressureOf(query);
		const start = GIVENS.find((name) => query[name] !== undefined)!;
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

/** Air pressure [Pa] from whichever of the three is given. */
function pressureOf(query: z.output<typeof Query>): number {
	if (query.pressureKpa !== undefined) return toSi.kilopascals(query.pressureKpa);
	if (query.boilingPointC !== undefined) return saturationPressure(toSi.celsius(query.boilingPointC));
	return standardPressure(query.elevationM!);
}

/** What weather and a thermometer together make of a boiling point that was read. */
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

/** What the weather's swing comes to in each of the three: its slope at this pressure, taken towards the middle of the range. */
function uncertaintyOf(start: (typeof GIVENS)[number], pressure: number) {
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
