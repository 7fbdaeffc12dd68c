const ESCAPE = 0.8; // [-] ± 0.01, share of the light thrown back that leaves the grooves between touching tubes, by traced rays; at a rim angle of 90° 0.83

/** Share of a dish's light that a painted wall of touching round tubes takes up. A paint's absorptance is measured square to
 *  it; a dish throws its light on at up to the rim angle, and a round tube is met at every angle. What is thrown back falls in
 *  part on the next tube.
 *  x = tan²(ψ/2),  a₁ = (0.978 − 0.055·x − 0.048·x² − 0.050·x⁸)·a,  a_tubes = a₁/[a₁ + (1 − a₁)·0.80]
 *  @param absorptance  a of the paint at square incidence [-]
 *  @param rimAngle     ψ, half-angle of the cone of light [rad]     @returns a_tubes: 0.9255 for 0.94 at 45°, 0.812 at 90° [-]
 *  Range   a 0.85–0.98, flat black paint; light from beyond 90° does not reach the front and counts as spilled by `interceptFactor`
 *  Error   0.002 up to 75°, 0.004 up to 90°
 *  Source  Duffie & Beckman, Solar Engineering of Thermal Processes, eq. 4.11.1: law of angle of flat black paint, meaned
 *          over tubes and cone by traced rays, of which the polynomial is a fit
 *  Check   rays traced between tubes   tests/unit/receiver/slanted-light.test.ts */
export function tubesAbsorptance(absorptance: number, rimAngle: number): number {
	const x = coneSpread(rimAngle);
	const x2 = x * x;
	const first = (0.978 - x * (0.055 + 0.048 * x) - 0.05 * x2 * x2 * x2 * x2) * absorptance;
	return first / (first + (1 - first) * ESCAPE);
}

/** Share of a dish's light that passes a pane before its coil: less than at square incidence, for the slant.
 *  x = tan²(ψ/2),  τ = τ₀·(1 − 0.0188·x − 0.0372·x² − 0.5075·x³ + 0.2335·x⁴)
 *  @param transmittance  τ₀ at square incidence [-]     @param rimAngle  ψ, as for `tubesAbsorptance` [rad]
 *  @returns τ: 0.7 % less at 45°, 10 % less at 75°, a third less at 90° [-]
 *  Error   0.0005 of τ₀ against the equations; coated and matt panes pass slanted light a little otherwise
 *  Source  Fresnel's equations for glass, index 1.526, in Duffie & Beckman, Solar Engineering of Thermal Processes, § 5.1, meaned over the
 *          cone; the polynomial is a fit
 *  Check   the equations over the cone   tests/unit/receiver/slanted-light.test.ts */
export function paneTransmittance(transmittance: number, rimAngle: number): number {
	const x = coneSpread(rimAngle);
	return transmittance * (1 - x * (0.0188 + x * (0.0372 + x * (0.5075 - 0.2335 * x))));
}

/** tan²(ψ/2), in which a paraboloid's aperture is spread evenly; of the part before the receiver's face. */
function coneSpread(rimAngle: number): number {
	const tangent = Math.tan(Math.min(rimAngle, Math.PI / 2) / 2);
	return tangent * tangent;
}
