import { z } from "@hono/zod-openapi";
import { backing } from "../../parts/backing.ts";
import { Parameters } from "../../parts/caution.ts";
import { provenance } from "../../parts/provenance.ts";
import {
	celsius,
	degrees,
	kelvinDifference,
	kilowatts,
	litresPerMinute,
	metres,
	minutes,
	ratio,
	squareMetres,
	watts,
	wattsPerSquareMetre,
} from "../../wire/units.ts";
import { InstantHours } from "./hours.ts";
import { OutletAnswer } from "./outlet-pipe.ts";
import { InstantRange } from "./range.ts";

const REASONS = [
	"limitedByBoiling",
	"noSun",
	"sunBelowDish",
	"tooLittleHeat",
	"lostInPipe",
	"weakSunForPart",
	"boilsInReceiver",
	"limitedByOilLimit",
	"noDishWithinBound",
	"chargeNotReached",
	"coilTooSmall",
] as const;

const InstantReason = z
	.strictObject({
		code: z.enum(REASONS).meta({ description: "Machine-readable code of the reason." }),
		parameters: Parameters,
		message: z.string().meta({ description: "The reason as an English sentence." }),
	})
	.openapi("InstantReason", { description: "Why an instant heater does not meet the request." });

const aperture = {
	apertureNeededM2: squareMetres(
		"Aperture of a dish of the same proportions that provides the flow. Absent where no dish up to `largestDiameterM` does.",
	).optional(),
	diameterNeededM: metres(
		"Diameter of a circular dish with the aperture needed. Absent where no dish up to `largestDiameterM` provides the flow.",
	).optional(),
};

const InstantRow = z
	.strictObject({
		beamIrradianceWPerM2: wattsPerSquareMetre("Beam irradiance of this state."),
		ambientC: celsius("Air temperature of this state."),
		sunAltitudeDeg: degrees("Altitude of the sun of this state."),
		serves: z.boolean().meta({ description: "Whether the heater meets the request under this beam." }),
		flowLPerMin: litresPerMinute("Steady flow at the wanted temperature, measured at the cold feed."),
		powerW: watts("Power delivered to the water at the tap, above the cold feed."),
		electricEquivalentKw: kilowatts("Rating of an electric instant heater with the same output."),
		efficiency: ratio("Power delivered at the tap divided by the beam on the aperture."),
		wallTemperatureC: celsius(
			"Highest temperature of the walls that the water touches, at the steady flow. Absent for an efficiency line and where no flow is possible.",
		).optional(),
		wallSuperheatK: kelvinDifference(
			"Temperature of the hottest wall minus the boiling point in the line; negative below it. Absent where `wallTemperatureC` is.",
		).optional(),
		leavingTemperatureC: celsius(
			"Temperature of the water leaving the receiver, hotter than wanted by what the pipe to the tap loses. Absent with a vessel and where no flow is possible.",
		).optional(),
		pipeLossW: watts(
			"Heat loss of the pipe to the tap; negative where warmer air heats it. Absent with a vessel and where no flow is possible.",
		).optional(),
		leastFlowLPerMin: litresPerMinute(
			"Lowest flow that does not boil in the receiver, at the pressure in the line. 0 where none boils. Absent with a vessel.",
		).optional(),
		oilTemperatureC: celsius(
			"Steady temperature of the oil in the vessel. Absent without a vessel.",
		).optional(),
		...aperture,
	})
	.openapi("InstantRow", { description: "Steady state of the heater under one beam." });

const Level = InstantRow.safeExtend({
	outletTemperatureC: celsius(
		"Temperature of the wanted flow leaving the receiver. Absent without a wanted flow, with a vessel, and where it boils.",
	).optional(),
	tapTemperatureC: celsius(
		"Temperature of the wanted flow at the tap, after the pipe. Absent where `outletTemperatureC` is.",
	).optional(),
	wantedFlowBoils: z
		.boolean()
		.meta({
			description:
				"Whether the wanted flow boils in the receiver. Absent without a wanted flow and with a vessel.",
		})
		.optional(),
}).openapi("InstantLevel", {
	description: "Steady state of the heater under one of the requested beam levels.",
});

const FromCharge = z
	.strictObject({
		outcome: z.enum(["sustained", "lasts", "coilTooSmall"]).meta({
			description:
				"How the flow ends. `sustained`: it continues as long as the sun shines. `lasts`: it continues until the oil is too cool. `coilTooSmall`: the coil cannot heat this flow even from a full charge.",
		}),
		lastsMin: minutes(
			"Time for which the flow lasts from a full charge. Only with the outcome `lasts`.",
		).optional(),
		recoveryMin: minutes(
			"Time to recharge the vessel with nothing drawn. Only with the outcome `lasts`, and absent where the sun cannot recharge it.",
		).optional(),
		coilFlowLPerMin: litresPerMinute(
			"Flow that the coil heats from a full charge. Only with the outcome `coilTooSmall`.",
		).optional(),
	})
	.openapi("FromCharge", { description: "A flow drawn from a charged vessel while the sun still heats it." });

