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
	summary: "Losses of pipes, fittings and pump",
	description: [
		"Computes heat loss, pressure drop and electricity of the loop between receiver and tank: supply, return, fittings and pump, per metre and in total.",
		"The response shows what thicker insulation saves, what rain costs with and without a cover, and what the pump delivers with cold, viscous fluid.",
		"Only `supplyTemperatureC` is required. Heat loss per metre is accurate within 10 % for dry insulation.",
	].join("\n"),
	input: LoopLossesRequest,
	output: LoopLossesResponse,
	examples: {
		oil: {
			summary: "Hot oil in 10 m of 15 mm copper each way, with receiver and coil in the circuit",
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
		least: { summary: "The smallest valid request", value: { supplyTemperatureC: 90 } },
		bare: {
			summary: "Hot water in bare pipes at 2350 m",
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
	unused: ["/loop/control/", "/loop/expansionL"], // pump control and expansion volume
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
	methods: ({ loop, conditions, insulated }, { losses, starts }) =>
		loopMethods(loop, conditions, losses, starts, insulated),
});
