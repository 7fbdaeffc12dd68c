import { coldStart, loopCautions, loopLosses, loopMethods } from "../../../src/index.ts";
import { fromSi } from "../../wire/units.ts";
import { operation } from "../operation.ts";
import { wireColdStart, wirePipes, wireRest, yearly } from "./answer.ts";
import { loopLossesPlan } from "./plan.ts";
import { LoopLossesRequest } from "./request.ts";
import { LoopLossesResponse } from "./response.ts";
import { LOOP_RULES } from "./rules.ts";

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
	cost: 5,
	unused: ["/loop/control/", "/loop/expansionL"], // what starts the pump and what takes up the fluid
	rules: LOOP_RULES,
	plan: loopLossesPlan,
	outcome: ({ loop, conditions, lagging, further, startTemperatures }) => ({
		losses: loopLosses(loop, conditions, lagging),
		starts: startTemperatures.map((temperature) => coldStart(loop, further, temperature)),
	}),
	answer: (plan, { losses, starts }, { pumpHoursPerYear: hours }) => ({
		lossW: losses.heatLoss,
		netLossW: losses.netHeatLoss,
		lossKwhPerYear: yearly(losses.heatLoss, hours),
		pressureDropKpa: fromSi.kilopascals(losses.pump.pressure),
		...wirePipes(plan, losses, hours),
		...wireRest(losses, hours),
		coldStart: starts.map(wireColdStart),
	}),
	cautions: ({ loop, conditions, air, walls, weatherproof }, { losses, starts }) =>
		loopCautions({ loop, conditions, losses, starts, air, walls, weatherproof }),
	methods: ({ loop, conditions, lagged }, { losses, starts }) =>
		loopMethods(loop, conditions, losses, starts, lagged),
});
