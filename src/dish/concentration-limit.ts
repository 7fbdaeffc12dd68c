/** Greatest concentration that the second law allows in air, for a given half angle of the sun.
 *  C = 1/sin²θ
 *  @param halfAngle  of the sun's disc, or of its cone widened by the optical errors [rad]
 *  @returns          aperture over receiver area [-]
 *  Error   none: a consequence of the second law
 *  Source  Rabl, Solar Energy 18 (1976) 93–111
 *  Check   4.65 mrad → 46 250   tests/reference/dish.reference.ts */
export function thermodynamicConcentrationLimit(halfAngle: number): number {
	return 1 / Math.sin(halfAngle) ** 2;
}

/** Concentration of a perfect paraboloid on the smallest flat receiver that receives the complete image of the sun.
 *  C = [sin ψ·cos(ψ + θ)/sin θ]²; a receiver that shades its dish reduces it by 1
 *  @param rimAngle   ψ [rad], 0 to π/2 − θ
 *  @param halfAngle  θ of the sun's disc [rad]     @returns aperture over receiver area [-]
 *  Error   none: exact for the ray from the rim, whose image is the widest
 *  Source  Duffie & Beckman, Solar Engineering of Thermal Processes, eq. 7.10–7.13 (from memory)
 *  Check   ψ 45°, 4.65 mrad → 11 455   tests/reference/dish.reference.ts */
export function flatReceiverConcentration(rimAngle: number, halfAngle: number): number {
	return ((Math.sin(rimAngle) * Math.cos(rimAngle + halfAngle)) / Math.sin(halfAngle)) ** 2;
}

/** Concentration of a perfect paraboloid on the smallest sphere that receives the complete image of the sun.
 *  C = (sin ψ/sin θ)²/4
 *  @param rimAngle   ψ [rad], 0 to π/2
 *  @param halfAngle  θ of the sun's disc [rad]     @returns aperture over the surface of the sphere [-]
 *  Error   none: exact for the ray from the rim, whose image is the widest
 *  Source  Rabl, Solar Energy 18 (1976) 93–111
 *  Check   ψ 60°, 4.65 mrad → 8672   tests/reference/dish.reference.ts */
export function sphericalReceiverConcentration(rimAngle: number, halfAngle: number): number {
	return (Math.sin(rimAngle) / Math.sin(halfAngle)) ** 2 / 4;
}
