const ESCAPE = 0.8; // [-] ± 0.01, share of the reflected light that leaves the grooves between touching tubes, by ray tracing; 0.83 at a rim angle of 90°

/** Share of a dish's light that a painted wall of touching round tubes absorbs. The absorptance of paint is measured at normal
 *  incidence; light from a dish arrives at up to the rim angle and meets a round tube at every angle. Reflected light falls
 *  partly on the next tube.
 *  x = tan²(ψ/2),  a₁ = (0.978 − 0.055·x − 0.048·x² − 0.050·x⁸)·a,  a_tubes = a₁/[a₁ + (1 − a₁)·0.80]
 *  @param absorptance  a of the paint at normal incidence [-]
 *  @param rimAngle     ψ, half-angle of the cone of light [rad]     @returns a_tubes: 0.9255 for 0.94 at 45°, 0.812 at 90° [-]
 *  Range   a 0.85–0.98, flat black paint; light from beyond 90° does not reach the front; `interceptFactor` counts it as spillage
 *  Error   0.002 up to 75°, 0.004 up to 90°
 *  Source  Duffie & Beckman, Solar Engineering of Thermal Processes, eq. 4.11.1: angular law of flat black paint, averaged
 *          over tubes and cone by ray tracing; the polynomial is a fit
 *  Check   traced rays between tubes   tests/unit/receiver/slanted-light.test.ts */
export function tubesAbsorptance(absorptance: number, rimAngle: number): number {
	const x = coneSpread(rimAngle);
	const x2 = x * x;
	const first = (0.978 - x * (0.055 + 0.048 * x) - 0.05 * x2 * x2 * x2 * x2) * absorptance;
	return first / (first + (1 - first) * ESCAPE);
}

/** Share of a dish's light that a pane transmits, less than at normal incidence.
 *  x = tan²(ψ/2),  τ = τ₀·(1 − 0.0188·x − 0.0372·x² − 0.5075·x³ + 0.2335·x⁴)
 *  @param transmittance  τ₀ at normal incidence [-]     @param rimAngle  ψ, as for `tubesAbsorptance` [rad]
 *  @returns τ: 0.7 % less at 45°, 10 % less at 75°, a third less at 90° [-]
 *  Error   0.0005 of τ₀ against the equations; coated and matt panes transmit oblique light slightly differently
 *  Source  Fresnel's equations for glass, index 1.526, in Duffie & Beckman, Solar Engineering of Thermal Processes, § 5.1, averaged over the
 *          cone; the polynomial is a fit
 *  Check   the equations over the cone   tests/unit/receiver/slanted-light.test.ts */
export function paneTransmittance(transmittance: number, rimAngle: number): number {
	const x = coneSpread(rimAngle);
	return transmittance * (1 - x * (0.0188 + x * (0.0372 + x * (0.5075 - 0.2335 * x))));
}

/** tan²(ψ/2), which is uniformly distributed over a paraboloid's aperture; limited to light that reaches the receiver's face. */
function coneSpread(rimAngle: number): number {
	const tangent = Math.tan(Math.min(rimAngle, Math.PI / 2) / 2);
	return tangent * tangent;
}
