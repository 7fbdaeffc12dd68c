import { z } from "@hono/zod-openapi";
import { Assumed } from "../../parts/assumed.ts";
import { Caution } from "../../parts/caution.ts";
import { Method } from "../../parts/method.ts";
import { degrees, metres, ratio, squareMetres, watts, wattsPerSquareMetre } from "../../wire/units.ts";

const column = <T extends z.ZodType>(field: T, description: string) => z.array(field).meta({ description });

const Shares = z
	.strictObject({
		blocked: ratio("Shaded by receiver, arms and ribs."),
		mirror: ratio("Absorbed or scattered by the clean mirror."),
		soiling: ratio("Taken by dust."),
		spillage: ratio("Past the receiver's aperture."),
		receiver: ratio("Through the aperture, and thrown back."),
		absorbed: ratio("Taken up by the absorber."),
	})
	.openapi("OpticalShares", {
		description: "Where the beam on the aperture goes, in the order the light meets it. They add up to 1.",
	});

const FocalSpot = z
	.strictObject({
		share: column(ratio("Of the reflected light."), "Share of the reflected light, of each circle."),
		diameterM: column(
			metres("Of the circle."),
			"Of the circle about the focus that takes that share. A share that no circle takes is left out.",
		),
		peakIrradianceWPerM2: wattsPerSquareMetre(
			"At the middle of the spot, of a mirror whose errors are random; waves in the mirror make places twice as bright.",
		),
		meanIrradianceWPerM2: wattsPerSquareMetre("Over the receiver's aperture."),
	})
	.openapi("FocalSpot");

const ConcentrationLimits = z
	.strictObject({
		thermodynamic: ratio("Of any mirror in air, by the second law."),
		flatReceiver: ratio(
			"Of a perfect paraboloid with this rim angle on a disc that takes the whole sun. Absent for an off-axis mirror and beyond a rim angle of 89°.",
		).optional(),
		ballReceiver: ratio("The same on a ball. Absent for an off-axis mirror and beyond 90°.").optional(),
	})
	.openapi("ConcentrationLimits", {
		description: "Greatest concentration for a sun of 4.65 mrad half angle.",
	});

const Curve = z
	.strictObject({
		apertureDiameterM: column(metres("Of the receiver's aperture."), "Of the receiver's aperture."),
		interceptFactor: column(ratio("At that aperture."), "Share of the reflected light that enters."),
		absorbedW: column(watts("At that aperture."), "Light taken up by the absorber."),
		lossW: column(watts("At that aperture."), "Heat lost by all paths."),
		netPowerW: column(watts("At that aperture."), "Absorbed less lost."),
	})
	.openapi("ApertureCurve", {
		description:
			"Light caught against heat lost, with the receiver in proportion to each aperture (a hollow 1.3 apertures wide and as deep) and its wall 15 K over the fluid.",
	});

const BestAperture = z
	.strictObject({
		apertureDiameterM: metres("That nets most, within 1 mm."),
		interceptFactor: ratio("Share of the reflected light that enters."),
		geometricConcentration: ratio("Aperture of the dish over that of the receiver."),
		spilledW: watts("Reflected light that misses."),
		lossW: watts("Heat lost by all paths."),
		netPowerW: watts("Absorbed less lost. Not above 0: nothing is gained with oil so hot."),
		withinSearch: z.boolean().meta({
			description:
				"Whether the best lies between the ends of the search: 1 and 40 % of the focal length, at most half the mirror and 5 m.",
		}),
	})
	.openapi("BestAperture", { description: "The aperture at which spill and loss together take least." });

const Seasons = z
	.strictObject({
		stepDays: z.int().meta({ description: "Between rows." }),
		date: column(z.iso.date(), "Day of the row."),
		declinationDeg: column(degrees("Of the sun."), "Sun's angle north of the celestial equator."),
		apertureAreaM2: column(squareMetres("Normal to the beam."), "Mirror as the sun sees it."),
		leastApertureAreaM2: squareMetres("In summer of the site's hemisphere."),
		greatestApertureAreaM2: squareMetres("In winter."),
		meanApertureAreaM2: squareMetres("Over the year."),
	})
	.openapi("ApertureSeasons", {
		description: "Aperture of an off-axis dish on a polar axis through the year. Absent for a two-axis dish.",
	});

export const DishOpticsResponse = z
	.strictObject({
		kind: z.enum(["twoAxis", "offsetPolar"]).meta({ description: "Of the dish." }),
		apertureDiameterM: metres("Of the dish. Absent for an off-axis mirror.").optional(),
		apertureAreaM2: squareMetres("Normal to the beam, on this day."),
		mirrorAreaM2: squareMetres("Of the reflecting surface."),
		focalLengthM: metres("From vertex to focus; of an off-axis mirror from its middle, at the equinox."),
		rimAngleDeg: degrees(
			"Between axis and rim, seen from the focus. Absent for an off-axis mirror.",
		).optional(),
		depthM: metres("From the plane of the rim to the vertex. Absent for an off-axis mirror.").optional(),
		receiverApertureDiameterM: metres("That the figures are for, given or sized."),
		geometricConcentration: ratio("Aperture of the dish over that of the receiver."),
		interceptFactor: ratio("Share of the reflected light that enters the receiver."),
		opticalEfficiency: ratio("Light taken up by the absorber over beam on the aperture."),
		beamOnApertureW: watts("At the beam asked or assumed."),
		powerAtFocusW: watts("Light through the receiver's aperture."),
		absorbedW: watts("Of it, taken up by the absorber."),
		shares: Shares,
		focalSpot: FocalSpot,
		concentrationLimits: ConcentrationLimits,
		bestAperture: BestAperture,
		curve: Curve,
		seasons: Seasons.optional(),
		cautions: z.array(Caution).meta({ description: "What to be careful of, the most serious first." }),
		assumed: z.array(Assumed).meta({ description: "Every value left out, and why this one." }),
		methods: z.array(Method).meta({ description: "What the numbers rest on." }),
	})
	.openapi("DishOpticsResponse");
