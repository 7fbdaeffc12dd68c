import { z } from "@hono/zod-openapi";
import { backing } from "../../parts/backing.ts";
import { degrees, metres, ratio, squareMetres, watts, wattsPerSquareMetre } from "../../wire/units.ts";

const column = <T extends z.ZodType>(field: T, description: string) => z.array(field).meta({ description });

const Shares = z
	.strictObject({
		blocked: ratio("Share of the beam shaded by receiver, arms and ribs."),
		mirror: ratio("Share of the beam absorbed or scattered by the clean mirror."),
		soiling: ratio("Share of the beam lost to dust on the mirror."),
		spillage: ratio("Share of the beam that misses the receiver aperture."),
		receiver: ratio("Share of the beam that enters the receiver aperture and is reflected."),
		absorbed: ratio("Share of the beam absorbed by the absorber."),
	})
	.openapi("OpticalShares", {
		description:
			"Shares of the beam on the dish aperture, in the order in which the light meets each loss. They add up to 1.",
	});

const FocalSpot = z
	.strictObject({
		share: column(
			ratio("Share of the reflected light inside one circle."),
			"Share of the reflected light inside each circle about the focus. A share that no circle contains has no row.",
		),
		diameterM: column(
			metres("Diameter of one circle."),
			"Diameter of the circle about the focus that contains the `share` of the same row.",
		),
		peakIrradianceWPerM2: wattsPerSquareMetre(
			"Irradiance at the centre of the focal spot for random mirror errors. Waves in the mirror make places twice as bright.",
		),
		meanIrradianceWPerM2: wattsPerSquareMetre("Mean irradiance over the receiver aperture."),
	})
	.openapi("FocalSpot", { description: "Size and brightness of the focal spot." });

const ConcentrationLimits = z
	.strictObject({
		thermodynamic: ratio("Greatest concentration of any mirror in air, by the second law of thermodynamics."),
		flatReceiver: ratio(
			"Greatest concentration of a perfect paraboloid with this rim angle on a disc that receives the whole sun. Absent for an off-axis mirror and for rim angles above 89.7°.",
		).optional(),
		ballReceiver: ratio(
			"Greatest concentration of a perfect paraboloid with this rim angle on a ball that receives the whole sun. Absent for an off-axis mirror and for rim angles above 90°.",
		).optional(),
	})
	.openapi("ConcentrationLimits", {
		description: "Greatest possible concentrations for a sun of 4.65 mrad half-angle.",
	});

const Curve = z
	.strictObject({
		apertureDiameterM: column(
			metres("Diameter of one receiver aperture."),
			"Diameter of each receiver aperture.",
		),
		interceptFactor: column(
			ratio("Share of the reflected light that enters one aperture."),
			"Share of the reflected light that enters each receiver aperture.",
		),
		absorbedW: column(
			watts("Light absorbed at one aperture."),
			"Light absorbed by the absorber at each aperture.",
		),
		lossW: column(watts("Heat lost at one aperture."), "Heat lost by all paths at each aperture."),
		netPowerW: column(
			watts("Net power at one aperture."),
			"Absorbed light minus heat lost at each aperture.",
		),
	})
	.openapi("ApertureCurve", {
		description:
			"Light caught against heat lost over receiver apertures. The receiver scales with the aperture: a cavity interior is 1.3 apertures wide and equally deep. Its wall is 15 K above the fluid.",
	});

const BestAperture = z
	.strictObject({
		apertureDiameterM: metres("Diameter of the receiver aperture with the greatest net power, within 1 mm."),
		interceptFactor: ratio("Share of the reflected light that enters the best aperture."),
		geometricConcentration: ratio("Area of the dish aperture divided by that of the best receiver aperture."),
		spilledW: watts("Reflected light that misses the best aperture."),
		lossW: watts("Heat lost by all paths at the best aperture."),
		netPowerW: watts(
			"Absorbed light minus heat lost at the best aperture. At 0 or below, no heat is gained at this oil temperature.",
		),
		withinSearch: z.boolean().meta({
			description:
				"Whether the best aperture is inside the search range: 1 to 40 % of the focal length, at most half the mirror width and 5 m.",
		}),
	})
	.openapi("BestAperture", {
		description: "Receiver aperture at which spillage and heat loss together are least.",
	});

const Seasons = z
	.strictObject({
		stepDays: z.int().meta({ description: "Number of days between rows." }),
		date: column(z.iso.date(), "Date of each row."),
		declinationDeg: column(
			degrees("Declination of the sun on one day."),
			"Declination of the sun: its angle north of the celestial equator.",
		),
		apertureAreaM2: column(
			squareMetres("Aperture area on one day."),
			"Area of the dish aperture normal to the beam.",
		),
		leastApertureAreaM2: squareMetres(
			"Smallest aperture area of the year, in summer of the site's hemisphere.",
		),
		greatestApertureAreaM2: squareMetres(
			"Largest aperture area of the year, in winter of the site's hemisphere.",
		),
		meanApertureAreaM2: squareMetres("Mean aperture area over the year."),
	})
	.openapi("ApertureSeasons", {
		description: "Aperture of an off-axis dish on a polar axis through the year. Absent for a two-axis dish.",
	});

export const DishOpticsResponse = z
	.strictObject({
		kind: z.enum(["twoAxis", "offsetPolar"]).meta({ description: "Kind of the dish." }),
		apertureDiameterM: metres("Diameter of the dish aperture. Absent for an off-axis mirror.").optional(),
		apertureAreaM2: squareMetres("Area of the dish aperture normal to the beam on the requested day."),
		mirrorAreaM2: squareMetres("Area of the reflecting surface of the mirror."),
		focalLengthM: metres(
			"Focal length of the mirror, from vertex to focus. For an off-axis mirror: from its middle to the focus at the equinox.",
		),
		rimAngleDeg: degrees(
			"Angle at the focus between the axis and the rim of the dish. Absent for an off-axis mirror.",
		).optional(),
		depthM: metres(
			"Depth of the dish, from the plane of its rim to its vertex. Absent for an off-axis mirror.",
		).optional(),
		receiverApertureDiameterM: metres("Diameter of the receiver aperture used, as sent or as sized."),
		geometricConcentration: ratio("Area of the dish aperture divided by that of the receiver aperture."),
		interceptFactor: ratio("Share of the reflected light that enters the receiver aperture."),
		opticalEfficiency: ratio("Light absorbed by the absorber divided by beam on the dish aperture."),
		beamOnApertureW: watts("Beam power on the dish aperture at the beam irradiance sent or assumed."),
		powerAtFocusW: watts("Light that enters the receiver aperture."),
		absorbedW: watts("Light absorbed by the absorber."),
		shares: Shares,
		focalSpot: FocalSpot,
		concentrationLimits: ConcentrationLimits,
		bestAperture: BestAperture,
		curve: Curve,
		seasons: Seasons.optional(),
		...backing,
	})
	.openapi("DishOpticsResponse");
