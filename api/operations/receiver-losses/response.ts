import { z } from "@hono/zod-openapi";
import { backing } from "../../parts/backing.ts";
import { FluidLimit } from "../../parts/fluid.ts";
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
		beamOnApertureW: watts(
			"Beam power on the dish aperture. Absent when the request sends `absorbedPowerW`.",
		).optional(),
		enteringW: watts("Light that enters the receiver aperture. Absent for an efficiency line.").optional(),
		reflectedW: watts(
			"Light that enters the receiver aperture and is reflected by absorber and pane. Absent for an efficiency line.",
		).optional(),
		absorbedW: watts("Light absorbed by the absorber: the sum of useful heat and losses."),
	})
	.openapi("ReceiverLight", { description: "Light on the receiver, from beam to absorber." });

const Table = z
	.strictObject({
		oilTemperatureC: column(
			celsius("Fluid temperature of one row."),
			"Fluid temperature of each row: the mean of inlet and outlet, or the outlet of an efficiency line.",
		),
		windMPerS: column(metresPerSecond("Wind speed of one row."), "Wind speed at the receiver in each row."),
		tiltDeg: column(
			degrees("Receiver tilt of one row."),
			"Tilt of the receiver below the horizontal in each row.",
		),
		usefulW: column(
			watts("Useful heat of one row."),
			"Heat delivered to the fluid; negative where the receiver cools it.",
		),
		radiatedW: column(watts("Heat radiated in one row."), "Heat lost by radiation."),
		convectedW: column(watts("Heat convected in one row."), "Heat lost by convection: wind and buoyancy."),
		conductedW: column(
			watts("Heat conducted in one row."),
			"Heat lost by conduction through the insulation.",
		),
		unresolvedW: column(
			watts("Heat lost by unresolved paths in one row."),
			"Heat lost by an efficiency line, which does not resolve the paths; else 0.",
		),
		lossW: column(watts("Total heat loss of one row."), "Heat lost by all paths."),
		efficiency: column(
			ratio("Efficiency of one row."),
			"Useful heat divided by the power that `efficiencyBasis` names.",
		),
		reducedDifferenceM2KPerW: column(
			squareMetreKelvinPerWatt("Reduced temperature difference of one row."),
			"Reduced temperature difference (T − T_air)/G: fluid temperature minus air temperature, divided by beam irradiance.",
		),
		wallTemperatureC: column(
			celsius("Wall temperature of one row."),
			"Mean temperature of the absorber wall.",
		),
		filmTemperatureC: column(
			celsius("Film temperature of one row."),
			"Temperature of the fluid at the wall, for evenly distributed light. It equals the wall temperature, since the drop across copper is below 0.1 K.",
		),
		leavingTemperatureC: column(
			celsius("Outlet temperature of one row."),
			"Temperature of the fluid that leaves the receiver.",
		),
	})
	.openapi("ReceiverTable", {
		description:
			"One row for each combination of temperature, tilt and wind; temperature varies fastest, then tilt. In each row, absorbed light = useful heat + all losses.",
	});

const Line = z
	.strictObject({
		windMPerS: metresPerSecond("Wind speed of the rows that the line is fitted to."),
		tiltDeg: degrees("Receiver tilt of the rows that the line is fitted to."),
		zeroLossEfficiency: ratio("Zero-loss efficiency η0, with fluid and air at the same temperature."),
		lossCoefficientWPerK: wattsPerKelvin("Heat loss coefficient of the whole receiver."),
		lossCoefficientWPerM2K: wattsPerSquareMetreKelvin(
			"Heat loss coefficient U per square metre of dish aperture. Absent when the request sends `absorbedPowerW`.",
		).optional(),
		worstDeviation: ratio("Largest deviation of a row's efficiency from the line."),
	})
	.openapi("EfficiencyLine", {
		description: "Straight line η = η0 − U·(T − T_air)/G fitted to the rows of one wind and tilt.",
	});

