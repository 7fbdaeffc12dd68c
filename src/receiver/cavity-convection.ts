import { power } from "../numeric/power.ts";

/** Nusselt number of free convection out of a cavity receiver, on its average inner dimension (Stine & McDonald).
 *  Nu = 0.088 Gr^⅓ (Tw/Ta)^0.18 (cos θ)^2.47 (d/L)^s,  s = 1.12 − 0.982 d/L
 *  @param Gr                Grashof number on L; β at ambient, other properties at the mean of wall and air [-]
 *  @param temperatureRatio  Tw/Ta, absolute [-]
 *  @param tilt              θ, 0 where the aperture faces sideways, π/2 where it faces down: the altitude of the sun [rad]
 *  @param openness          d/L, aperture over average inner dimension [-]
 *  @returns  Nu; the coefficient Nu·k/L refers to the complete inner wall
 *  Range   measured on cylindrical cavities, d/L up to 1, walls of 400–700 °C; no loss when it faces straight down
 *  Error   none given; measured small cavities at 50–300 °C scatter by 15–30 % about such formulas (from memory)
 *  Source  Stine & McDonald, ISES Solar World Congress, Kobe 1989 (formula from memory, consistent with later reviews)
 *  Check   L 0.2 m, d 0.15 m, 200 °C against 25 °C, five tilts   tests/reference/receiver.reference.ts */
export function nusseltStineMcDonald(
	Gr: number,
	temperatureRatio: number,
	tilt: number,
	openness: number,
): number {
	const exponent = 1.12 - 0.982 * openness;
	return (
		0.088 *
		Math.cbrt(Gr) *
		power(temperatureRatio, 0.18) *
		power(Math.cos(tilt), 2.47) *
		power(openness, exponent)
	);
}

/** The same by a second model, as a measure of the difference between models (Koenig & Marvin); simulations use Stine & McDonald.
 *  Nu = 0.52 P(θ) (d/D)^1.75 (Gr Pr)^¼,  P = cos^3.2 θ to 45°, 0.707 cos^2.2 θ beyond
 *  @param Ra        Gr·Pr on √2 times the cavity's radius; properties at 11/16·Tw + 3/16·Ta as in the source [-]
 *  @param tilt      θ, as above [rad], 0 to π/2
 *  @param openness  d/D, diameter of the aperture over that of the cavity [-]
 *  @returns  Nu on √2 times the cavity's radius
 *  Range   not published in the copies seen; walls of 550–900 °C (from memory)
 *  Error   none given
 *  Source  Koenig & Marvin, Convection heat loss sensitivity in open cavity solar receivers, DOE/EG77-C-04-3985, 1981
 *          (formula from memory, not confirmed)
 *  Check   the cavity above at three tilts   tests/reference/receiver.reference.ts */
export function nusseltKoenigMarvin(Ra: number, tilt: number, openness: number): number {
	const cosine = Math.cos(tilt);
	const turned = tilt <= Math.PI / 4 ? power(cosine, 3.2) : Math.SQRT1_2 * power(cosine, 2.2);
	return 0.52 * turned * power(openness, 1.75) * Math.sqrt(Math.sqrt(Ra));
}

/** Increase of the convection coefficient of a cavity in a side wind (Ma).
 *  h = 0.1967 v^1.849, at any tilt
 *  @param wind  v [m/s], 0 or more     @returns h on the complete inner wall [W/m²K]
 *  Range   measured to 9 m/s on one cavity of 0.66 m with an aperture of 0.46 m; head-on wind removes less heat at small tilts
 *  Error   none given. Neglected: thinner air at high elevation, which removes about a quarter less heat at 3000 m (common practice, no source)
 *  Source  Ma, Wind effects on convective heat loss from a cavity receiver for a parabolic concentrating solar
 *          collector, SAND92-7293, 1993 (value from memory)
 *  Check   grows with wind   tests/unit/receiver/cavity.test.ts */
export function windCoefficientMa(wind: number): number {
	return 0.1967 * power(wind, 1.849);
}
