import { z } from "@hono/zod-openapi";
import {
	type Dish as CoreDish,
	focalLengthAtRimAngle,
	handbook,
	measured,
	offsetPolarAperture,
	practice,
	unconfirmed,
} from "../../src/index.ts";
import { assume, type Fill } from "../wire/defaults.ts";
import { degrees, metres, milliradians, ratio, squareMetres, toSi } from "../wire/units.ts";

const mirror = {
	reflectance: assume(
		ratio("Share of sunlight that the clean mirror reflects, solar-weighted.", 0.05, 1),
		0.85,
		unconfirmed(
			measured("coated mirror aluminium; thin silvered glass reaches 0.94", "NREL/TP-255-2091 (1983)"),
		),
	),
	cleanliness: assume(
		ratio("What dust leaves of the reflectance.", 0.05, 1),
		0.92,
		unconfirmed(practice("washed every few weeks; 0.90–0.97 are usual")),
	),
	slopeErrorMrad: assume(
		milliradians("How far the surface is off its true shape: rms of its normal, per axis.", 0, 50),
		5,
		practice("petals pressed or bent over ribs with care"),
	),
	specularityMrad: assume(
		milliradians("Spread of the reflected ray: rms, per axis.", 0, 50),
		3,
		measured("coated aluminium; silvered film aims at 2", "NREL/TP-255-2670 (1985)"),
	),
	trackingErrorMrad: assume(
		milliradians("Pointing error: rms, per axis.", 0, 50),
		5,
		practice("a little over a quarter of a degree, an actuator that steps"),
	),
	blockedFraction: assume(
		ratio("Share of the aperture in the shade of receiver, arms and ribs.", 0, 0.9),
		0.06,
		practice("a lagged receiver a fifth as wide as the dish, on three arms"),
	),
	lowestSunAltitudeDeg: assume(
		degrees("Lowest sun, above a level horizon, that the dish can still face.", 0, 60),
		5,
		practice("the stop of a usual mount, and a low horizon"),
	),
};

const DIAMETER = "Of the aperture.";
const APERTURE = "Area of the aperture; stands in for the diameter.";

/** Not a component of its own: an object whose `kind` may be left out cannot stand behind a discriminator. */
const TwoAxisDish = z.strictObject({
	kind: assume(
		z.literal("twoAxis").meta({ description: "A paraboloid that faces the sun on two axes." }),
		"twoAxis",
		practice("the usual tracking dish"),
	),
	diameterM: metres(`${DIAMETER} Give this or apertureM2.`, 0.2, 20).optional(),
	apertureM2: squareMetres(APERTURE, 0.03, 315).optional(),
	focalLengthM: metres("From vertex to focus. Left out, it follows from the rim angle.", 0.05, 40).optional(),
	rimAngleDeg: degrees(
		"Between axis and rim, seen from the focus. Stands in for the focal length; left out, it is 45°.",
		10,
		120,
	).optional(),
	...mirror,
});

const OffsetPolarDish = z
	.strictObject({
		kind: z.literal("offsetPolar").meta({
			description:
				"An off-axis paraboloid that turns on one polar axis about a focus that stays in place, and is reshaped through the year.",
		}),
		mirrorAreaM2: squareMetres(
			"Area of the mirror. Give this, apertureM2 or diameterM.",
			0.05,
			500,
		).optional(),
		apertureM2: squareMetres("Area facing the sun at the equinox.", 0.03, 315).optional(),
		diameterM: metres("Of a disc as large as the aperture at the equinox.", 0.2, 20).optional(),
		focalLengthM: metres("From the middle of the mirror to the focus, at the equinox.", 0.05, 40).optional(),
		...mirror,
	})
	.openapi("OffsetPolarDish");

export const Dish = z.discriminatedUnion("kind", [TwoAxisDish, OffsetPolarDish]).openapi("Dish", {
	description: "The mirror and its mount. Without `kind` a two-axis dish.",
	example: { kind: "twoAxis", diameterM: 1.8, reflectance: 0.9, cleanliness: 0.95 },
});

export type Dish = z.output<typeof Dish>;

export const RIM_ANGLE = 45; // [°] where a flat receiver at the focus can be smallest; Duffie & Beckman, Solar Engineering of Thermal Processes, ch. 7 (from memory)
const OFFSET_FOCUS = 0.98; // [-] distance to the focus over the root of the mirror's area, of the 8 m² dish in Munir et al., Solar Energy 84 (2010) 1490 (from memory)

/** The dish as the core wants it; its size must have been given. */
export function coreDish(dish: Dish, fill: Fill): CoreDish {
	const common = {
		reflectance: dish.reflectance,
		cleanliness: dish.cleanliness,
		blockedFraction: dish.blockedFraction,
		slopeError: toSi.milliradians(dish.slopeErrorMrad),
		specularity: toSi.milliradians(dish.specularityMrad),
		trackingError: toSi.milliradians(dish.trackingErrorMrad),
		lowestAltitude: toSi.degrees(dish.lowestSunAltitudeDeg),
	};
	if (dish.kind === "twoAxis") {
		const diameter = dish.diameterM ?? Math.sqrt((4 * dish.apertureM2!) / Math.PI);
		return {
			kind: "twoAxis",
			...common,
			diameter,
			focalLength: dish.focalLengthM ?? focus(dish, diameter, fill),
		};
	}
	const mirrorArea =
		dish.mirrorAreaM2 ?? mirrorAreaOf(dish.apertureM2 ?? (Math.PI / 4) * dish.diameterM! ** 2);
	const focalLength =
		dish.focalLengthM ??
		fill(
			"/dish/focalLengthM",
			OFFSET_FOCUS * Math.sqrt(mirrorArea),
			unconfirmed(
				measured(
					"the proportions of a published dish of 8 m²",
					"Munir, Hensel & Scheffler, Solar Energy 84 (2010) 1490",
				),
			),
		);
	return { kind: "offsetPolar", ...common, mirrorArea, focalLength };
}

function focus(dish: Extract<Dish, { kind: "twoAxis" }>, diameter: number, fill: Fill): number {
	const angle =
		dish.rimAngleDeg ??
		fill(
			"/dish/rimAngleDeg",
			RIM_ANGLE,
			unconfirmed(
				handbook(
					"where a flat receiver at the focus can be smallest",
					"Duffie & Beckman, Solar Engineering of Thermal Processes, ch. 7",
				),
			),
		);
	return focalLengthAtRimAngle(diameter, toSi.degrees(angle));
}

/** Area of mirror that shows an aperture at the equinox [m²]. */
function mirrorAreaOf(equinoxAperture: number): number {
	return equinoxAperture / offsetPolarAperture(1, 0, 0);
}
