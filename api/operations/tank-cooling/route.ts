import { coolingMethods, tankCautions, tankCooling } from "../../../src/index.ts";
import { fromSi, toSi } from "../../wire/units.ts";
import { operation } from "../operation.ts";
import { wireCoolingSeries, wireHoursUntil, wireStanding } from "./answer.ts";
import { tankCoolingForms } from "./forms.ts";
import { coolingDesigns, tankCoolingPlan } from "./plan.ts";
import { TankCoolingRequest } from "./request.ts";
import { TankCoolingResponse } from "./response.ts";
import { COOLING_RULES } from "./rules.ts";

const DAY_H = 24;

export const tankCoolingOperation = operation({
	method: "post",
	path: "/v1/tank/cooling",
	operationId: "getTankCooling",
	tag: "Tank",
	summary: "Cooling of a tank at rest",
	description: [
		"Computes the cool-down curve of a stratified tank, its heat loss coefficient and the hours until it falls below given temperatures.",
		"The response includes the standing loss at 45 K and the energy class of EU 812/2013. Only the volume is required.",
	].join("\n"),
	input: TankCoolingRequest,
	output: TankCoolingResponse,
	examples: {
		night: {
			summary: "200 L, stratified, through a winter night on a roof",
			value: {
				tank: {
					volumeL: 200,
					insulation: { material: "polyurethane", thicknessMm: 60 },
					startTemperatureC: [68, 67, 66, 64, 60, 54, 48, 42, 36, 30],
				},
				ambientC: -4,
				windMPerS: 3,
				elevationM: 2350,
				durationH: 14,
				untilC: [50, 45, 40],
				untilAt: "top",
			},
		},
		least: { summary: "The smallest valid request", value: { tank: { volumeL: 150 } } },
		indoors: {
			summary: "300 L in a cellar, with thick insulation, over three days",
			value: {
				tank: {
					volumeL: 300,
					surroundingsC: 15,
					startTemperatureC: 65,
					insulation: { material: "polyurethane", thicknessMm: 120 },
				},
				durationH: 72,
				seriesStepMin: 120,
				untilC: 55,
			},
		},
	},
	maxAge: 0,
	cost: 5,
	forms: tankCoolingForms,
	designs: coolingDesigns,
	rules: COOLING_RULES,
	plan: tankCoolingPlan,
	outcome: ({ tank, conditions, task }) => tankCooling(tank, conditions, task),
	answer: (plan, cooling) => ({
		lossCoefficientWPerK: cooling.lossCoefficient,
		timeConstantH: fromSi.hours(cooling.heatCapacity / cooling.lossCoefficient),
		heatCapacityKjPerK: fromSi.kilojoules(cooling.heatCapacity),
		surfaceTemperatureC: fromSi.celsius(cooling.surfaceTemperature),
		surroundingsC: fromSi.celsius(plan.surroundings),
		lossKwh: fromSi.kilowattHours(cooling.loss),
		lossKwhPerDay: fromSi.kilowattHours((cooling.loss / plan.task.duration) * toSi.hours(DAY_H)),
		endTemperatureC: fromSi.celsius(cooling.curve.mean.at(-1)!),
		layerTemperaturesC: Array.from(cooling.endTemperatures, fromSi.celsius),
		hoursUntilC: wireHoursUntil(plan, cooling),
		standing: wireStanding(cooling),
		series: wireCoolingSeries(plan, cooling),
	}),
	cautions: ({ tank, wall, air, weatherproof }, cooling) =>
		tankCautions({ tank, wall, cooling, air, weatherproof }),
	methods: ({ tank, surroundings }, cooling) => coolingMethods(tank, cooling, surroundings),
});
