import type { InstantReason as Code, InstantOutcome } from "../../../src/index.ts";
import { fromSi } from "../../wire/units.ts";
import type { InstantPlan } from "./plan.ts";
import type { InstantResponse } from "./response.ts";

type Reason = InstantResponse["reasons"][number];

const tenth = (value: number) => Math.round(value * 10) / 10;
const two = (value: number) => Number(value.toPrecision(2));

/** Why a heater falls short, with the limiting numbers.
 *  @param feedLPerMin  flow at the cold feed [L/min] of a mass flow [kg/s] */
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
				`The wanted temperature of ${tenth(wantedTemperatureC)} °C is not below the boiling point in this line, ${tenth(boilingPointC)} °C.`,
			);
		}
		case "noSun":
			return of({}, "No beam reaches the site while water is wanted.");
		case "sunBelowDish": {
			const lowestSunAltitudeDeg = fromSi.degrees(heater.lowestAltitude);
			const sunAltitudeDeg = fromSi.degrees(best.conditions.altitude);
			return of(
				{ lowestSunAltitudeDeg, sunAltitudeDeg },
				`The dish tracks the sun from an altitude of ${tenth(lowestSunAltitudeDeg)}°; the sun is at ${tenth(sunAltitudeDeg)}°.`,
			);
		}
		case "tooLittleHeat": {
			const pipe = largePipeLoss(best);
			return of(
				{
					flowLPerMin: flow,
					powerW,
					beamIrradianceWPerM2,
					...wantedFlow,
					...(pipe && { pipeLossW: pipe.lossW }),
				},
				`Under the strongest beam of ${Math.round(beamIrradianceWPerM2)} W/m², this dish delivers ${two(powerW / 1000)} kW, which heats ${two(flow)} L/min${wanted === undefined ? "" : `; ${two(wanted)} L/min is wanted`}.${pipe ? ` ${pipe.sentence}` : ""}`,
			);
		}
		case "lostInPipe": {
			const lengthM = task.arrangement.kind === "direct" ? task.arrangement.outlet.length : 0;
			return of(
				{ lengthM, beamIrradianceWPerM2, ...wantedFlow },
				`Under the strongest beam of ${Math.round(beamIrradianceWPerM2)} W/m², the ${two(lengthM)} m pipe to the tap loses too much heat at any flow, so the water never reaches the wanted temperature there. Insulate or shorten the pipe.`,
			);
		}
		case "weakSunForPart":
			return of(
				{ servedShare: outcome.servedShare, ...wantedFlow },
				`The beam is strong enough for ${Math.round(100 * outcome.servedShare)} % of the window or beam levels.`,
			);
		case "boilsInReceiver": {
			const leastFlowLPerMin = feedLPerMin(best.leastFlow);
			return of(
				{ leastFlowLPerMin, flowLPerMin: flow, ...wantedFlow },
				`Under the strongest beam, any flow below ${two(leastFlowLPerMin)} L/min boils on the receiver's wall.`,
			);
		}
		case "limitedByOilLimit": {
			const oilLimitC =
				task.arrangement.kind === "vessel" ? fromSi.celsius(task.arrangement.vessel.limit) : 0;
			return of(
				{ oilLimitC, flowLPerMin: flow },
				`No dish is large enough: with the oil at its limit of ${tenth(oilLimitC)} °C, the coil transfers less heat than the wanted flow needs. A longer coil transfers more.`,
			);
		}
		case "noDishWithinBound": {
			const largestApertureM2 = task.largestAperture;
			return of(
				{ largestApertureM2, ...wantedFlow },
				`No dish up to ${two(largestApertureM2)} m² provides the wanted flow throughout.`,
			);
		}
		case "chargeNotReached": {
			const levelsOffC = fromSi.celsius(vessel?.charge.levelsOff ?? 0);
			return of(
				{ levelsOffC, chargeTemperatureC: fromSi.celsius(vessel?.charge.charge ?? 0) },
				`The oil settles at ${tenth(levelsOffC)} °C, below the requested charge temperature.`,
			);
		}
		case "coilTooSmall": {
			const draw = vessel?.draw;
			const coilFlowLPerMin = draw?.kind === "coilTooSmall" ? feedLPerMin(draw.flowAtCharge) : 0;
			return of(
				{ coilFlowLPerMin, ...wantedFlow },
				`Even when the vessel is charged, the coil heats only ${two(coilFlowLPerMin)} L/min to the wanted temperature.`,
			);
		}
	}
}

const MUCH = 0.1; // [-] of the power at the tap that the pipe may lose before the reason mentions it; common practice, no source

/** Heat loss of the pipe to the tap under one beam, where it is large. */
function largePipeLoss({
	steady,
}: InstantOutcome["best"]): { readonly lossW: number; readonly sentence: string } | undefined {
	if (steady.kind !== "flows" || !steady.outlet || steady.outlet.loss <= MUCH * steady.power)
		return undefined;
	const lossW = steady.outlet.loss;
	return {
		lossW,
		sentence: `The pipe to the tap loses another ${two(lossW / 1000)} kW: insulate or shorten it.`,
	};
}