const ConvectionRange = z
	.strictObject({
		byStineMcDonaldW: column(
			watts("Heat convected in one row."),
			"Heat lost by convection after Stine & McDonald 1989 plus wind, as in the table.",
		),
		byKoenigMarvinW: column(
			watts("Heat convected in one row."),
			"Heat lost by convection after Koenig & Marvin 1981 at the same wall temperature, plus the same wind.",
		),
		greatestDifferenceW: watts("Largest difference between the two models in any row."),
		greatestShareOfLoss: ratio(
			"Largest difference between the two models as a share of a row's total heat loss.",
		),
	})
	.openapi("ConvectionRange", {
		description: "Difference between two published models of cavity convection. Absent for other receivers.",
	});

const Stagnation = z
	.strictObject({
		absorbedW: watts("Light absorbed by the absorber at stagnation."),
		wallTemperatureC: celsius(
			"Wall temperature at which the losses equal the absorbed light, for evenly distributed light; at most the sun's 5727 °C.",
		),
		lowC: celsius(
			"Lower estimate of the wall temperature: 15 % less rise above air temperature. The models run far outside their data here.",
		),
		highC: celsius("Upper estimate of the wall temperature: 15 % more rise above air temperature."),
		radiatedW: watts("Heat lost by radiation at stagnation."),
		convectedW: watts("Heat lost by convection at stagnation."),
		conductedW: watts("Heat lost by conduction through the insulation at stagnation."),
		unresolvedW: watts(
			"Heat lost at stagnation by an efficiency line, which does not resolve the paths; else 0.",
		),
		passes: z
			.array(z.enum(["bulkLimit", "filmLimit", "flashPoint"]))
			.meta({ description: "Fluid limits that the stagnation temperature of the wall exceeds." }),
	})
	.openapi("Stagnation", {
		description: "The receiver when the pump has stopped and the dish still faces the sun.",
	});

const FluidLimits = z
	.strictObject({
		bulkLimit: FluidLimit.meta({ description: "Highest fluid temperature in the loop for long service." }),
		filmLimit: FluidLimit.meta({ description: "Highest fluid temperature at a heated wall." }),
		flashPoint: FluidLimit.optional().meta({
			description: "Flash point of the fluid, open cup. Absent where the fluid does not burn.",
		}),
	})
	.openapi("FluidLimits", { description: "Temperature limits of the fluid." });

const Size = z
	.strictObject({
		apertureDiameterM: metres(
			"Diameter of the receiver aperture: the opening of a cavity or the disc of a coil.",
		),
		innerDiameterM: metres("Inner diameter of the cavity interior. Absent for other receivers.").optional(),
		depthM: metres("Depth of the cavity interior. Absent for other receivers.").optional(),
		tubeLengthM: metres("Length of the receiver's tube."),
		tubeInnerDiameterMm: millimetres("Inner diameter of the receiver's tube."),
	})
	.openapi("ReceiverSize", {
		description: "Dimensions of the receiver used. Absent for an efficiency line.",
	});

export const ReceiverLossesResponse = z
	.strictObject({
		kind: z
			.enum(["cavity", "openCoil", "glazedCoil", "efficiencyLine"])
			.meta({ description: "Kind of the receiver." }),
		size: Size.optional(),
		light: Light,
		efficiencyBasis: z.enum(["beamOnAperture", "absorbed"]).meta({
			description: "Power that efficiencies refer to: beam on the dish aperture, or light absorbed.",
		}),
		table: Table,
		worstResidualW: watts(
			"Absorbed light minus useful heat minus losses, in the row where it is farthest from 0.",
		),
		efficiencyLines: z.array(Line).meta({
			description:
				"Efficiency line for each wind and tilt. Empty when the request has fewer than two fluid temperatures.",
		}),
		convectionRange: ConvectionRange.optional(),
		stagnation: Stagnation,
		fluidLimits: FluidLimits,
		...backing,
	})
	.openapi("ReceiverLossesResponse");
