/** Rim angle of a paraboloid, seen from its focus between its axis and its rim.
 *  tan(ψ/2) = D/(4f)
 *  @param diameter     of the aperture [m]
 *  @param focalLength  [m]                       @returns ψ [rad], 0 to π
 *  Error   none: exact geometry
 *  Source  Rabl, Active Solar Collectors and Their Applications, Oxford 1985, ch. 7
 *  Check   a built cooker of 1.8 m, focal length 0.675 m → 67.38°   tests/reference/dish.reference.ts */
export function rimAngle(diameter: number, focalLength: number): number {
	return 2 * Math.atan(diameter / (4 * focalLength));
}

/** Focal length of a paraboloid with a given rim angle: inverse of `rimAngle`.
 *  f = D/(4·tan(ψ/2))
 *  @param diameter  of the aperture [m]
 *  @param rimAngle  [rad], above 0 and below π        @returns f [m]
 *  Error   none: exact geometry
 *  Source  as `rimAngle` */
export function focalLengthAtRimAngle(diameter: number, rimAngle: number): number {
	return diameter / (4 * Math.tan(rimAngle / 2));
}

/** Depth of a paraboloid from the plane of its rim to its vertex.
 *  h = D²/(16f)
 *  @param diameter     of the aperture [m]
 *  @param focalLength  [m]                       @returns h [m]
 *  Error   none: exact geometry
 *  Source  as `rimAngle`
 *  Check   two built cookers of 1.8 m → 0.300 and 0.290 m   tests/reference/dish.reference.ts */
export function depth(diameter: number, focalLength: number): number {
	return (diameter * diameter) / (16 * focalLength);
}

/** Area of the reflecting surface of a paraboloid, which is larger than its aperture.
 *  S = (8π f²/3)·{[1 + (D/4f)²]^(3/2) − 1}
 *  written as (8π f²/3)·expm1(3/2·log1p((D/4f)²)), to keep precision for a nearly flat mirror
 *  @param diameter     of the aperture [m]
 *  @param focalLength  [m]                       @returns S [m²]
 *  Error   none: exact geometry
 *  Source  as `rimAngle`
 *  Check   a built cooker of 1.8 m, focal length 0.675 m → 2.81 m²   tests/reference/dish.reference.ts */
export function mirrorArea(diameter: number, focalLength: number): number {
	const slope = diameter / (4 * focalLength);
	return ((8 * Math.PI * focalLength * focalLength) / 3) * Math.expm1(1.5 * Math.log1p(slope * slope));
}
