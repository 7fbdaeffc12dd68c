import { requireWithin } from "../errors.ts";
import { gaussLegendre } from "../numeric/gauss-legendre.ts";
import type { Dish, OffsetPolarDish, TwoAxisDish } from "./dish.ts";
import { spotShareWithin } from "./gaussian-spot.ts";
import { offsetPolarAperture } from "./offset-polar.ts";

const SUN_SPREAD = 2.73e-3; // [rad] ± 0.1e-3, rms of a clear sky's sun per axis, Bendt & Rabl, Solar Energy 27 (1981) (value from memory)
const RINGS = gaussLegendre(12);
const BEARINGS = 8; // around half of the off-axis mirror, which is symmetric
const OFF_AXIS_RINGS = gaussLegendre(3);

/** Share of the light from the mirror that enters a round aperture at the focus, facing the mirror.
 *  An error of the slope turns a ray by 2σ in the plane of incidence, but only by 2σ·cos(φ/2) across it:
 *  σ_r² = (2σ_slope)² + rest,  σ_t² = (2σ_slope·cos(φ/2))² + rest,  rest = σ_specular² + σ_track² + σ_sun²,
 *  projected over the distance ρ = 2f/(1 + cos φ) on a plane that the ray meets at an angle.
 *  @param dish            either kind
 *  @param apertureRadius  of the receiver [m], may be infinite     @returns γ, 0 to 1 [-]
 *  Range   errors of tens of milliradians, which are small angles; rim angle to 90°: light from farther out meets the back of the aperture and counts as spilled
 *  Error   against traced rays 0.003 for slope errors of 2–20 mrad, f/D 0.3–1.0; of the quadrature 1e-4 from f/D 0.26
 *  Source  Stine & Geyer, Power from the Sun, ch. 8, and Rabl, Active Solar Collectors, 1985 (spreads added in quadrature); the split by direction is geometry
 *  Check   tests/reference/dish.reference.ts (no slope error); traced rays in tests/unit/dish/ray-trace.test.ts */
export function interceptFactor(dish: Dish, apertureRadius: number): number {
	return shareWithin(dishSpots(dish), apertureRadius);
}

/** Spots of the parts of a mirror: one Gaussian each, with two variances along its axes. They do not depend on the aperture,
 *  so that many apertures can be evaluated at low cost. */
export interface DishSpots {
	readonly weights: Float64Array; // share of each part in the reflected light [-]; their sum is less than 1 beyond a rim angle of 90°
	readonly varianceA: Float64Array; // [m²]
	readonly varianceB: Float64Array; // [m²]
}

export function dishSpots(dish: Dish): DishSpots {
	switch (dish.kind) {
		case "twoAxis":
			return paraboloidSpots(dish);
		case "offsetPolar":
			return offAxisSpots(dish);
		default:
			return dish satisfies never;
	}
}

/** Share of the light within a circle about the focus [-]: `interceptFactor` for given spots. */
export function shareWithin(spots: DishSpots, radius: number): number {
	const { weights, varianceA, varianceB } = spots;
	let share = 0;
	for (let i = 0; i < weights.length; i++)
		share += weights[i]! * spotShareWithin(varianceA[i]!, varianceB[i]!, radius);
	return share;
}

function emptySpots(count: number): DishSpots {
	return {
		weights: new Float64Array(count),
		varianceA: new Float64Array(count),
		varianceB: new Float64Array(count),
	};
}

