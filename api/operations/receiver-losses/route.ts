import { receiverCautions, receiverSurvey, surveyMethods } from "../../../src/index.ts";
import { dishOf } from "../../parts/dish.ts";
import { operation } from "../operation.ts";
import {
	wireConvectionRange,
	wireFluidLimits,
	wireLines,
	wireReceiverLight,
	wireSize,
	wireStagnation,
	wireTable,
	worstResidual,
} from "./answer.ts";
import { lossesPlan } from "./plan.ts";
import { ReceiverLossesRequest } from "./request.ts";
import { ReceiverLossesResponse } from "./response.ts";
import { LOSSES_RULES } from "./rules.ts";

export const receiverLossesOperation = operation({
	method: "post",
	path: "/v1/receiver/losses",
	operationId: "getReceiverLosses",
	tag: "Dish",
	summary: "Heat balance of a receiver",
	description: [
		"Computes useful heat and losses by path over lists of oil temperatures, winds and tilts. The receiver is a cavity, an open coil, a glazed coil or a measured efficiency line.",
		"The response includes wall and film temperatures, an efficiency line for each wind and tilt, and the stagnation temperature in full sun.",
		"Send either `dish` or `absorbedPowerW`.",
	].join("\n"),
	input: ReceiverLossesRequest,
	output: ReceiverLossesResponse,
	examples: {
		dish: {
			summary: "Cavity in the focus of a 1.8 m dish, in three winds",
			value: {
				dish: { diameterM: 1.8, focalLengthM: 0.675 },
				receiver: { kind: "cavity", apertureDiameterM: 0.12 },
				oilTemperatureC: [40, 80, 120, 160],
				windMPerS: [0, 2, 6],
			},
		},
		coil: {
			summary: "Glazed coil that absorbs 900 W, at two tilts",
			value: {
				absorbedPowerW: 900,
				receiver: { kind: "glazedCoil", apertureDiameterM: 0.25, emittance: 0.3 },
				tiltDeg: [20, 70],
			},
		},
		measured: {
			summary: "1.4 m dish, measured together with its receiver",
			value: {
				dish: { diameterM: 1.4 },
				receiver: { kind: "efficiencyLine", opticalEfficiency: 0.52, lossCoefficientWPerK: 4.6 },
				beamIrradianceWPerM2: 900,
				ambientC: 25,
				oilTemperatureC: [50, 75, 100, 125],
			},
		},
	},
	maxAge: 0,
	cost: 5,
	designs: ({ dish }) => ({ dish: dish && dishOf(dish) }),
	rules: LOSSES_RULES,
	plan: lossesPlan,
	outcome: ({ lit, survey }) => receiverSurvey(lit.receiver, survey),
	answer: ({ lit, survey, standstill, beam, basis }, rows) => ({
		kind: lit.receiver.kind,
		...wireSize(lit.receiver),
		light: wireReceiverLight(lit, beam),
		efficiencyBasis: lit.area === undefined ? ("absorbed" as const) : ("beamOnAperture" as const),
		table: wireTable(rows, basis, beam),
		worstResidualW: worstResidual(rows, lit.absorbed),
		efficiencyLines: wireLines(rows, survey.fluidTemperatures.length, basis, lit.area),
		...wireConvectionRange(rows),
		stagnation: wireStagnation(lit.receiver, standstill, survey.fluid),
		fluidLimits: wireFluidLimits(survey.fluid),
	}),
	cautions: ({ lit, survey, standstill, air, weatherproof }, rows) =>
		receiverCautions({
			receiver: lit.receiver,
			litBy: lit.dish && lit.area !== undefined ? { dish: lit.dish, area: lit.area } : undefined,
			fluid: survey.fluid,
			hottest: {
				maximumOil: Math.max(...rows.map(({ leavingTemperature }) => leavingTemperature)),
				maximumFilm: Math.max(...rows.map(({ balance }) => balance.filmTemperature)),
				stagnation: standstill.conditions.wallTemperature,
			},
			air,
			weatherproof,
		}),
	methods: ({ lit, standstill }, rows) => [
		...lit.methods,
		...surveyMethods(lit.receiver, rows, standstill.conditions),
	],
});
