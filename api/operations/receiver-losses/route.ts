import {
	type Caution,
	fluidById,
	hasTube,
	receiverCautions,
	receiverSurvey,
	type SurveyRow,
	surveyMethods,
} from "../../../src/index.ts";
import { wireCaution } from "../../parts/caution.ts";
import { airAt } from "../../parts/day-air.ts";
import { type Assumed, defaultsTaken, filling } from "../../wire/defaults.ts";
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
import { type LitReceiver, litReceiver, type Standstill, standstill, surveyPlan } from "./plan.ts";
import { ReceiverLossesRequest } from "./request.ts";
import { ReceiverLossesResponse } from "./response.ts";
import { requireSoundLosses } from "./rules.ts";

export const receiverLossesOperation = operation({
	method: "post",
	path: "/v1/receiver/losses",
	operationId: "getReceiverLosses",
	tag: "Dish",
	summary: "What a receiver keeps and loses",
	description: [
		"Balance of a cavity, an open coil, a glazed coil or a measured efficiency line, by path, over lists of oil temperatures, winds and tilts;",
		"its straight efficiency line for each wind and tilt; wall and film temperature; and how hot it gets when the pump stops in full sun.",
		"Give the dish that lights it, or `absorbedPowerW`.",
	].join("\n"),
	input: ReceiverLossesRequest,
	output: ReceiverLossesResponse,
	examples: {
		dish: {
			summary: "A cavity in the focus of a dish of 1.8 m, in three winds",
			value: {
				dish: { diameterM: 1.8, focalLengthM: 0.675 },
				receiver: { kind: "cavity", apertureDiameterM: 0.12 },
				oilTemperatureC: [40, 80, 120, 160],
				windMPerS: [0, 2, 6],
			},
		},
		coil: {
			summary: "A glazed coil that takes up 900 W, at two tilts",
			value: {
				absorbedPowerW: 900,
				receiver: { kind: "glazedCoil", apertureDiameterM: 0.25, emittance: 0.3 },
				tiltDeg: [20, 70],
			},
		},
		measured: {
			summary: "A dish of 1.4 m that was measured together with its receiver",
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
	answer: (request, given) => {
		requireSoundLosses(request);
		const defaults = defaultsTaken(ReceiverLossesRequest, given, request);
		const { fill, filled } = filling();
		const lit = litReceiver(request, fill);
		const beam = request.beamIrradianceWPerM2;
		const basis = lit.area === undefined ? lit.absorbed : beam * lit.area;
		const plan = surveyPlan(request, lit.absorbed);
		const rows = receiverSurvey(lit.receiver, plan);
		const still = standstill(request, lit);
		return {
			kind: lit.receiver.kind,
			...wireSize(lit.receiver),
			light: wireReceiverLight(lit, beam),
			efficiencyBasis: lit.area === undefined ? ("absorbed" as const) : ("beamOnAperture" as const),
			table: wireTable(rows, basis, beam),
			worstResidualW: worstResidual(rows, lit.absorbed),
			efficiencyLines: wireLines(rows, request.oilTemperatureC.length, basis, lit.area),
			...wireConvectionRange(rows),
			stagnation: wireStagnation(lit.receiver, still, plan.fluid),
			fluidLimits: wireFluidLimits(plan.fluid),
			cautions: cautionsOf(request, lit, rows, still, defaults).map(wireCaution),
			assumed: [...defaults, ...filled],
			methods: [...lit.methods, ...surveyMethods(lit.receiver, rows, still.conditions)],
		};
	},
});

function cautionsOf(
	{ receiver, fluid, ambientC }: ReceiverLossesRequest,
	lit: LitReceiver,
	rows: readonly SurveyRow[],
	{ conditions }: Standstill,
	defaults: readonly Assumed[],
): readonly Caution[] {
	const { receiver: core, dish, area } = lit;
	return receiverCautions({
		receiver: core,
		litBy: dish && area !== undefined ? { dish, area } : undefined,
		fluid: fluidById(fluid),
		hottest: {
			maximumOil: Math.max(...rows.map(({ leavingTemperature }) => leavingTemperature)),
			maximumFilm: Math.max(...rows.map(({ balance }) => balance.filmTemperature)),
			stagnation: conditions.wallTemperature,
		},
		air: airAt("/ambientC", ambientC, defaults),
		weatherproof:
			!hasTube(receiver) || receiver.insulation.thicknessMm === 0 || receiver.insulation.weatherproof,
	});
}
