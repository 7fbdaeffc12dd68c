import {
	type DayAir,
	type InstantOutcome,
	type InstantWalls,
	instantCautions,
	instantOutcome,
} from "../../../src/index.ts";
import { wireCaution } from "../../parts/caution.ts";
import { airAt, dayAir } from "../../parts/day-air.ts";
import { type Assumed, defaultsTaken, filling } from "../../wire/defaults.ts";
import { fromSi, toSi } from "../../wire/units.ts";
import { operation } from "../operation.ts";
import { wireLevel, wireOutlet, wireRow, wireUse, wireVessel } from "./answer.ts";
import { wireHours } from "./hours.ts";
import { feedFlow, type InstantPlan, instantPlan } from "./plan.ts";
import { instantRange } from "./range.ts";
import { wireInstantReason } from "./reason.ts";
import { completed, InstantRequest } from "./request.ts";
import { InstantResponse } from "./response.ts";
import { requireSoundInstant } from "./rules.ts";

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
	answer: (parsed, given) => {
		const request = completed(parsed);
		requireSoundInstant(request);
		const defaults = defaultsTaken(InstantRequest, given, request);
		const { fill, filled } = filling();
		const plan = instantPlan(request, fill);
		const outcome = instantOutcome(plan.heater, plan.task);
		const range = instantRange(request, given, plan, outcome);
		const answer = answerOf(request, plan, outcome, airOf(request, defaults));
		return {
			...answer,
			...(range && { range: range.wire }),
			methods: [...answer.methods, ...(range?.methods ?? [])],
			assumed: [...defaults, ...(range?.assumed ?? []), ...filled],
		};
	},
});

function answerOf(
	request: InstantRequest,
	plan: InstantPlan,
	outcome: InstantOutcome,
	air: DayAir,
): Omit<InstantResponse, "assumed"> {
	const { dish, heater, task, zone } = plan;
	const step = toSi.minutes(request.stepMin);
	const { best, weakest, needed, hours, vessel } = outcome;
	const feed = feedFlow(plan);
	const whole = wireRow(weakest, needed, plan);
	return {
		outcome: outcome.verdict,
		servedShare: outcome.servedShare,
		reasons: outcome.reasons.map((code) => wireInstantReason(code, plan, outcome, feed)),
		arrangement: task.arrangement.kind,
		wanted: wantedOf(plan, outcome.wantedPower),
		electricEquivalentKw: fromSi.kilowatts(best.steady.kind === "flows" ? best.steady.power : 0),
		apertureM2: heater.apertureArea,
		...(whole.apertureNeededM2 !== undefined && {
			apertureNeededM2: whole.apertureNeededM2,
			diameterNeededM: whole.diameterNeededM,
		}),
		boilingPointC: fromSi.celsius(task.duty.boiling),
		best: wireRow(best, undefined, plan),
		weakest: whole,
		levels: outcome.levels.map((row) => wireLevel(row, plan)),
		...(hours && zone !== undefined && { hours: wireHours(hours, zone, step, feed) }),
		uses: outcome.uses.map((served) => wireUse(served, plan)),
		...(outcome.outlet && { outletPipe: wireOutlet(outcome, plan) }),
		...(vessel && { vessel: wireVessel(outcome, plan) }),
		stagnationTemperatureC: fromSi.celsius(outcome.stagnation),
		cautions: instantCautions({ dish, heater, task, air, walls: wallsOf(request), outcome }).map(wireCaution),
		methods: [...plan.skyMethods, ...outcome.methods].map((method) => ({ ...method })),
	};
}

function wallsOf({ outletPipe, vessel }: InstantRequest): InstantWalls {
	return { outlet: outletPipe?.material, vessel: vessel?.wallMaterial, coil: vessel?.coil.material };
}

/** The air of the date's sky, else of the beam levels. */
function airOf({ sky, levelAir }: InstantRequest, defaults: readonly Assumed[]): DayAir {
	return sky ? dayAir(sky, defaults) : airAt("/levelAir/ambientC", levelAir.ambientC, defaults);
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
