import { expect } from "vitest";
import { interceptFactor } from "../../../src/dish/intercept.ts";
import { offsetPolarAperture } from "../../../src/dish/offset-polar.ts";
import { perfectDish, perfectOffsetPolar } from "./mirror.ts";
import { tracedIntercept } from "./trace.ts";

const RAYS = 60_000; // standard deviation of the traced share at most 0.002
const SUN_SPREAD = 2.73e-3; // [rad] per axis

const TOLERANCE = 0.01; // the small-angle step and the rays' noise together

/** An intercept factor by formula and by traced rays. */
interface Intercept {
	readonly formula: number;
	readonly traced: number;
}

export const TWO_AXIS = "two-axis: slope $slopeError rad, f/D $ratio, $spreads spreads";
export const OFF_AXIS = "off-axis: %f m² at %f m, slope %f rad, radius %f m";

interface TwoAxisCase {
	readonly slopeError: number;
	readonly ratio: number;
	readonly spreads: number;
}

/** The receiver is neither missed nor flooded by the light, and the formula agrees with the rays. */
export function expectTwoAxisTraced({ slopeError, ratio, spreads }: TwoAxisCase): void {
	const { formula, traced } = twoAxisIntercept(slopeError, ratio, spreads);
	expect(traced).toBeGreaterThan(0.05);
	expect(traced).toBeLessThan(0.999);
	expect(Math.abs(formula - traced)).toBeLessThan(TOLERANCE);
}

export function expectOffAxisTraced(...mirrorAndReceiver: Parameters<typeof offAxisIntercept>): void {
	const { formula, traced } = offAxisIntercept(...mirrorAndReceiver);
	expect(Math.abs(formula - traced)).toBeLessThan(TOLERANCE);
}

/** @param spreads  the receiver's radius over the standard deviation of the image, in the focal plane near the axis */
function twoAxisIntercept(slopeError: number, ratio: number, spreads: number): Intercept {
	const focalLength = 1.8 * ratio;
	const receiverRadius = spreads * Math.hypot(2 * slopeError, SUN_SPREAD, 3e-3) * focalLength;
	const traced = tracedIntercept(
		{
			focalLength,
			patchRadius: 0.9,
			patchOffset: 0,
			receiverNormal: [0, 0, -1],
			receiverRadius,
			slopeError,
			beamSpread: Math.hypot(SUN_SPREAD, 3e-3),
		},
		RAYS,
		20260101,
	);
	const dish = { ...perfectDish, focalLength, slopeError, specularity: 3e-3 };
	return { formula: interceptFactor(dish, receiverRadius), traced };
}

function offAxisIntercept(
	mirrorArea: number,
	focalLength: number,
	slopeError: number,
	receiverRadius: number,
): Intercept {
	const traced = tracedIntercept(
		{
			focalLength: focalLength / 2,
			patchRadius: Math.sqrt(offsetPolarAperture(mirrorArea, 0, 0) / Math.PI),
			patchOffset: focalLength,
			receiverNormal: [0, 1, 0],
			receiverRadius,
			slopeError,
			beamSpread: SUN_SPREAD,
		},
		RAYS,
		7,
	);
	const dish = { ...perfectOffsetPolar, mirrorArea, focalLength, slopeError };
	return { formula: interceptFactor(dish, receiverRadius), traced };
}
