/** An independent ephemeris to hold `sunPosition` against: Meeus, Astronomical Algorithms, 2nd ed. 1998, by other chapters
 *  than the core's package where there are any: longitude of the sun from the Earth's own series (VSOP87 cut to its
 *  largest terms, appendix III), nutation from ch. 22 (four terms), sidereal time ch. 12 in full. Radians throughout. */
export interface IndependentSun {
	readonly altitude: number;
	readonly azimuth: number; // clockwise from north
	readonly declination: number;
	readonly distance: number; // [AU]
}

const rad = Math.PI / 180;
type Term = readonly [amplitude: number, phase: number, rate: number];

// Earth, heliocentric longitude L0 and L1 [1e-8 rad per millennium^n], Meeus appendix III: A cos(B + Cτ)
const L0: readonly Term[] = [
	[175347046, 0, 0],
	[3341656, 4.6692568, 6283.07585],
	[34894, 4.6261, 12566.1517],
	[3497, 2.7441, 5753.3849],
	[3418, 2.8289, 3.5231],
	[3136, 3.6277, 77713.7715],
	[2676, 4.4181, 7860.4194],
	[2343, 6.1352, 3930.2097],
	[1324, 0.7425, 11506.7698],
	[1273, 2.0371, 529.691],
	[1199, 1.1096, 1577.3435],
	[990, 5.233, 5884.927],
	[902, 2.045, 26.298],
	[857, 3.508, 398.149],
	[780, 1.179, 5223.694],
	[753, 2.533, 5507.553],
];
const L1: readonly Term[] = [
	[628331966747, 0, 0],
	[206059, 2.678235, 6283.07585],
	[4303, 2.6351, 12566.1517],
];
// Radius vector R0 and R1 [1e-8 AU]
const R0: readonly Term[] = [
	[100013989, 0, 0],
	[1670700, 3.0984635, 6283.07585],
	[13956, 3.05525, 12566.1517],
	[3084, 5.1985, 77713.7715],
	[1628, 1.1739, 5753.3849],
	[1576, 2.8469, 7860.4194],
];
const R1: readonly Term[] = [[103019, 1.10749, 6283.07585]];

const sum = (terms: readonly Term[], tau: number) =>
	terms.reduce((total, [a, b, c]) => total + a * Math.cos(b + c * tau), 0);

/** TT − UT [s]: the observed values of the Astronomical Almanac at 1990, 2000, 2010, 2020 and a straight guess beyond. */
function deltaT(year: number): number {
	const known = [
		[1990, 56.9],
		[2000, 63.8],
		[2010, 66.1],
		[2020, 69.4],
		[2060, 80],
	] as const;
	const next = Math.max(
		1,
		known.findIndex(([y]) => y >= year),
	);
	const [y0, t0] = known[next - 1]!;
	const [y1, t1] = known[next]!;
	return t0 + ((t1 - t0) * (year - y0)) / (y1 - y0);
}

export function independentSun(time: number, latitude: number, longitude: number): IndependentSun {
	const julian = time / 86_400 + 2_440_587.5;
	const year = 2000 + (julian - 2_451_545) / 365.25;
	const T = (julian + deltaT(year) / 86_400 - 2_451_545) / 36_525;
	const tau = T / 10;
	const distance = (sum(R0, tau) + sum(R1, tau) * tau) / 1e8;
	const geometric = (sum(L0, tau) + sum(L1, tau) * tau + 52_919 * tau * tau) / 1e8 + Math.PI;
	const node = (125.04452 - 1934.136261 * T) * rad;
	const sunMean = (280.4665 + 36_000.7698 * T) * rad;
	const moonMean = (218.3165 + 481_267.8813 * T) * rad;
	const nutation =
		((-17.2 * Math.sin(node) -
			1.32 * Math.sin(2 * sunMean) -
			0.23 * Math.sin(2 * moonMean) +
			0.21 * Math.sin(2 * node)) /
			3600) *
		rad;
	const obliquity =
		(23.4392911 -
			0.0130042 * T +
			(9.2 * Math.cos(node) + 0.57 * Math.cos(2 * sunMean) + 0.1 * Math.cos(2 * moonMean)) / 3600) *
		rad;
	const apparent = geometric + nutation - (20.4898 / 3600 / distance) * rad; // aberration
	const ascension = Math.atan2(Math.cos(obliquity) * Math.sin(apparent), Math.cos(apparent));
	const declination = Math.asin(Math.sin(obliquity) * Math.sin(apparent));
	const days = julian - 2_451_545;
	const sidereal =
		(280.46061837 + 360.98564736629 * days + 0.000387933 * (days / 36_525) ** 2) * rad +
		nutation * Math.cos(obliquity);
	const H = sidereal + longitude - ascension;
	const south =
		Math.cos(H) * Math.cos(declination) * Math.sin(latitude) - Math.sin(declination) * Math.cos(latitude);
	const west = Math.sin(H) * Math.cos(declination);
	const up =
		Math.sin(latitude) * Math.sin(declination) + Math.cos(latitude) * Math.cos(declination) * Math.cos(H);
	return { altitude: Math.asin(up), azimuth: Math.atan2(west, south) + Math.PI, declination, distance };
}
