import type { z } from "@hono/zod-openapi";
import { energyClassLimits, type TankCooling } from "../../../src/index.ts";
import { fromSi, toSi } from "../../wire/units.ts";
import type { TankCoolingPlan } from "./plan.ts";
import type { TankCoolingResponse } from "./response.ts";

type Answer = z.input<typeof TankCoolingResponse>;

const DAY_H = 24;
const ECODESIGN = "C"; // class whose limit a new tank must keep, Regulation (EU) 814/2013, Annex II, 2.1

export function wireHoursUntil(
	{ limitsC, surroundings }: TankCoolingPlan,
	{ belowAfter }: TankCooling,
): Answer["hoursUntilC"] {
	return limitsC.map((temperatureC, i) => {
		const seconds = belowAfter[i];
		if (seconds !== undefined)
			return { temperatureC, outcome: "reached" as const, hours: fromSi.hours(seconds) };
		const outcome = toSi.celsius(temperatureC) > surroundings ? ("later" as const) : ("never" as const);
		return { temperatureC, outcome };
	});
}

export function wireStanding({ standing }: TankCooling): Answer["standing"] {
	const { power, coefficient, volume, energyClass } = standing;
	const limits = energyClassLimits(volume);
	const allowed = limits.find((limit) => limit.energyClass === ECODESIGN)!.below;
	return {
		standingLossW: power,
		standingLossKwhPerDay: fromSi.kilowattHours(power * toSi.hours(DAY_H)),
		lossCoefficientWPerK: coefficient,
		storageVolumeL: fromSi.litres(volume),
		energyClass,
		classLimits: limits.map((limit) => ({ energyClass: limit.energyClass, belowW: limit.below })),
		ecodesignLimitW: allowed,
		withinEcodesignLimit: power <= allowed,
	};
}

export function wireCoolingSeries({ task }: TankCoolingPlan, { curve }: TankCooling): Answer["series"] {
	return {
		stepMin: fromSi.minutes(task.rowStep),
		elapsedMin: curve.time.map(fromSi.minutes),
		tankMeanC: curve.mean.map(fromSi.celsius),
		tankTopC: curve.top.map(fromSi.celsius),
		tankBottomC: curve.bottom.map(fromSi.celsius),
		tankLossW: [...curve.power],
	};
}
