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
		ratio("Solar-weighted reflectance of the clean mirror.", 0.05, 1),
		0.85,
		unconfirmed(
			measured("coated mirror aluminium; thin silvered glass reaches 0.94", "NREL/TP-255-2091 (1983)"),
		),
	),
	cleanliness: assume(
		ratio("Share of the clean mirror's reflectance that remains under dust.", 0.05, 1),
		0.92,
		unconfirmed(practice("washed every few weeks; 0.90–0.97 is usual")),
	),
	slopeErrorMrad: assume(
		milliradians("Slope error of the mirror: rms deviation of its surface normal, per axis.", 0, 50),
		5,
		practice("petals pressed or bent over ribs with care"),
	),
	specularityMrad: assume(
		milliradians("Specularity error of the mirror: rms angular spread of a reflected ray, per axis.", 0, 50),
		3,
		measured("coated aluminium; silvered film aims at 2", "NREL/TP-255-2670 (1985)"),
	),
	trackingErrorMrad: assume(
		milliradians("Tracking error of the dish: rms pointing error, per axis.", 0, 50),
		5,
		practice("a little over a quarter of a degree, for an actuator that moves in steps"),
	),
	blockedFraction: assume(
		ratio("Share of the dish's aperture shaded by receiver, arms and ribs.", 0, 0.9),
		0.06,
		practice("an insulated receiver a fifth as wide as the dish, on three arms"),
	),
	lowestSunAltitudeDeg: assume(
		degrees("Lowest altitude of the sun, above a level horizon, at which the dish can face it.", 0, 60),
		5,
		practice("the end stop of a usual mount, and a low horizon"),
	),
};

/** Not a component of its own: an object whose `kind` may be omitted cannot have a discriminator. */
const TwoAxisDish = z.strictObject({
	kind: assume(
		z.literal("twoAxis").meta({ description: "A paraboloid that tracks the sun on two axes." }),
		"twoAxis",
		practice("the usual tracking dish"),
	),
	diameterM: metres("Diameter of the dish's aperture. Send either this or `apertureM2`.", 0.2, 20).optional(),
	apertureM2: squareMetres(
		"Area of the dish's aperture. Send either this or `diameterM`.",
		0.03,
		315,
	).optional(),
	focalLengthM: metres(
		"Focal length of the dish, from the vertex to the focus. If omitted, it follows from the rim angle.",
		0.05,
		40,
	).optional(),
	rimAngleDeg: degrees(
		"Angle between the dish's axis and rim, seen from the focus; an alternative to `focalLengthM`. If both are omitted: 45°.",
		10,
		120,
	).optional(),
	...mirror,
});

const OffsetPolarDish = z
	.strictObject({
		kind: z.literal("offsetPolar").meta({
			description:
				"An off-axis paraboloid that turns on one polar axis about a fixed focus. Its shape is adjusted through the year.",
		}),
		mirrorAreaM2: squareMetres(
			"Area of the mirror. Send exactly one of this, `apertureM2` and `diameterM`.",
			0.05,
			500,
		).optional(),
		apertureM2: squareMetres("Area of the aperture facing the sun at the equinox.", 0.03, 315).optional(),
		diameterM: metres("Diameter of a disc with the area of the aperture at the equinox.", 0.2, 20).optional(),
		focalLengthM: metres(
			"Distance from the middle of the mirror to the focus, at the equinox. If omitted: 0.98 times the square root of the mirror's area.",
			0.05,
			40,
		).optional(),
		...mirror,
	})
	.openapi("OffsetPolarDish");

export const Dish = z.discriminatedUnion("kind", [TwoAxisDish, OffsetPolarDish]).openapi("Dish", {
	description: "The mirror and its mount. If `kind` is omitted, a two-axis dish.",
	example: { kind: "twoAxis", diameterM: 1.8, reflectance: 0.9, cleanliness: 0.95 },
});

export type Dish = z.output<typeof Dish>;

/** The dish for the core, with omitted values left to the design. */
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

/** The complete dish; undefined if a request sends no size of it, or several. */
export function dishOf(dish: Dish): CoreDish | undefined {
	return sizesSent(dish).length === 1 ? designDish(sparseDish(dish)).design : undefined;
}

/** The dish designed from a request. */
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
	if (sent.length === 0) return [contradictory("/dish", `dish has no size; send ${choice}`)];
	if (sent.length === 1) return [];
	return sent.map((name) =>
		contradictory(`/dish/${name}`, `dish has ${sent.length} sizes; send only one of ${choice}`),
	);
};

/** Focal length and rim angle are alternatives. */
export const dishFocus: Rule<{ readonly dish: Dish }> = ({ dish }) =>
	dish.kind === "twoAxis" && dish.focalLengthM !== undefined && dish.rimAngleDeg !== undefined
		? ["focalLengthM", "rimAngleDeg"].map((name) =>
				contradictory(
					`/dish/${name}`,
					"focalLengthM and rimAngleDeg both set the focus of the dish; send only one",
				),
			)
		: [];

const WIDEST_OFFSET = 0.9; // [-] radius over focal length up to which the model of the off-axis spot holds

/** An off-axis mirror stays clear of its focus. */
export const dishOffset: Rule<{ readonly dish?: Dish | undefined }, WithDish> = (request, { dish }) => {
	if (dish?.kind !== "offsetPolar" || request.dish?.focalLengthM === undefined) return [];
	const { mirrorArea, focalLength } = dish;
	const least = (0.483 * Math.sqrt(mirrorArea)) / WIDEST_OFFSET;
	return focalLength < least
		? [
				outOfRange(
					"/dish/focalLengthM",
					`must be at least ${fourDigits(least)} m for a mirror of ${fourDigits(mirrorArea)} m²; ${fourDigits(focalLength)} m is not`,
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
					"latitude is missing: the aperture of an off-axis dish on a polar axis depends on the season of its hemisphere; send the latitude",
				),
			]
		: [];
