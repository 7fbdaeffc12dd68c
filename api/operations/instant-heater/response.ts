import { z } from "@hono/zod-openapi";
import { Assumed } from "../../parts/assumed.ts";
import { Caution, Parameters } from "../../parts/caution.ts";
import { Method } from "../../parts/method.ts";
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
		code: z.enum(REASONS).meta({ description: "What stands in the way, for a program to branch on." }),
		parameters: Parameters,
		message: z.string().meta({ description: "The same in English." }),
	})
	.openapi("InstantReason", { description: "Why an instant heater falls short." });

const aperture = {
	apertureNeededM2: squareMetres(
		"Aperture of a dish of these proportions that gives the flow. Absent where none up to the bound does.",
	).optional(),
	diameterNeededM: metres("Of a disc of that aperture.").optional(),
};

const InstantRow = z
	.strictObject({
		beamIrradianceWPerM2: wattsPerSquareMetre("Beam of this row."),
		ambientC: celsius("Air of this row."),
		sunAltitudeDeg: degrees("Height of the sun of this row."),
		serves: z.boolean().meta({ description: "Whether what was asked is given under this sun." }),
		flowLPerMin: litresPerMinute("Steady flow at the wanted temperature, in litres at the cold feed."),
		powerW: watts("Heat in the water that comes to the tap, over the feed's."),
		electricEquivalentKw: kilowatts("Rating of an electric instant heater that gives the same."),
		efficiency: ratio("Heat in the water at the tap over beam on the aperture."),
		wallTemperatureC: celsius(
			"Hottest wall that the water touches, at that flow. Absent of an efficiency line, and where nothing flows.",
		).optional(),
		wallSuperheatK: kelvinDifference(
			"That wall above the boiling point in the line; negative below it.",
		).optional(),
		leavingTemperatureC: celsius(
			"Of that flow leaving the receiver: hotter than wanted by what the pipe to the tap takes. Absent behind a vessel, and where nothing flows.",
		).optional(),
		pipeLossW: watts(
			"Heat that the pipe to the tap loses; negative where warmer air heats it. Absent behind a vessel, and where nothing flows.",
		).optional(),
		leastFlowLPerMin: litresPerMinute(
			"Any less boils in the receiver, at the line's pressure and this elevation. 0 where none does. Absent behind a vessel.",
		).optional(),
		oilTemperatureC: celsius("Where the vessel's oil settles. Absent without one.").optional(),
		...aperture,
	})
	.openapi("InstantRow", { description: "The heater under one sun, steady." });

const Level = InstantRow.safeExtend({
	outletTemperatureC: celsius(
		"Where the wanted flow leaves the receiver. Absent without a wanted flow, behind a vessel, and where it boils.",
	).optional(),
	tapTemperatureC: celsius(
		"Where it comes to the tap, behind the pipe. Absent as `outletTemperatureC` is.",
	).optional(),
	wantedFlowBoils: z
		.boolean()
		.meta({ description: "Whether the wanted flow boils. Absent without a wanted flow and behind a vessel." })
		.optional(),
}).openapi("InstantLevel", { description: "The heater under one of the beam levels asked about." });

const FromCharge = z
	.strictObject({
		outcome: z.enum(["sustained", "lasts", "coilTooSmall"]).meta({
			description:
				"`sustained`: for as long as the sun stays. `lasts`: until the oil is too cool. `coilTooSmall`: the coil can't bring this flow to its temperature even from charge.",
		}),
		lastsMin: minutes("How long the flow lasts from charge. Only when it `lasts`.").optional(),
		recoveryMin: minutes(
			"To be charged again with nothing drawn. Absent where the sun can't, and unless it `lasts`.",
		).optional(),
		coilFlowLPerMin: litresPerMinute(
			"What the coil gives from charge. Only when it is too small.",
		).optional(),
	})
	.openapi("FromCharge", { description: "A flow drawn from a charged vessel, the sun still on it." });

const Ask = z.strictObject({
	flowLPerMin: litresPerMinute("Asked for."),
	temperatureC: celsius("Asked for."),
	electricEquivalentKw: kilowatts("What it takes."),
});

