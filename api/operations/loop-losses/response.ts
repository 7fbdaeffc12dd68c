import { z } from "@hono/zod-openapi";
import { Assumed } from "../../parts/assumed.ts";
import { Caution } from "../../parts/caution.ts";
import { Method } from "../../parts/method.ts";
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

const regime = z
	.enum(["laminar", "transitional", "turbulent"])
	.meta({ description: "Of the flow: laminar below Re 2300, turbulent above 4000." });

const Thicker = z
	.strictObject({
		addedThicknessMm: millimetres("Of lagging, over what is laid."),
		lossW: watts("Of the whole pipe, then."),
		savedW: watts("Against what is laid."),
		furtherSavedW: watts("Against the row before: what this step brings."),
		savedKwhPerYear: kilowattHours("Against what is laid, in the pump's hours of a year."),
		furtherSavedKwhPerYear: kilowattHours("Against the row before, in the pump's hours of a year."),
	})
	.openapi("ThickerLagging");

const Weather = z
	.strictObject({
		dryLossW: watts("With dry lagging."),
		wetLossW: watts("With lagging at `wetMoistFraction`, its skin dry."),
		coveredLossW: watts("With a weatherproof cover: lagging dry, and the cover's own skin."),
		uncoveredInRainLossW: watts(
			"Without one, in rain: lagging at `wetMoistFraction`, and its skin washed down to the air's temperature. An upper limit but for vapour: above 60 °C that drives further heat through wet open-cell lagging.",
		),
	})
	.openapi("LaggingInWeather", {
		description: "The same pipe with its lagging dry, wet, covered and in rain.",
	});

const PipeLosses = z
	.strictObject({
		lossW: watts("Of the whole pipe."),
		lossWPerM: wattsPerMetre("Of a metre at the mean temperature."),
		lossCoefficientWPerMK: wattsPerMetreKelvin("Of a metre, fluid over air."),
		lossKwhPerYear: kilowattHours("In the pump's hours of a year."),
		surfaceTemperatureC: celsius("Of the outside."),
		enteringC: celsius("Of the fluid."),
		leavingC: celsius("Of the fluid."),
		temperatureDropK: kelvinDifference("From end to end."),
		flowVelocityMPerS: metresPerSecond("Mean over the bore."),
		reynolds: ratio("Reynolds number inside."),
		regime,
		insideFilmWPerM2K: wattsPerSquareMetreKelvin("Film coefficient inside."),
		pressureDropKpa: kilopascals("From end to end."),
		heldHeatKjPerK: kilojoulesPerKelvin(
			"Heat that fluid and metal hold: lost each night, warmed each morning.",
		),
		insideResistanceMKPerW: metreKelvinPerWatt("Of the film inside."),
		wallResistanceMKPerW: metreKelvinPerWatt("Of the pipe's wall."),
		laggingResistanceMKPerW: metreKelvinPerWatt("Of the lagging at its mean temperature."),
		outsideResistanceMKPerW: metreKelvinPerWatt("Of wind, buoyancy and radiation outside."),
		outerRadiusMm: millimetres("Of pipe and lagging as laid."),
		criticalRadiusMm: millimetres(
			"Outer radius at which a metre loses most, with the conductivity and the outside film as laid: their ratio k/h. Lagging a pipe thinner than that begins by losing more.",
		),
		firstMillimetreSavesWPerM: wattsPerMetre(
			"What the first millimetre of this lagging saves on the bare pipe, each film worked out anew; below 0 it costs.",
		),
		thicker: z.array(Thicker).meta({ description: "With more of the same lagging." }),
		inWeather: Weather.optional(),
	})
	.openapi("PipeLosses", { description: "One pipe in steady flow. `inWeather` is absent where it is bare." });

const ColdStart = z
	.strictObject({
		temperatureC: celsius("Of all the fluid in the loop."),
		kinematicViscosityMm2PerS: squareMillimetresPerSecond("Of the fluid."),
		flowLPerMin: litresPerMinute("That the pump gives: its set flow, or what its power and head allow."),
		shareOfSetFlow: ratio("Of what the pump is set to."),
		pressureDropKpa: kilopascals("Around the loop at that flow."),
		pumpPowerW: watts("Electric power drawn."),
		reynolds: ratio("In the supply pipe."),
		regime,
	})
	.openapi("ColdStart");

export const LoopLossesResponse = z
	.strictObject({
		lossW: watts("Of pipes, fittings and pump together."),
		netLossW: watts("The same less what the pump puts into the fluid."),
		lossKwhPerYear: kilowattHours("Of all together in the pump's hours of a year."),
		pressureDropKpa: kilopascals("Around the loop at the flow that the pump gives."),
		supply: PipeLosses,
		return: PipeLosses,
		fittings: z.strictObject({
			lossW: watts("Of bare fittings and supports."),
			pressureDropKpa: kilopascals("Of bends and valves."),
		}),
		furtherTubes: z.strictObject({
			pressureDropKpa: kilopascals("Of what the pump drives besides pipes and fittings."),
		}),
		pump: z.strictObject({
			flowLPerMin: litresPerMinute("That it gives: its set flow, or what its power and head allow."),
			shareOfSetFlow: ratio("Of what it is set to."),
			pumpPowerW: watts("Electric power drawn."),
			hydraulicPowerW: watts("Of flow times pressure."),
			heatToFluidW: watts("Of its power, what ends in the fluid."),
			lossW: watts("Of its casing to the air."),
			pumpKwhPerYear: kilowattHours("Electricity in its hours of a year."),
		}),
		coldStart: z
			.array(ColdStart)
			.meta({ description: "What the pump gives when the fluid is cold and thick." }),
		cautions: z.array(Caution).meta({ description: "What to be careful of, the most serious first." }),
		assumed: z
			.array(Assumed)
			.meta({ description: "Every value that the request left out, and why this one." }),
		methods: z.array(Method).meta({ description: "What the numbers rest on." }),
	})
	.openapi("LoopLossesResponse");
