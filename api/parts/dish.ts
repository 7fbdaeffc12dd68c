import { z } from "@hono/zod-openapi";
import {
	type Dish as CoreDish,
	designDish,
	measured,
	practice,
	type SparseDish,
	unconfirmed,
} from "../../src/index.ts";
import { contradictory, fourDigits, outOfRange, type Rule } from "../validation/rule.ts";
import { alternatives } from "../validation/schema-words.ts";
import { assume } from "../wire/defaults.ts";
import { degrees, metres, milliradians, optionally, ratio, squareMetres, toSi } from "../wire/units.ts";

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

/** The dish as the core takes it, what the request leaves out still open. */
export function sparseDish(dish: Dish): SparseDish {
	const mirror = {
		reflectance: dish.reflectance,
		cleanliness: dish.cleanliness,
		blockedFraction: dish.blockedFraction,
		slopeError: toSi.milliradians(dish.slopeErrorMrad),
		specularity: toSi.milliradians(dish.specularityMrad),
		trackingError: toSi.milliradians(dish.trackingErrorMrad),
		lowestAltitude: toSi.degrees(dish.lowestSunAltitudeDeg),
		focalLength: dish.focalLengthM,
	};
	switch (dish.kind) {
		case "twoAxis":
			return {
				kind: "twoAxis",
				...mirror,
				diameter: dish.diameterM,
				apertureArea: dish.apertureM2,
				rimAngle: optionally(toSi.degrees, dish.rimAngleDeg),
			};
		case "offsetPolar":
			return {
				kind: "offsetPolar",
				...mirror,
				mirrorArea: dish.mirrorAreaM2,
				apertureArea: dish.apertureM2 ?? optionally(discArea, dish.diameterM),
			};
		default:
			return dish satisfies never;
	}
}

const discArea = (diameter: number) => (Math.PI / 4) * diameter ** 2; // [m²]

/** The complete dish; undefined where a request states no size of it, or several. */
export function dishOf(dish: Dish): CoreDish | undefined {
	return sizesSent(dish).length === 1 ? designDish(sparseDish(dish)).design : undefined;
}

/** What could be designed of a request's dish. */
export interface WithDish {
	readonly dish: CoreDish | undefined;
}

/** Fields that set the size of each kind of dish. */
const SIZES = {
	twoAxis: ["apertureM2", "diameterM"],
	offsetPolar: ["mirrorAreaM2", "apertureM2", "diameterM"],
} as const satisfies Record<Dish["kind"], readonly string[]>;

function sizesSent(dish: Dish): readonly string[] {
	return SIZES[dish.kind].filter((name) => (dish as Readonly<Record<string, unknown>>)[name] !== undefined);
}

/** A dish has one size. */
export const dishSize: Rule<{ readonly dish: Dish }> = ({ dish }) => {
	const sent = sizesSent(dish);
	const choice = alternatives(SIZES[dish.kind]);
	if (sent.length === 0) return [contradictory("/dish", `the dish has no size: give ${choice}`)];
	if (sent.length === 1) return [];
	return sent.map((name) =>
		contradictory(`/dish/${name}`, `the dish has ${sent.length} sizes: give only one of ${choice}`),
	);
};

/** Focal length and rim angle say the same thing. */
export const dishFocus: Rule<{ readonly dish: Dish }> = ({ dish }) =>
	dish.kind === "twoAxis" && dish.focalLengthM !== undefined && dish.rimAngleDeg !== undefined
		? ["focalLengthM", "rimAngleDeg"].map((name) =>
				contradictory(`/dish/${name}`, "focalLengthM and rimAngleDeg say the same thing: give only one"),
			)
		: [];

const WIDEST_OFFSET = 0.9; // [-] radius over focal length up to which the off-axis spot is worked out

/** An off-axis mirror stays clear of its focus. */
export const dishOffset: Rule<{ readonly dish?: Dish | undefined }, WithDish> = (request, { dish }) => {
	if (dish?.kind !== "offsetPolar" || request.dish?.focalLengthM === undefined) return [];
	const { mirrorArea, focalLength } = dish;
	const least = (0.483 * Math.sqrt(mirrorArea)) / WIDEST_OFFSET;
	return focalLength < least
		? [
				outOfRange(
					"/dish/focalLengthM",
					`the focus of a mirror of ${fourDigits(mirrorArea)} m² must be at least ${fourDigits(least)} m away`,
				),
			]
		: [];
};

/** The seasons of an off-axis dish on a polar axis depend on its hemisphere. */
export const hemisphereKnown: Rule<{
	readonly dish?: Dish | undefined;
	readonly latitude?: number | undefined;
}> = ({ dish, latitude }) =>
	dish?.kind === "offsetPolar" && latitude === undefined
		? [
				contradictory(
					"/latitude",
					"an off-axis dish on a polar axis shows the sun another aperture in summer than in winter: give the latitude, which tells its hemisphere",
				),
			]
		: [];
