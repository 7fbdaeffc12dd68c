import type { z } from "@hono/zod-openapi";
import type { ColdStart, LoopLosses, Pipe, RunLosses } from "../../../src/index.ts";
import { fromSi, toSi } from "../../wire/units.ts";
import type { LoopLossesPlan } from "./plan.ts";
import type { LoopLossesResponse } from "./response.ts";

type Answer = z.input<typeof LoopLossesResponse>;
type PipeAnswer = Answer["supply"];

/** Energy of a steady power over the hours that the pump runs in a year [kWh]. */
export const yearly = (power: number, hoursPerYear: number) =>
	fromSi.kilowattHours(power * toSi.hours(hoursPerYear));

/** @param run  in steady flow     @param enteringC  of the fluid [°C] */
export function wirePipe(pipe: Pipe, run: RunLosses, enteringC: number, hoursPerYear: number): PipeAnswer {
	const { loss } = run;
	return {
		lossW: run.heatLoss,
		lossWPerM: loss.perMetre,
		lossCoefficientWPerMK: loss.coefficientPerMetre,
		lossKwhPerYear: yearly(run.heatLoss, hoursPerYear),
		surfaceTemperatureC: fromSi.celsius(loss.surfaceTemperature),
		enteringC,
		leavingC: fromSi.celsius(run.outletTemperature),
		temperatureDropK: run.temperatureDrop,
		flowVelocityMPerS: run.velocity,
		reynolds: run.Reynolds,
		regime: run.regime,
		insideFilmWPerM2K: run.insideFilm,
		pressureDropKpa: fromSi.kilopascals(run.pressureDrop),
		heldHeatKjPerK: fromSi.kilojoules(run.heldHeatCapacity),
		insideResistanceMKPerW: loss.insideResistance,
		wallResistanceMKPerW: loss.wallResistance,
		laggingResistanceMKPerW: loss.insulationResistance,
		outsideResistanceMKPerW: loss.outsideResistance,
		outerRadiusMm: fromSi.millimetres(pipe.outerDiameter / 2 + pipe.insulation.thickness),
		criticalRadiusMm: fromSi.millimetres(run.criticalRadius),
		firstMillimetreSavesWPerM: run.firstMillimetre,
		thicker: run.thicker.map(({ addedThickness, heatLoss, saved, further }) => ({
			addedThicknessMm: fromSi.millimetres(addedThickness),
			lossW: heatLoss,
			savedW: saved,
			furtherSavedW: further,
			savedKwhPerYear: yearly(saved, hoursPerYear),
			furtherSavedKwhPerYear: yearly(further, hoursPerYear),
		})),
		...(pipe.insulation.thickness > 0 && { inWeather: wireWeather(run) }),
	};
}

function wireWeather({ dry, wet, covered, uncovered }: RunLosses): PipeAnswer["inWeather"] {
	return { dryLossW: dry, wetLossW: wet, coveredLossW: covered, uncoveredInRainLossW: uncovered };
}

/** Fittings, further tubes and pump. */
export function wireRest(
	{ fittings, others, pump }: LoopLosses,
	hoursPerYear: number,
): Pick<Answer, "fittings" | "furtherTubes" | "pump"> {
	return {
		fittings: {
			lossW: fittings.heatLoss,
			pressureDropKpa: fromSi.kilopascals(fittings.pressureDrop),
		},
		furtherTubes: { pressureDropKpa: fromSi.kilopascals(others.pressureDrop) },
		pump: {
			flowLPerMin: fromSi.litresPerMinute(pump.flow),
			shareOfSetFlow: 1 - pump.starved,
			pumpPowerW: pump.electricPower,
			hydraulicPowerW: pump.hydraulicPower,
			heatToFluidW: pump.heatToFluid,
			lossW: pump.casingLoss,
			pumpKwhPerYear: yearly(pump.electricPower, hoursPerYear),
		},
	};
}

export function wireColdStart({
	temperature,
	kinematicViscosity,
	duty,
	Reynolds,
	regime,
}: ColdStart): Answer["coldStart"][number] {
	return {
		temperatureC: fromSi.celsius(temperature),
		kinematicViscosityMm2PerS: fromSi.squareMillimetresPerSecond(kinematicViscosity),
		flowLPerMin: fromSi.litresPerMinute(duty.flow),
		shareOfSetFlow: 1 - duty.starved,
		pressureDropKpa: fromSi.kilopascals(duty.pressure),
		pumpPowerW: duty.electricPower,
		reynolds: Reynolds,
		regime,
	};
}

/** Both pipes, each with the fluid that enters it. */
export function wirePipes(
	{ loop, conditions }: LoopLossesPlan,
	losses: LoopLosses,
	hoursPerYear: number,
): Pick<Answer, "supply" | "return"> {
	const entering = (kelvin: number) => fromSi.celsius(kelvin);
	return {
		supply: wirePipe(loop.supply, losses.supply, entering(conditions.supplyTemperature), hoursPerYear),
		return: wirePipe(loop.return, losses.return, entering(conditions.returnTemperature), hoursPerYear),
	};
}
