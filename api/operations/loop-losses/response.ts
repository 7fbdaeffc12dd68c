import { z } from "@hono/zod-openapi";
import { backing } from "../../parts/backing.ts";
import {
	celsius,
	kelvinDifference,
	kilojoulesPerKelvin,
	kilopascals,
	kilowattHours,
	litresPerMinute,
	metreKelvinPerWatt,
	metresPerSecond,
	millimetres,
	ratio,
	squareMillimetresPerSecond,
	watts,
	wattsPerMetre,
	wattsPerMetreKelvin,
	wattsPerSquareMetreKelvin,
} from "../../wire/units.ts";

const regime = z.enum(["laminar", "transitional", "turbulent"]).meta({
	description:
		"Flow regime: laminar below a Reynolds number of 2300, turbulent above 4000, else transitional.",
});

const Thicker = z
	.strictObject({
		addedThicknessMm: millimetres("Thickness added to the present insulation."),
		lossW: watts("Heat loss of the whole pipe with the added thickness."),
		savedW: watts("Heat loss saved against the present insulation."),
		furtherSavedW: watts("Heat loss saved against the previous row: the gain of this step."),
		savedKwhPerYear: kilowattHours(
			"Heat saved against the present insulation in a year, over `pumpHoursPerYear`.",
		),
		furtherSavedKwhPerYear: kilowattHours(
			"Heat saved against the previous row in a year, over `pumpHoursPerYear`.",
		),
	})
	.openapi("ThickerInsulation", { description: "One pipe with thicker insulation." });

const Weather = z
	.strictObject({
		dryLossW: watts("Heat loss with dry insulation."),
		wetLossW: watts("Heat loss with insulation at `wetMoistFraction` and a dry outer surface."),
		coveredLossW: watts(
			"Heat loss with a weatherproof cover: dry insulation, and the cover's own emittance.",
		),
		uncoveredInRainLossW: watts(
			"Heat loss without a cover in rain: insulation at `wetMoistFraction`, with its outer surface at air temperature. This is an upper limit except for vapour, which above 60 °C carries further heat through wet open-cell insulation.",
		),
	})
	.openapi("InsulationInWeather", {
		description: "Heat loss of a pipe with its insulation dry, wet, covered, and uncovered in rain.",
	});

const PipeLosses = z
	.strictObject({
		lossW: watts("Heat loss of the whole pipe."),
		lossWPerM: wattsPerMetre("Heat loss of one metre of pipe at its mean temperature."),
		lossCoefficientWPerMK: wattsPerMetreKelvin(
			"Heat loss coefficient of one metre of pipe, from fluid to air.",
		),
		lossKwhPerYear: kilowattHours("Heat loss of the pipe in a year, over `pumpHoursPerYear`."),
		surfaceTemperatureC: celsius("Temperature of the pipe's outer surface."),
		enteringC: celsius("Temperature of the fluid that enters the pipe."),
		leavingC: celsius("Temperature of the fluid that leaves the pipe."),
		temperatureDropK: kelvinDifference("Temperature drop of the fluid from end to end of the pipe."),
		flowVelocityMPerS: metresPerSecond("Mean flow velocity in the pipe."),
		reynolds: ratio("Reynolds number of the flow in the pipe."),
		regime,
		insideFilmWPerM2K: wattsPerSquareMetreKelvin("Film coefficient of heat transfer inside the pipe."),
		pressureDropKpa: kilopascals("Pressure drop from end to end of the pipe."),
		heldHeatKjPerK: kilojoulesPerKelvin(
			"Heat capacity of the pipe's fluid and metal, which cool each night and warm up each morning.",
		),
		insideResistanceMKPerW: metreKelvinPerWatt("Thermal resistance of the film inside the pipe."),
		wallResistanceMKPerW: metreKelvinPerWatt("Thermal resistance of the pipe wall."),
		laggingResistanceMKPerW: metreKelvinPerWatt(
			"Thermal resistance of the insulation at its mean temperature.",
		),
		outsideResistanceMKPerW: metreKelvinPerWatt(
			"Thermal resistance from the outer surface to the air: wind, buoyancy and radiation.",
		),
		outerRadiusMm: millimetres("Outer radius of the pipe with its present insulation."),
		criticalRadiusMm: millimetres(
			"Critical radius k/h: the outer radius with the greatest heat loss per metre, for the present conductivity and outside film. On a thinner pipe, the first insulation increases the loss.",
		),
		firstMillimetreSavesWPerM: wattsPerMetre(
			"Heat loss saved by the first millimetre of this insulation on the bare pipe, with each film recomputed. Negative where it increases the loss.",
		),
		thicker: z
			.array(Thicker)
			.meta({ description: "The pipe with each added thickness of the same insulation." }),
		inWeather: Weather.optional(),
	})
	.openapi("PipeLosses", {
		description:
			"Heat loss, flow and pressure drop of one pipe in steady flow. `inWeather` is absent for a bare pipe.",
	});

