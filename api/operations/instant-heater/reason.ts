import type { InstantReason as Code, InstantOutcome } from "../../../src/index.ts";
import { fromSi } from "../../wire/units.ts";
import type { InstantPlan } from "./plan.ts";
import type { InstantResponse } from "./response.ts";

type Reason = InstantResponse["reasons"][number];

const tenth = (value: number) => Math.round(value * 10) / 10;
const two = (value: number) => Number(value.toPrecision(2));

/** Why a heater falls short, with the numbers that bound it.
 *  @param feedLPerMin  litres at the cold feed of a mass flow [kg/s] */
export function wireInstantReason(
	code: Code,
	{ heater, task }: InstantPlan,
	outcome: InstantOutcome,
	feedLPerMin: (massFlow: number) => number,
): Reason {
	const { best, vessel } = outcome;
	const flow = best.steady.kind === "flows" ? feedLPerMin(best.steady.massFlow) : 0;
	const powerW = best.steady.kind === "flows" ? best.steady.power : 0;
	const wanted = task.wantedFlow === undefined ? undefined : feedLPerMin(task.wantedFlow);
	const wantedFlow = wanted === undefined ? {} : { wantedFlowLPerMin: wanted };
	const beamIrradianceWPerM2 = best.conditions.beam;
	const of = (parameters: Reason["parameters"], message: string): Reason => ({ code, parameters, message });
	switch (code) {
		case "limitedByBoiling": {
			const [boilingPointC, wantedTemperatureC] = [task.duty.boiling, task.duty.wanted].map(
				fromSi.celsius,
			) as [number, number];
			return of(
				{ boilingPointC, wantedTemperatureC },
				`Water boils at ${tenth(boilingPointC)} °C in this line; ${tenth(wantedTemperatureC)} °C is wanted.`,
			);
		}
		case "noSun":
			return of({}, "No beam reaches the place when the water is wanted.");
		case "sunBelowDish": {
			const lowestSunAltitudeDeg = fromSi.degrees(heater.lowestAltitude);
			const sunAltitudeDeg = fromSi.degrees(best.conditions.altitude);
			return of(
				{ lowestSunAltitudeDeg, sunAltitudeDeg },
				`The dish faces the sun from ${tenth(lowestSunAltitudeDeg)}° up; it stands ${tenth(sunAltitudeDeg)}° high.`,
			);
		}
		case "tooLittleHeat": {
			const pipe = pipeWorthLagging(best);
			return of(
				{
					flowLPerMin: flow,
					powerW,
					beamIrradianceWPerM2,
					...wantedFlow,
					...(pipe && { pipeLossW: pipe.lossW }),
				},
				`Under the best sun, ${Math.round(beamIrradianceWPerM2)} W/m², this dish gives ${two(powerW / 1000)} kW, which warms ${two(flow)} L/min${wanted === undefined ? "" : `; ${two(wanted)} L/min is wanted`}.${pipe ? ` ${pipe.sentence}` : ""}`,
			);
		}
		case "lostInPipe": {
			const lengthM = task.arrangement.kind === "direct" ? task.arrangement.outlet.length : 0;
			return of(
				{ lengthM, beamIrradianceWPerM2, ...wantedFlow },
				`Under the best sun, ${Math.round(beamIrradianceWPerM2)} W/m², the ${two(lengthM)} m of pipe to the tap lose more than any flow brings: the water is never as hot there as wanted. Lag the pipe, or shorten it.`,
			);
		}
		case "weakSunForPart":
			return of(
				{ servedShare: outcome.servedShare, ...wantedFlow },
				`The sun is strong enough for ${Math.round(100 * outcome.servedShare)} % of what was asked about.`,
			);
		case "boilsInReceiver": {
			const leastFlowLPerMin = feedLPerMin(best.leastFlow);
			return of(
				{ leastFlowLPerMin, flowLPerMin: flow, ...wantedFlow },
				`Under the best sun any flow below ${two(leastFlowLPerMin)} L/min boils on the receiver's wall.`,
			);
		}
		case "limitedByOilLimit": {
			const oilLimitC =
				task.arrangement.kind === "vessel" ? fromSi.celsius(task.arrangement.vessel.limit) : 0;
			return of(
				{ oilLimitC, flowLPerMin: flow },
				`No dish is large enough: with the oil at its limit of ${tenth(oilLimitC)} °C the coil passes less heat than the wanted flow takes. A longer coil would pass more.`,
			);
		}
		case "noDishWithinBound": {
			const largestApertureM2 = task.largestAperture;
			return of(
				{ largestApertureM2, ...wantedFlow },
				`No dish up to ${two(largestApertureM2)} m² gives that flow throughout.`,
			);
		}
		case "chargeNotReached": {
			const levelsOffC = fromSi.celsius(vessel?.charge.levelsOff ?? 0);
			return of(
				{ levelsOffC, chargeTemperatureC: fromSi.celsius(vessel?.charge.charge ?? 0) },
				`The oil levels off at ${tenth(levelsOffC)} °C, below the charge that was asked for.`,
			);
		}
		case "coilTooSmall": {
			const draw = vessel?.draw;
			const coilFlowLPerMin = draw?.kind === "coilTooSmall" ? feedLPerMin(draw.flowAtCharge) : 0;
			return of(
				{ coilFlowLPerMin, ...wantedFlow },
				`Even charged, the coil brings only ${two(coilFlowLPerMin)} L/min to the wanted temperature.`,
			);
		}
	}
}

const MUCH = 0.1; // [-] of what comes to the tap that the pipe may lose before the reason speaks of it; common practice, no source

/** What the pipe to the tap loses under one sun, where that is worth a thought. */
function pipeWorthLagging({
	steady,
}: InstantOutcome["best"]): { readonly lossW: number; readonly sentence: string } | undefined {
	if (steady.kind !== "flows" || !steady.outlet || steady.outlet.loss <= MUCH * steady.power)
		return undefined;
	const lossW = steady.outlet.loss;
	return {
		lossW,
		sentence: `The pipe to the tap loses another ${two(lossW / 1000)} kW: lag it, or shorten it.`,
	};
}
