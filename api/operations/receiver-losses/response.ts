import { z } from "@hono/zod-openapi";
import { Assumed } from "../../parts/assumed.ts";
import { Caution } from "../../parts/caution.ts";
import { Method } from "../../parts/method.ts";
import {
	celsius,
	degrees,
	metres,
	metresPerSecond,
	millimetres,
	ratio,
	squareMetreKelvinPerWatt,
	watts,
	wattsPerKelvin,
	wattsPerSquareMetreKelvin,
} from "../../wire/units.ts";

const column = (field: z.ZodType, description: string) => z.array(field).meta({ description });

const Light = z
	.strictObject({
		beamOnApertureW: watts("On the dish. Absent where `absorbedPowerW` was given.").optional(),
		enteringW: watts("Through the receiver's aperture. Absent for an efficiency line.").optional(),
		reflectedW: watts("Of it, thrown back by absorber and pane. Absent for an efficiency line.").optional(),
		absorbedW: watts("Taken up by the absorber: what the balance shares out."),
	})
	.openapi("ReceiverLight");

const Table = z
	.strictObject({
		oilTemperatureC: column(celsius("Of the fluid."), "Of the fluid, as asked."),
		windMPerS: column(metresPerSecond("At the receiver."), "At the receiver, as asked."),
		tiltDeg: column(degrees("Of the receiver."), "How far it looks down, as asked."),
		usefulW: column(watts("To the fluid."), "Heat to the fluid; negative where the receiver cools it."),
		radiatedW: column(watts("Lost."), "Heat radiated."),
		convectedW: column(watts("Lost."), "Heat carried off by wind and buoyancy."),
		conductedW: column(watts("Lost."), "Heat through the lagging."),
		unresolvedW: column(watts("Lost."), "Heat lost by an efficiency line, which does not tell the path."),
		lossW: column(watts("Lost."), "Heat lost by all paths."),
		efficiency: column(ratio("Of the row."), "Useful heat over what `efficiencyBasis` names."),
		reducedDifferenceM2KPerW: column(
			squareMetreKelvinPerWatt("Of the row."),
			"(T − T_air)/G, the fluid's temperature over the air's by the beam.",
		),
		wallTemperatureC: column(celsius("Mean of the absorber."), "Of the absorber's wall, its mean."),
		filmTemperatureC: column(
			celsius("Of the film."),
			"Of the fluid that touches the wall, the light taken as spread evenly: the wall's own, as copper takes under 0.1 K.",
		),
		leavingTemperatureC: column(celsius("Of the leaving fluid."), "Of the fluid that leaves."),
	})
	.openapi("ReceiverTable", {
		description: "One row for each temperature in each tilt in each wind: absorbed = useful + all losses.",
	});

const Line = z
	.strictObject({
		windMPerS: metresPerSecond("Of the rows it is fitted to."),
		tiltDeg: degrees("Of the rows it is fitted to."),
		zeroLossEfficiency: ratio("η0: where fluid and air are alike."),
		lossCoefficientWPerK: wattsPerKelvin("Of the whole receiver."),
		lossCoefficientWPerM2K: wattsPerSquareMetreKelvin(
			"U, per square metre of the dish's aperture. Absent where `absorbedPowerW` was given.",
		).optional(),
		worstDeviation: ratio("Of a row's efficiency from the line."),
	})
	.openapi("EfficiencyLine", {
		description:
			"The straight line η = η0 − U·(T − T_air)/G that comes nearest to the rows of one wind and tilt.",
	});

const ConvectionRange = z
	.strictObject({
		byStineMcDonaldW: column(watts("Convected."), "As in the table: Stine & McDonald 1989, and the wind."),
		byKoenigMarvinW: column(
			watts("Convected."),
			"Koenig & Marvin 1981 at the same wall temperature, and the same wind.",
		),
		greatestDifferenceW: watts("Between the two in any row."),
		greatestShareOfLoss: ratio("That a row's difference is of all its losses."),
	})
	.openapi("ConvectionRange", {
		description: "How far two published models of a cavity's convection differ. Absent for other receivers.",
	});

const Stagnation = z
	.strictObject({
		absorbedW: watts("Taken up at the stagnation beam."),
		wallTemperatureC: celsius(
			"Where the losses eat up all light, taken as spread evenly; no hotter than the sun's 5727 °C.",
		),
		lowC: celsius("15 % of the rise over the air less: models run far outside their data here."),
		highC: celsius("15 % of the rise more."),
		radiatedW: watts("Lost."),
		convectedW: watts("Lost."),
		conductedW: watts("Lost."),
		unresolvedW: watts("Lost by an efficiency line."),
		passes: z
			.array(z.enum(["bulkLimit", "filmLimit", "flashPoint"]))
			.meta({ description: "Limits of the fluid below that wall temperature." }),
	})
	.openapi("Stagnation", { description: "The pump has stopped and the dish still faces the sun." });

const Limit = z.strictObject({ temperatureC: celsius("Generic for the kind of fluid."), source: z.string() });

const FluidLimits = z
	.strictObject({
		bulkLimit: Limit,
		filmLimit: Limit,
		flashPoint: Limit.optional().meta({ description: "Absent where the fluid does not burn." }),
	})
	.openapi("FluidLimits");

const Size = z
	.strictObject({
		apertureDiameterM: metres("Of its opening or disc."),
		innerDiameterM: metres("Of a cavity's hollow.").optional(),
		depthM: metres("Of a cavity's hollow.").optional(),
		tubeLengthM: metres("Along the tube."),
		tubeInnerDiameterMm: millimetres("Bore of the tube."),
	})
	.openapi("ReceiverSize", { description: "The receiver as reckoned. Absent for an efficiency line." });

export const ReceiverLossesResponse = z
	.strictObject({
		kind: z
			.enum(["cavity", "openCoil", "glazedCoil", "efficiencyLine"])
			.meta({ description: "Of the receiver." }),
		size: Size.optional(),
		light: Light,
		efficiencyBasis: z
			.enum(["beamOnAperture", "absorbed"])
			.meta({ description: "What efficiencies refer to: beam on the dish, or light taken up." }),
		table: Table,
		worstResidualW: watts("Absorbed less useful less losses, in the row where it is farthest from 0."),
		efficiencyLines: z.array(Line).meta({
			description: "One for each wind and tilt; none where fewer than two temperatures were asked.",
		}),
		convectionRange: ConvectionRange.optional(),
		stagnation: Stagnation,
		fluidLimits: FluidLimits,
		cautions: z.array(Caution).meta({ description: "What to be careful of, the most serious first." }),
		assumed: z.array(Assumed).meta({ description: "Every value left out, and why this one." }),
		methods: z.array(Method).meta({ description: "What the numbers rest on." }),
	})
	.openapi("ReceiverLossesResponse");