const Demand = z.strictObject({
	flowLPerMin: litresPerMinute("Flow of this use."),
	temperatureC: celsius("Temperature of this use at the tap."),
	electricEquivalentKw: kilowatts("Power that this use needs."),
});

const Use = z
	.strictObject({
		use: z.enum(["basinTap", "kitchenSink", "shower"]).meta({ description: "Kind of use." }),
		modest: Demand.meta({ description: "Modest demand of this use." }),
		lavish: Demand.meta({ description: "Lavish demand of this use." }),
		givenFlowLPerMin: litresPerMinute(
			"Flow that this heater provides at the modest temperature under the strongest beam.",
		),
		givenShare: ratio("Flow provided divided by the modest flow; above 1 where there is more than enough."),
		...aperture,
		fromCharge: FromCharge.optional(),
		...provenance,
	})
	.openapi("InstantUse", {
		description:
			"A common use of hot water compared with this heater. The aperture needed is for the modest demand under the strongest beam. Basis, source and `confirmed` describe the flows and temperatures.",
	});

const VesselAnswer = z
	.strictObject({
		chargeTemperatureC: celsius(
			"Oil temperature at which the vessel counts as charged: as requested, or 5 K below the temperature at which it settles.",
		),
		levelsOffC: celsius(
			"Temperature at which the oil settles with nothing drawn. Absent where it would exceed its limit.",
		).optional(),
		warmUpMin: minutes(
			"Time from the start until the vessel is charged. Absent where the sun does not charge it.",
		).optional(),
		oilLimitC: celsius("Oil temperature at which the dish turns away from the sun."),
		toLimitMin: minutes(
			"Time from charge to the oil's limit with nothing drawn. Absent where the oil settles below it.",
		).optional(),
		filmTemperatureC: celsius(
			"Highest temperature of the oil film in the receiver at charge, with the light assumed to be spread evenly. Absent for an efficiency line.",
		).optional(),
		fromCharge: FromCharge.optional(),
	})
	.openapi("InstantVessel", { description: "The oil vessel under the strongest beam." });

export const InstantResponse = z
	.strictObject({
		outcome: z.enum(["feasible", "feasibleForPart", "infeasible"]).meta({
			description:
				"Whether the heater meets the request throughout, for part of the time or levels, or not at all. With `date` it applies to the window, else to the beam levels.",
		}),
		servedShare: ratio(
			"Share of the window's time, or of the beam levels, in which the heater meets the request.",
		),
		reasons: z
			.array(InstantReason)
			.meta({ description: "Reasons why the heater falls short, the most limiting first." }),
		arrangement: z
			.enum(["direct", "vessel"])
			.meta({ description: "Arrangement of the heater, as requested." }),
		wanted: z
			.strictObject({
				temperatureC: celsius("Temperature wanted at the tap."),
				riseK: kelvinDifference("Temperature rise wanted above the cold feed."),
				flowLPerMin: litresPerMinute(
					"Wanted flow, measured at the cold feed. Absent where none was sent.",
				).optional(),
				electricEquivalentKw: kilowatts(
					"Power that the wanted flow needs. Absent where none was sent.",
				).optional(),
			})
			.meta({ description: "The water wanted, as requested." }),
		electricEquivalentKw: kilowatts(
			"Output of this heater under the strongest beam, as the rating of an electric instant heater with the same output.",
		),
		apertureM2: squareMetres("Aperture of this dish when it faces the sun."),
		apertureNeededM2: squareMetres(
			"Aperture of a dish of the same proportions that provides the wanted flow under the weakest requested beam. Absent without a wanted flow and where no dish up to `largestDiameterM` does.",
		).optional(),
		diameterNeededM: metres(
			"Diameter of a circular dish with the aperture needed. Absent where `apertureNeededM2` is.",
		).optional(),
		boilingPointC: celsius("Boiling point of water at the line's pressure and the site's elevation."),
		best: InstantRow.meta({ description: "Steady state of the heater under the strongest beam." }),
		weakest: InstantRow.meta({ description: "Steady state of the heater under the weakest beam." }),
		levels: z
			.array(Level)
			.meta({ description: "Steady states of the heater, one per requested beam level." }),
		hours: InstantHours.optional(),
		uses: z.array(Use).meta({
			description: "Common uses of hot water compared with this heater: basin tap, kitchen sink and shower.",
		}),
		outletPipe: OutletAnswer.optional(),
		vessel: VesselAnswer.optional(),
		range: InstantRange.optional(),
		stagnationTemperatureC: celsius(
			"Temperature of the receiver without flow at 1000 W/m² in still air at 25 °C, with the light assumed to be spread evenly.",
		),
		...backing,
	})
	.openapi("InstantResponse", {
		description:
			"Feasibility of an instant heater. Every state is steady: the minute or so in which the heater warms up is neglected, and `outletPipe` states the time that the pipe needs. All flows are measured at the cold feed.",
	});

export type InstantResponse = z.input<typeof InstantResponse>;
