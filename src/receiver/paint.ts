const LAW = [1, -1.5879e-3, 2.7314e-4, -2.3026e-5, 9.0244e-7, -1.8e-8, 1.7734e-10, -6.9937e-13]; // coefficients in degrees, lowest power first; Duffie & Beckman eq. 4.11.1, as in two public copies
const LAST = 80; // [°] upper end of the fit
const DEGREE = Math.PI / 180;

/** Absorptance of flat black paint for oblique light, relative to that at normal incidence.
 *  a(θ)/a(0) = 1 − 1.5879e-3·θ + 2.7314e-4·θ² − 2.3026e-5·θ³ + 9.0244e-7·θ⁴ − 1.8e-8·θ⁵ + 1.7734e-10·θ⁶ − 6.9937e-13·θ⁷, θ in degrees
 *  @param angle  θ, to the normal [rad], 0 to π/2     @returns 1 at 0, 0.974 at 45°, 0 at 90° [-]
 *  Range   the fit ends at 80°; above it a straight line to zero at 90°
 *  Source  Duffie & Beckman, Solar Engineering of Thermal Processes, eq. 4.11.1, as printed in two public copies
 *  Check   its hemispherical mean and its decrease   tests/unit/receiver/cavity-light.test.ts */
export function paintAtAngle(angle: number): number {
	const degrees = angle / DEGREE;
	return degrees <= LAST ? law(degrees) : (law(LAST) * (90 - degrees)) / (90 - LAST);
}

function law(degrees: number): number {
	let sum = 0;
	for (let i = LAW.length - 1; i >= 0; i--) sum = sum * degrees + LAW[i]!;
	return sum;
}

/** The same for diffuse light [-]: the hemispherical mean of the law. */
export const PAINT_IN_DIFFUSE_LIGHT = 0.9307;
