import { z } from "@hono/zod-openapi";
import { Assumed } from "../../parts/assumed.ts";
import { Caution } from "../../parts/caution.ts";
import { Design } from "../../parts/design.ts";
import { Method } from "../../parts/method.ts";
import { Range } from "../../parts/range.ts";
import { Reason } from "../../parts/reason.ts";
import { celsius, kilowattHours, litres, litresPerMinute, minutes, ratio, watts } from "../../wire/units.ts";
import { EnergyBalance } from "./energy-balance.ts";
import { DaySeries } from "./series.ts";

const localTime = (description: string) => z.string().openapi({ description, format: "date-time" });

export const WarmUpResponse = z
	.strictObject({
		outcome: z.enum(["reached", "notReached"]).meta({ description: "Whether the water reached the target." }),
		timeToTargetMin: minutes("From the start to the target. Absent when not reached.").optional(),
		targetTime: localTime("When the target was reached. Absent when not reached.").optional(),
		reason: Reason.optional(),
		timeZone: z.string().meta({ description: "Zone of the local times." }),
		startTime: localTime("When the run starts."),
		endTime: localTime("When it ends."),
		endTemperatureC: celsius("Mean of the tank at the end."),
		topTemperatureC: celsius("Top of the tank at the end."),
		layerTemperaturesC: z.array(celsius("Of a layer.")).meta({ description: "At the end, top first." }),
		boilingPointC: celsius("Of the tank's water, at its pressure."),
		boils: z.boolean().meta({ description: "Whether any of it boils." }),
		boilTime: localTime("When it first boils. Absent when it does not.").optional(),
		usableLitresAt40C: litres("What the tank gives at the tap at the end, mixed with mains to 40 °C."),
		meanPowerToWaterW: watts(
			"From the start to the target, or to the end. Negative where the loop took more out of the water than it brought.",
		),
		overallEfficiency: ratio(
			"Heat to the water over beam on the aperture, from the start to the target, or to the end. The heat of the pump and of warm air counts with the sun's: a tiny dish on a large cold tank can pass 1. Negative where the loop took more out of the water than it brought.",
		),
		maximumOilTemperatureC: celsius("Hottest fluid that left the receiver."),
		maximumFilmTemperatureC: celsius(
			"Hottest fluid at the receiver's wall, its light taken as spread evenly.",
		),
		stagnationTemperatureC: celsius(
			"Of the receiver without flow, at 1000 W/m², still air, 25 °C, its light taken as spread evenly.",
		),
		pumpTimeMin: minutes("That the pump ran."),
		leastFlowLPerMin: litresPerMinute("While the pump ran. Absent when it never ran.").optional(),
		starvedTimeMin: minutes("That the pump gave less than 95 % of its set flow."),
		turnedAwayTimeMin: minutes("That a limit turned the dish away."),
		deliveredKwh: kilowattHours("Heat given at the taps, above the mains."),
		unmetKwh: kilowattHours("Heat asked at the taps and not given: left to a backup."),
		energyBalance: EnergyBalance,
		range: Range.optional(),
		series: DaySeries,
		design: Design,
		cautions: z.array(Caution).meta({ description: "What to be careful of, the most serious first." }),
		assumed: z
			.array(Assumed)
			.meta({ description: "Every value that the request left out, and why this one." }),
		methods: z.array(Method).meta({ description: "What the numbers rest on." }),
	})
	.openapi("WarmUpResponse");

export type WarmUpResponse = z.output<typeof WarmUpResponse>;