function paraboloidSpots(dish: TwoAxisDish): DishSpots {
	const others = remainingVariance(dish);
	const slope = 4 * dish.slopeError * dish.slopeError;
	const rim = dish.diameter / (4 * dish.focalLength); // tan(ψ/2)
	const facing = Math.min(1, 1 / (rim * rim)); // share of the aperture within a rim angle of 90°
	const spots = emptySpots(RINGS.points.length);
	for (let i = 0; i < RINGS.points.length; i++) {
		const tangent2 = RINGS.points[i]! * facing * rim * rim; // tan²(φ/2)
		const halfCosine2 = 1 / (1 + tangent2); // cos²(φ/2)
		const cosine = 2 * halfCosine2 - 1;
		const distance = dish.focalLength / halfCosine2;
		const radial = distance / cosine;
		spots.weights[i] = facing * RINGS.weights[i]!;
		spots.varianceA[i] = (slope + others) * radial * radial;
		spots.varianceB[i] = (slope * halfCosine2 + others) * distance * distance;
	}
	return spots;
}

/** The off-axis mirror in its equinox position, all year: a circle as seen along its parent's axis, its centre two parent
 *  focal lengths off that axis, so that light from there turns by 90° into the polar axis, which the receiver faces.
 *  Seasonal reshaping, which changes the angle at the centre by ±12° and keeps the distance, is neglected. */
function offAxisSpots(dish: OffsetPolarDish): DishSpots {
	const radius = Math.sqrt(offsetPolarAperture(dish.mirrorArea, 0, 0) / Math.PI);
	requireWithin("dish.focalLength", radius / dish.focalLength, 0, 0.9);
	const spots = emptySpots(OFF_AXIS_RINGS.points.length * BEARINGS);
	for (let i = 0; i < OFF_AXIS_RINGS.points.length; i++) {
		const ring = radius * Math.sqrt(OFF_AXIS_RINGS.points[i]!);
		for (let j = 0; j < BEARINGS; j++) {
			const bearing = ((j + 0.5) * Math.PI) / BEARINGS;
			const at = i * BEARINGS + j;
			spots.weights[at] = OFF_AXIS_RINGS.weights[i]! / BEARINGS;
			putOffAxisSpot(spots, at, dish, ring * Math.sin(bearing), dish.focalLength + ring * Math.cos(bearing));
		}
	}
	return spots;
}

/** Writes the spot of the mirror's point (x, y), as seen along the parent's axis, on the plane y = 0. */
function putOffAxisSpot(spots: DishSpots, at: number, dish: OffsetPolarDish, x: number, y: number): void {
	const parentFocus = dish.focalLength / 2;
	const r2 = x * x + y * y;
	const r = Math.sqrt(r2);
	const distance = parentFocus + r2 / (4 * parentFocus); // ρ = f·(1 + tan²(φ/2))
	const halfCosine2 = parentFocus / distance;
	const cosine = 2 * halfCosine2 - 1;
	const alongY = -y / distance; // of the ray's direction; along x and z likewise
	const alongX = -x / distance;
	const alongZ = cosine;
	const others = remainingVariance(dish);
	const slope = 4 * dish.slopeError * dish.slopeError;
	const inPlane = distance * Math.sqrt(slope + others);
	const across = distance * Math.sqrt(slope * halfCosine2 + others);
	const inY = (cosine * y) / r; // unit vector in the plane of incidence, square to the ray
	const ux = inPlane * ((cosine * x) / r - (alongX * inY) / alongY);
	const uz = inPlane * (r / distance - (alongZ * inY) / alongY);
	const acrossY = x / r; // unit vector square to that plane: (−y, x, 0)/r
	const vx = across * (-y / r - (alongX * acrossY) / alongY);
	const vz = across * (-(alongZ * acrossY) / alongY);
	const mean = (ux * ux + vx * vx + uz * uz + vz * vz) / 2;
	const turn = ux * uz + vx * vz;
	const stretch = Math.hypot((ux * ux + vx * vx - uz * uz - vz * vz) / 2, turn);
	spots.varianceA[at] = mean + stretch;
	spots.varianceB[at] = mean - stretch;
}

function remainingVariance(dish: Dish): number {
	return (
		dish.specularity * dish.specularity + dish.trackingError * dish.trackingError + SUN_SPREAD * SUN_SPREAD
	);
}
