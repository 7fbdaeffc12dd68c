import { z } from "@hono/zod-openapi";
import { backing } from "../../parts/backing.ts";
import { Design } from "../../parts/design.ts";
import { Range } from "../../parts/range.ts";
import { Reason } from "../../parts/reason.ts";
import { celsius, kilowattHours, litres, litresPerMinute, minutes, ratio, watts } from "../../wire/units.ts";
import { EnergyBalance } from "./energy-balance.ts";
import { DaySeries } from "./series.ts";

const localTime = (description: string) => z.string().openapi({ description, format: "date-time" });

export const WarmUpResponse = z
	.strictObject({
		outcome: z
			.enum(["reached", "notReached"])
			.meta({ description: "Whether the water reached the target temperature." }),
		timeToTargetMin: minutes(
			"Time from the start of the run until the water reaches the target. Absent when it does not.",
		).optional(),
		targetTime: localTime(
			"Local time at which the water reaches the target. Absent when it does not.",
		).optional(),
		reason: Reason.optional(),
		timeZone: z.string().meta({ description: "IANA time zone of the local times in this response." }),
		startTime: localTime("Local time at which the run starts."),
		endTime: localTime("Local time at which the run ends."),
		endTemperatureC: celsius("Mean temperature of the tank at the end of the run."),
		topTemperatureC: celsius("Temperature of the tank's top layer at the end of the run."),
		layerTemperaturesC: z
			.array(celsius("Temperature of one layer of the tank at the end of the run."))
			.meta({ description: "Temperatures of the tank's layers at the end of the run, top first." }),
		boilingPointC: celsius("Boiling point of the water in the tank, at the tank's pressure."),
		boils: z.boolean().meta({ description: "Whether any of the tank's water boils during the run." }),
		boilTime: localTime(
			"Local time at which the tank's water first boils. Absent when it does not.",
		).optional(),
		usableLitresAt40C: litres(
			"Volume available at the tap at the end of the run, mixed with mains water to 40 °C.",
		),
		meanPowerToWaterW: watts(
			"Mean power from the loop to the water, from the start to the target or, if that is not reached, to the end. Negative where the loop removed more heat than it delivered.",
		),
		overallEfficiency: ratio(
			"Heat delivered to the water divided by the beam on the aperture, from the start to the target or, if that is not reached, to the end. Heat from the pump and from warm air is included, so a tiny dish on a large cold tank can exceed 1. Negative where the loop removed more heat than it delivered.",
		),
		maximumOilTemperatureC: celsius("Highest temperature of the fluid leaving the receiver."),
		maximumFilmTemperatureC: celsius(
			"Highest temperature of the fluid film at the receiver's wall, with the light assumed to be spread evenly.",
		),
		stagnationTemperatureC: celsius(
			"Temperature of the receiver without flow at 1000 W/m² in still air at 25 °C, with the light assumed to be spread evenly.",
		),
		pumpTimeMin: minutes("Time during which the pump ran."),
		leastFlowLPerMin: litresPerMinute(
			"Lowest flow in the loop while the pump ran. Absent when it never ran.",
		).optional(),
		starvedTimeMin: minutes("Time during which the pump delivered less than 95 % of its set flow."),
		turnedAwayTimeMin: minutes(
			"Time during which a temperature limit kept the dish turned away from the sun.",
		),
		deliveredKwh: kilowattHours("Heat delivered at the taps, above the mains temperature."),
		unmetKwh: kilowattHours("Heat demanded at the taps but not delivered; a backup heater must supply it."),
		energyBalance: EnergyBalance,
		range: Range.optional(),
		series: DaySeries,
		design: Design,
		...backing,
	})
	.openapi("WarmUpResponse");

export type WarmUpResponse = z.output<typeof WarmUpResponse>;
