import { coldStart, loopCautions, loopLosses, loopMethods } from "../../../src/index.ts";
import { wireCaution } from "../../parts/caution.ts";
import { airAt } from "../../parts/day-air.ts";
import { defaultsTaken, filling } from "../../wire/defaults.ts";
import { fromSi } from "../../wire/units.ts";
import { operation } from "../operation.ts";
import { wireColdStart, wirePipes, wireRest, yearly } from "./answer.ts";
import { loopLossesPlan, matters } from "./plan.ts";
import { LoopLossesRequest } from "./request.ts";
import { LoopLossesResponse } from "./response.ts";
import { requireSoundLoop } from "./rules.ts";

export const loopLossesOperation = operation({
	method: "post",
	path: "/v1/loop/losses",
	operationId: "getLoopLosses",
	tag: "Loop",
	summary: "What pipes, fittings and pump lose",
	description: [
		"Heat, pressure and electricity of the loop between receiver and tank, per metre and whole: supply, return, fittings and pump.",
		"What each further centimetre of lagging saves, what rain costs with and without a cover, and what the pump gives when the fluid is cold and thick.",
		"Only the temperature of the fluid is needed. The losses of a metre hold within 10 % dry.",
	].join("\n"),
	input: LoopLossesRequest,
	output: LoopLossesResponse,
	examples: {
		oil: {
			summary: "Ten metres each way of 15 mm copper, hot oil, with receiver and coil in the circuit",
			value: {
				supplyTemperatureC: 130,
				returnTemperatureC: 110,
				loop: {
					fluid: "mineralOilVg32",
					supply: { lengthM: 10, insulation: { material: "mineralWool", thicknessMm: 30 } },
					return: { lengthM: 10, insulation: { material: "mineralWool", thicknessMm: 30 } },
				},
				furtherTubes: [
					{ lengthM: 6, innerDiameterMm: 10, helixDiameterM: 0.15 },
					{ lengthM: 12, innerDiameterMm: 10, helixDiameterM: 0.35 },
				],
				ambientC: 10,
				windMPerS: 3,
			},
		},
		least: { summary: "The least that must be said", value: { supplyTemperatureC: 90 } },
		bare: {
			summary: "Bare pipes of hot water at 2350 m",
			value: {
				supplyTemperatureC: 80,
				returnTemperatureC: 70,
				elevationM: 2350,
				loop: {
					fluid: "water",
					supply: { insulation: { thicknessMm: 0, surfaceEmittance: 0.1 } },
					return: { insulation: { thicknessMm: 0, surfaceEmittance: 0.1 } },
				},
			},
		},
	},
	maxAge: 0,
	answer: (request, given) => {
		requireSoundLoop(request);
		const defaults = defaultsTaken(LoopLossesRequest, given, request);
		const air = airAt("/ambientC", request.ambientC, defaults);
		const { fill, filled } = filling();
		const plan = loopLossesPlan(request, fill);
		const { loop, conditions } = plan;
		const losses = loopLosses(loop, conditions, plan.asked);
		const starts = plan.startTemperatures.map((t) => coldStart(loop, plan.further, t));
		const hours = request.pumpHoursPerYear;
		const pipes = [request.loop.supply.insulation, request.loop.return.insulation];
		const weatherproof = pipes.every((layer) => layer.weatherproof || layer.thicknessMm === 0);
		const walls = {
			supply: request.loop.supply.material,
			return: request.loop.return.material,
			further: request.furtherTubes.map(({ material }) => material),
		};
		const lagged = pipes.some(({ thicknessMm }) => thicknessMm > 0);
		return {
			lossW: losses.heatLoss,
			netLossW: losses.netHeatLoss,
			lossKwhPerYear: yearly(losses.heatLoss, hours),
			pressureDropKpa: fromSi.kilopascals(losses.pump.pressure),
			...wirePipes(plan, losses, hours),
			...wireRest(losses, hours),
			coldStart: starts.map(wireColdStart),
			cautions: loopCautions({ loop, conditions, losses, starts, air, walls, weatherproof }).map(wireCaution),
			assumed: [...defaults, ...filled].filter(matters),
			methods: loopMethods(loop, conditions, losses, starts, lagged).map((method) => ({ ...method })),
		};
	},
});
