import { z } from "@hono/zod-openapi";
import type { DayOutcome, Plant, Shortfall, Task } from "../../src/index.ts";
import { fromSi } from "../wire/units.ts";
import { Parameters } from "./caution.ts";

const CODES = [
	"limitedByBoiling",
	"limitedByHighLimit",
	"limitedByOilLimit",
	"noSun",
	"sunBelowDish",
	"pumpNeverStarted",
	"tooLittleHeat",
] as const satisfies readonly Shortfall[];

export const Reason = z
	.strictObject({
		code: z
			.enum(CODES)
			.meta({ description: "Machine-readable code of the limit that prevented the target." }),
		parameters: Parameters,
		message: z.string().meta({ description: "The reason in English, with its parameters filled in." }),
	})
	.openapi("Reason", { description: "Why the target was not reached." });

const tenth = (value: number) => Math.round(value * 10) / 10;
const hundredth = (value: number) => Math.round(value * 100) / 100;

/** Why a day missed its target, with the limiting numbers. */
export function wireReason(
	code: Shortfall,
	plant: Plant,
	task: Task,
	outcome: DayOutcome,
): z.input<typeof Reason> {
	const { control } = plant.loop;
	const targetC = fromSi.celsius(task.target.temperature);
	switch (code) {
		case "limitedByBoiling": {
			const boilingPointC = fromSi.celsius(outcome.boilingPoint);
			return reasonOf(
				code,
				{ boilingPointC, targetTemperatureC: targetC },
				`Water boils at ${tenth(boilingPointC)} °C in this tank; the target is ${tenth(targetC)} °C.`,
			);
		}
		case "limitedByHighLimit": {
			const highLimitC = fromSi.celsius(control.highLimit);
			return reasonOf(
				code,
				{ highLimitC, targetTemperatureC: targetC },
				`The dish turns away from the sun when the top of the tank reaches ${tenth(highLimitC)} °C.`,
			);
		}
		case "limitedByOilLimit": {
			const oilLimitC = fromSi.celsius(control.oilLimit);
			return reasonOf(
				code,
				{ oilLimitC },
				`The dish turns away from the sun when the fluid leaves the receiver at ${tenth(oilLimitC)} °C.`,
			);
		}
		case "noSun":
			return reasonOf(code, {}, "No beam irradiance reaches the site in this run.");
		case "sunBelowDish": {
			const lowestSunAltitudeDeg = fromSi.degrees(plant.dish.lowestAltitude);
			const highestSunAltitudeDeg = fromSi.degrees(Math.max(...outcome.series.sunAltitude));
			return reasonOf(
				code,
				{ lowestSunAltitudeDeg, highestSunAltitudeDeg },
				`The dish can face the sun only from ${tenth(lowestSunAltitudeDeg)}° up; the sun stays below that.`,
			);
		}
		case "pumpNeverStarted": {
			const startDifferenceK = control.startDifference;
			return reasonOf(
				code,
				{ startDifferenceK },
				`The receiver was never ${tenth(startDifferenceK)} K warmer than the tank, so the pump did not start.`,
			);
		}
		case "tooLittleHeat":
			return tooLittleHeat(targetC, outcome);
	}
}

const MUCH = 0.1; // [-] of the heat delivered, above which the reason mentions the heat taken back; common practice, no source

function tooLittleHeat(targetTemperatureC: number, outcome: DayOutcome): z.input<typeof Reason> {
	const { takenBack, toWater } = outcome.balance;
	const endTemperatureC = fromSi.celsius(outcome.endMean);
	const takenBackKwh = fromSi.kilowattHours(takenBack);
	const broughtKwh = fromSi.kilowattHours(toWater + takenBack);
	const message = `The heat of this run brings the tank to ${tenth(endTemperatureC)} °C on average; the target is ${tenth(targetTemperatureC)} °C.`;
	const parameters = { endTemperatureC, targetTemperatureC };
	if (takenBack <= MUCH * (toWater + takenBack)) return reasonOf("tooLittleHeat", parameters, message);
	return reasonOf(
		"tooLittleHeat",
		{ ...parameters, broughtKwh, takenBackKwh },
		`${message} The loop delivered ${hundredth(broughtKwh)} kWh to the water and took ${hundredth(takenBackKwh)} kWh back: the fluid loses its heat between receiver and coil. Insulate and shorten the pipes, or let the pump start at a larger difference.`,
	);
}

function reasonOf(
	code: Shortfall,
	parameters: Record<string, number>,
	message: string,
): z.input<typeof Reason> {
	return { code, parameters, message };
}