const ColdStart = z
	.strictObject({
		temperatureC: celsius("Temperature of all the fluid in the loop."),
		kinematicViscosityMm2PerS: squareMillimetresPerSecond("Kinematic viscosity of the fluid."),
		flowLPerMin: litresPerMinute(
			"Flow that the pump delivers: its set flow, or less where its power or head limits it.",
		),
		shareOfSetFlow: ratio("Delivered flow as a share of the pump's set flow."),
		pressureDropKpa: kilopascals("Pressure drop around the loop at the delivered flow."),
		pumpPowerW: watts("Electric power drawn by the pump."),
		reynolds: ratio("Reynolds number of the flow in the supply pipe."),
		regime,
	})
	.openapi("ColdStart", { description: "The pump at a start with cold fluid in the loop." });

export const LoopLossesResponse = z
	.strictObject({
		lossW: watts("Heat loss of pipes, fittings and pump together."),
		netLossW: watts("Heat loss of pipes, fittings and pump minus the heat that the pump adds to the fluid."),
		lossKwhPerYear: kilowattHours(
			"Heat loss of pipes, fittings and pump in a year, over `pumpHoursPerYear`.",
		),
		pressureDropKpa: kilopascals("Pressure drop around the loop at the flow that the pump delivers."),
		supply: PipeLosses,
		return: PipeLosses,
		fittings: z
			.strictObject({
				lossW: watts("Heat loss of bare fittings and supports."),
				pressureDropKpa: kilopascals("Pressure drop of bends and valves."),
			})
			.meta({ description: "Losses of fittings, supports and bends." }),
		furtherTubes: z
			.strictObject({
				pressureDropKpa: kilopascals("Pressure drop of the tubes in `furtherTubes` of the request."),
			})
			.meta({ description: "Losses of the tubes in `furtherTubes` of the request." }),
		pump: z
			.strictObject({
				flowLPerMin: litresPerMinute(
					"Flow that the pump delivers: its set flow, or less where its power or head limits it.",
				),
				shareOfSetFlow: ratio("Delivered flow as a share of the pump's set flow."),
				pumpPowerW: watts("Electric power drawn by the pump."),
				hydraulicPowerW: watts("Hydraulic power of the pump: flow times pressure."),
				heatToFluidW: watts("Part of the pump's power that heats the fluid."),
				lossW: watts("Heat loss of the pump casing to the air."),
				pumpKwhPerYear: kilowattHours("Electricity used by the pump in a year, over `pumpHoursPerYear`."),
			})
			.meta({ description: "Flow, power and heat of the pump." }),
		coldStart: z.array(ColdStart).meta({
			description:
				"Flow and power of the pump at each start temperature, when the fluid is cold and viscous.",
		}),
		...backing,
	})
	.openapi("LoopLossesResponse");
