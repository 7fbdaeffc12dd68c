import {
	flatReceiverConcentration,
	sphericalReceiverConcentration,
	thermodynamicConcentrationLimit,
} from "../../src/dish/concentration-limit.ts";
import type { TwoAxisDish } from "../../src/dish/dish.ts";
import { interceptFactor } from "../../src/dish/intercept.ts";
import { offsetPolarAperture } from "../../src/dish/offset-polar.ts";
import { depth, focalLengthAtRimAngle, mirrorArea, rimAngle } from "../../src/dish/paraboloid.ts";
import type { Kind, ReferenceRow, ReferenceSet, Tolerance } from "./reference.ts";

const DEGREE = Math.PI / 180;
const COOKER_2021 =
	"Journal of Renewable Energy 2021, art. 8944722: parabolic cooker of 1.8 m, built and measured";
const COOKER_2013 = "Ibrahim Ladan Mohammed, Int. J. Eng. Res. Appl. 3(4) (2013) 1179: dish cooker of 1.8 m";
const PARABOLA = "geometry of y = r²/(4f): tan(ψ/2) = D/(4f)";
const SURFACE = "surface of revolution of y = r²/(4f): (8πf²/3)·{[1 + (D/4f)²]^1.5 − 1} over πD²/4";

const digit = (absolute: number, reason = "half of the last digit"): Tolerance => ({
	absolute,
	basis: "digits",
	reason,
});

const built: readonly ReferenceRow[] = [
	{
		name: "rim angle of a 1.8 m cooker, focal length 0.675 m",
		published: 67.38,
		computed: () => rimAngle(1.8, 0.675) / DEGREE,
		tolerance: digit(0.005),
		source: COOKER_2021,
		kind: "print",
	},
	{
		name: "rim angle of f/D 0.60",
		published: 45.24,
		computed: () => rimAngle(1, 0.6) / DEGREE,
		tolerance: digit(0.005),
		source: PARABOLA,
		kind: "formula",
	},
	{
		name: "rim angle of f/D 0.25",
		published: 90,
		computed: () => rimAngle(1, 0.25) / DEGREE,
		tolerance: digit(0.005),
		source: PARABOLA,
		kind: "formula",
	},
];

const lengths: readonly ReferenceRow[] = [
	{
		name: "depth of the 1.8 m cooker, focal length 0.675 m",
		published: 0.3,
		computed: () => depth(1.8, 0.675),
		tolerance: digit(0.005),
		source: COOKER_2021,
		kind: "print",
	},
	{
		name: "focal length of the 1.8 m cooker from its rim angle of 67.38°",
		published: 0.67,
		computed: () => focalLengthAtRimAngle(1.8, 67.38 * DEGREE),
		tolerance: {
			absolute: 0.01,
			basis: "digits",
			reason: "printed 0.67, cut off: depth and rim angle printed beside it give 0.675",
		},
		source: COOKER_2021,
		kind: "print",
	},
	{
		name: "depth of a 1.8 m cooker, focal length 0.698 m",
		published: 0.29,
		computed: () => depth(1.8, 0.698),
		tolerance: digit(0.0005),
		source: COOKER_2013,
		kind: "print",
	},
	...[
		[30, 0.933],
		[45, 0.6036],
		[60, 0.433],
		[75, 0.3258],
	].map(
		([rim, ratio]): ReferenceRow => ({
			name: `focal length of a 1 m dish with a rim angle of ${rim}°`,
			published: ratio!,
			computed: () => focalLengthAtRimAngle(1, rim! * DEGREE),
			tolerance: digit(0.00006),
			source: PARABOLA,
			kind: "formula",
		}),
	),
];

const areas: readonly ReferenceRow[] = [
	{
		name: "mirror of the 1.8 m cooker",
		published: 2.81,
		computed: () => mirrorArea(1.8, 0.675),
		tolerance: digit(0.005),
		source: COOKER_2021,
		kind: "print",
	},
	...[
		[0.25, 1.219],
		[0.3, 1.1574],
		[0.4, 1.0921],
		[0.6, 1.0422],
		[1.0, 1.0155],
	].map(
		([ratio, area]): ReferenceRow => ({
			name: `mirror over aperture at f/D ${ratio}`,
			published: area!,
			computed: () => mirrorArea(1, ratio!) / (Math.PI / 4),
			tolerance: digit(0.00005),
			source: SURFACE,
			kind: "formula",
		}),
	),
];

