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
	summary: "Feasibility of an instant heater",
	description: [
		"Assesses a heater that warms water as it flows, through the focus and a pipe or through a small vessel of hot oil. The response states the flow at the wanted temperature",
		"under each beam, whether it is enough, the aperture needed, and what a shower, a basin tap and a kitchen sink need.",
		"A dish of 2 to 3 m² delivers 1 to 2 kW; a shower needs 11 to 20 kW. Such a dish heats a tank, but does not feed a shower directly.",
		"With `date`, the outcome applies to a window of that day; without it, to the beam levels. An infeasible heater returns 200 with its `reasons`.",
	].join("\n"),
	input: InstantRequest,
	output: InstantResponse,
	examples: {
		shower: {
			summary: "A shower from a 1.8 m dish on a clear winter day",
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
			summary: "Flow at 38 °C by beam level",
			value: {
				site: { latitude: 31.2, longitude: -7.9, elevationM: 2350 },
				dish: { diameterM: 2 },
				wantedTemperatureC: 38,
				beamIrradianceWPerM2: [300, 500, 700, 900],
			},
		},
		barePipe: {
			summary: "The same heater with eight metres of bare pipe",
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