const Use = z
	.strictObject({
		use: z.enum(["basinTap", "kitchenSink", "shower"]),
		modest: Ask,
		lavish: Ask,
		givenFlowLPerMin: litresPerMinute("What this heater gives at the modest temperature under the best sun."),
		givenShare: ratio("Of the modest flow; more than 1 where there is more than enough."),
		...aperture,
		fromCharge: FromCharge.optional(),
		...provenance,
	})
	.openapi("InstantUse", {
		description:
			"What a tap usually delivers, and what this heater gives it. The aperture is for the modest end under the best sun. Basis, source and confirmed concern the flows and temperatures; a source names the figures that a regulation sets.",
	});

const VesselAnswer = z
	.strictObject({
		chargeTemperatureC: celsius("At which it counts as charged: as asked, or 5 K under where it levels off."),
		levelsOffC: celsius(
			"Where the oil would stay with nothing drawn. Absent where it would pass its limit.",
		).optional(),
		warmUpMin: minutes("From the start to the charge. Absent where the sun does not warm it.").optional(),
		oilLimitC: celsius("At which the dish turns away."),
		toLimitMin: minutes(
			"From charge to the limit with nothing drawn. Absent where it levels off below.",
		).optional(),
		filmTemperatureC: celsius(
			"Hottest oil in the receiver at charge, its light taken as spread evenly. Absent of an efficiency line.",
		).optional(),
		fromCharge: FromCharge.optional(),
	})
	.openapi("InstantVessel", { description: "The oil vessel under the best sun." });

export const InstantResponse = z
	.strictObject({
		outcome: z.enum(["feasible", "feasibleForPart", "infeasible"]).meta({
			description:
				"Whether what was asked is given throughout, for part, or not at all: throughout the window of the date, else at every beam level.",
		}),
		servedShare: ratio("Of the window's time, or of the beam levels."),
		reasons: z.array(InstantReason).meta({ description: "What stands in the way, the most binding first." }),
		arrangement: z.enum(["direct", "vessel"]),
		wanted: z
			.strictObject({
				temperatureC: celsius("At the tap."),
				riseK: kelvinDifference("Above the cold feed."),
				flowLPerMin: litresPerMinute(
					"Wanted, in litres at the cold feed. Absent where any will do.",
				).optional(),
				electricEquivalentKw: kilowatts("What that flow takes.").optional(),
			})
			.meta({ description: "What was asked." }),
		electricEquivalentKw: kilowatts(
			"What this heater gives under the best sun: the rating of an electric instant heater that gives the same.",
		),
		apertureM2: squareMetres("Of this dish, facing the sun."),
		apertureNeededM2: squareMetres(
			"Aperture of a dish of these proportions that gives the wanted flow throughout: under the weakest sun asked about. Absent without a wanted flow, and where none up to the bound does.",
		).optional(),
		diameterNeededM: metres("Of a disc of that aperture.").optional(),
		boilingPointC: celsius("Of water at the line's pressure and this elevation."),
		best: InstantRow,
		weakest: InstantRow,
		levels: z.array(Level).meta({ description: "One for each beam level asked about." }),
		hours: InstantHours.optional(),
		uses: z.array(Use).meta({ description: "A basin tap, a kitchen sink and a shower side by side." }),
		outletPipe: OutletAnswer.optional(),
		vessel: VesselAnswer.optional(),
		range: InstantRange.optional(),
		stagnationTemperatureC: celsius(
			"Of the receiver without flow, at 1000 W/m², still air, 25 °C, its light taken as spread evenly.",
		),
		cautions: z.array(Caution).meta({ description: "What to be careful of, the most serious first." }),
		assumed: z
			.array(Assumed)
			.meta({ description: "Every value that the request left out, and why this one." }),
		methods: z.array(Method).meta({ description: "What the numbers rest on." }),
	})
	.openapi("InstantResponse", {
		description:
			"Each row is steady: the minute or so in which the heater itself warms up is left out; `outletPipe` tells how long the pipe takes. All flows are litres at the cold feed.",
	});

export type InstantResponse = z.input<typeof InstantResponse>;