const SUN = 4.65e-3;
const DUFFIE = "Duffie & Beckman, Solar Engineering of Thermal Processes, eq. 7.10–7.13, at 4.65 mrad";
const limit = (
	name: string,
	published: number,
	computed: () => number,
	absolute: number,
	source: string,
	kind: Kind,
): ReferenceRow => ({ name, published, computed, tolerance: digit(absolute), source, kind });

const limits: readonly ReferenceRow[] = [
	limit(
		"thermodynamic limit",
		46_248,
		() => thermodynamicConcentrationLimit(SUN),
		0.5,
		"second law: 1/sin²θ, at 4.65 mrad",
		"formula",
	),
	...[
		[30, 8625],
		[45, 11_455],
		[60, 8532],
		[75, 2791],
	].map(([rim, value]) =>
		limit(
			`flat receiver, rim ${rim}°`,
			value!,
			() => flatReceiverConcentration(rim! * DEGREE, SUN),
			1,
			DUFFIE,
			"memory",
		),
	),
	...[
		[30, 2891],
		[45, 5781],
		[60, 8672],
		[90, 11_562],
	].map(([rim, value]) =>
		limit(
			`ball, rim ${rim}°`,
			value!,
			() => sphericalReceiverConcentration(rim! * DEGREE, SUN),
			1,
			"Rabl, Solar Energy 18 (1976) 93–111, at 4.65 mrad",
			"memory",
		),
	),
];

const SUN_SPREAD = 2.73e-3;
/** A dish whose rays stray by one isotropic Gaussian in all: no slope error, all in the specularity. */
const isotropic = (diameter: number, focalLength: number, spread: number): TwoAxisDish => ({
	kind: "twoAxis",
	diameter,
	focalLength,
	reflectance: 1,
	cleanliness: 1,
	blockedFraction: 0,
	slopeError: 0,
	specularity: Math.sqrt(spread * spread - SUN_SPREAD * SUN_SPREAD),
	trackingError: 0,
	lowestAltitude: 0,
});

const intercepts: readonly ReferenceRow[] = (
	[
		[1.4, 0.5, 10, [0.9675, 0.998, 1, 1]],
		[1.4, 0.5, 20, [0.7669, 0.9379, 0.9915, 0.998]],
		[1.8, 0.675, 10, [0.9332, 0.9935, 0.9999, 1]],
		[1.8, 0.675, 20, [0.6311, 0.8826, 0.9785, 0.9935]],
	] as const
).flatMap(([diameter, focalLength, spread, values]) =>
	values.map((published, i): ReferenceRow => {
		const radius = [0.03, 0.05, 0.08, 0.1][i]!;
		return {
			name: `${diameter} m dish, f ${focalLength} m, ${spread} mrad, receiver radius ${radius} m`,
			published,
			computed: () => interceptFactor(isotropic(diameter, focalLength, spread * 1e-3), radius),
			tolerance: {
				absolute: 5e-4,
				basis: "numerics",
				reason: "four digits, and two quadratures of the same rings; the small-angle step is in both",
			},
			source: "Gaussian cone of rays over rings of the mirror, as Stine & Geyer, Power from the Sun, ch. 8",
			kind: "formula",
		};
	}),
);

const apertures: readonly ReferenceRow[] = [
	["equinox", 0, 5.83],
	["summer solstice", 23.45, 4.59],
	["winter solstice", -23.45, 6.82],
].map(
	([season, declination, area]): ReferenceRow => ({
		name: `8 m² mirror, northern ${season}`,
		published: area as number,
		computed: () => offsetPolarAperture(8, 20 * DEGREE, (declination as number) * DEGREE),
		tolerance: { absolute: 0.005, basis: "digits", reason: "three digits" },
		source: "Munir, Hensel & Scheffler, Solar Energy 84 (2010) 1490–1502: seasonal aperture of the 8 m² dish",
		kind: "memory",
	}),
);

export const sets: readonly ReferenceSet[] = [
	{ quantity: "Dish: rim angle", unit: "°", role: "check", rows: built },
	{ quantity: "Dish: depth and focal length", unit: "m", role: "check", rows: lengths },
	{ quantity: "Dish: mirror area", unit: "m²", role: "check", rows: areas },
	{ quantity: "Dish: concentration limit", unit: "-", role: "check", rows: limits },
	{ quantity: "Dish: intercept factor", unit: "-", role: "check", rows: intercepts },
	{
		quantity: "Dish: aperture of an off-axis mirror on a polar axis",
		unit: "m²",
		role: "check",
		rows: apertures,
	},
];
