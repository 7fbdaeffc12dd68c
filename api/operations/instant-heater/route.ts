import { type InstantOutcome, instantCautions, instantOutcome } from "../../../src/index.ts";
import { fromSi } from "../../wire/units.ts";
import { operation } from "../operation.ts";
import { wireLevel, wireOutlet, wireRow, wireUse, wireVessel } from "./answer.ts";
import { wireHours } from "./hours.ts";
import { feedFlow, type InstantPlan, instantDesigns, instantPlan } from "./plan.ts";
import { instantRange } from "./range.ts";
import { wireInstantReason } from "./reason.ts";
import { InstantRequest } from "./request.ts";
import { InstantResponse } from "./response.ts";
import { INSTANT_RULES } from "./rules.ts";

export const instant = operation({
	method: "post",
	path: "/v1/instant/feasibility",
	operationId: "assessInstantHeater",
	tag: "Plant",
	summary: "Can this dish heat water as it flows?",
	description: [
		"Water heated as it runs, straight through the focus and along a pipe, or through a small vessel of hot oil: how much flows at the wanted temperature",
		"under each sun, whether that is enough, how large a dish would be, and what a shower, a basin tap and a kitchen sink ask for.",
		"A plain word first: a dish of 2 to 3 m² gives 1 to 2 kW, a shower takes 11 to 20 kW. Such a dish fills a tank; it serves no shower as it flows.",
		"With a date the verdict is for a window of that day, without one for the beam levels. An infeasible heater is an answer with its `reasons`.",
	].join("\n"),
	input: InstantRequest,
	output: InstantResponse,
	examples: {
		shower: {
			summary: "A shower from a dish of 1.8 m, on a clear winter day",
			value: {
				site: { latitude: 28.6, longitude: 77.2, elevationM: 216 },
				date: "2025-01-15",
				dish: { diameterM: 1.8 },
				wantedTemperatureC: 40,
				wantedFlowLPerMin: 6,
				withRange: true,
			},
		},
		levels: {
			summary: "What flows at 38 °C, by beam",
			value: {
				site: { latitude: 31.2, longitude: -7.9, elevationM: 2350 },
				dish: { diameterM: 2 },
				wantedTemperatureC: 38,
				beamIrradianceWPerM2: [300, 500, 700, 900],
			},
		},
		barePipe: {
			summary: "The same, eight metres of bare pipe away",
			value: {
				site: { latitude: 31.2, longitude: -7.9, elevationM: 2350 },
				dish: { diameterM: 2 },
				outletPipe: { lengthM: 8, insulation: { thicknessMm: 0 } },
				wantedTemperatureC: 38,
				beamIrradianceWPerM2: [300, 500, 700, 900],
			},
		},
		vessel: {
			summary: "A basin tap from a vessel of hot oil",
			value: {
				site: { latitude: 31.2, longitude: -7.9, elevationM: 2350 },
				dish: { diameterM: 2 },
				arrangement: "vessel",
				vessel: { volumeL: 20, chargeTemperatureC: 140 },
				wantedTemperatureC: 35,
				wantedFlowLPerMin: 3,
				beamIrradianceWPerM2: [700, 900],
			},
		},
	},
	maxAge: 0,
	cost: 15,
	rangeCost: 15,
	designs: instantDesigns,
	rules: INSTANT_RULES,
	plan: instantPlan,
	outcome: (plan) => {
		const outcome = instantOutcome(plan.heater, plan.task);
		return { outcome, range: instantRange(plan, outcome) };
	},
	answer: (plan, { outcome, range }) => ({
		...wireVerdict(plan, outcome),
		...wireRows(plan, outcome),
		...(range && { range: range.wire }),
	}),
	cautions: ({ dish, heater, task, air, walls }, { outcome }) =>
		instantCautions({ dish, heater, task, air, walls, outcome }),
	methods: ({ skyMethods }, { outcome, range }) => [
		...skyMethods,
		...outcome.methods,
		...(range?.methods ?? []),
	],
	assumed: ({ range }) => range?.assumed ?? [],
});

function wireVerdict(plan: InstantPlan, outcome: InstantOutcome) {
	const { heater, task } = plan;
	const { best, weakest, needed } = outcome;
	const { apertureNeededM2, diameterNeededM } = wireRow(weakest, needed, plan);
	return {
		outcome: outcome.verdict,
		servedShare: outcome.servedShare,
		reasons: outcome.reasons.map((code) => wireInstantReason(code, plan, outcome, feedFlow(plan))),
		arrangement: task.arrangement.kind,
		wanted: wantedOf(plan, outcome.wantedPower),
		electricEquivalentKw: fromSi.kilowatts(best.steady.kind === "flows" ? best.steady.power : 0),
		apertureM2: heater.apertureArea,
		...(apertureNeededM2 !== undefined && { apertureNeededM2, diameterNeededM }),
		boilingPointC: fromSi.celsius(task.duty.boiling),
		stagnationTemperatureC: fromSi.celsius(outcome.stagnation),
	};
}

function wireRows(plan: InstantPlan, outcome: InstantOutcome) {
	const { timeZone, rowStep } = plan;
	const { best, weakest, needed, hours } = outcome;
	return {
		best: wireRow(best, undefined, plan),
		weakest: wireRow(weakest, needed, plan),
		levels: outcome.levels.map((row) => wireLevel(row, plan)),
		...(hours && timeZone !== undefined && { hours: wireHours(hours, timeZone, rowStep, feedFlow(plan)) }),
		uses: outcome.uses.map((served) => wireUse(served, plan)),
		...(outcome.outlet && { outletPipe: wireOutlet(outcome, plan) }),
		...(outcome.vessel && { vessel: wireVessel(outcome, plan) }),
	};
}

function wantedOf(plan: InstantPlan, power: number | undefined): InstantResponse["wanted"] {
	const { duty, wantedFlow } = plan.task;
	return {
		temperatureC: fromSi.celsius(duty.wanted),
		riseK: duty.wanted - duty.cold,
		...(wantedFlow !== undefined && { flowLPerMin: feedFlow(plan)(wantedFlow) }),
		...(power !== undefined && { electricEquivalentKw: fromSi.kilowatts(power) }),
	};
}
