import { sunDay } from "../../src/sun/day.ts";
import { distanceFactor } from "../../src/sun/orbit.ts";
import { cosIncidence } from "../../src/sun/plane.ts";
import { apparentAltitudeAt, declination, equationOfTime, sunPosition } from "../../src/sun/position.ts";
import type { ReferenceRow, ReferenceSet, Tolerance } from "./reference.ts";

const rad = (degrees: number) => (degrees * Math.PI) / 180;
const deg = (radians: number) => (radians * 180) / Math.PI;
const utc = (iso: string) => Date.parse(iso) / 1000;

// NREL's worked example: Golden, Colorado, 2003-10-17 12:30:30 at UTC−7, 820 hPa, 11 °C
const SPA = "Reda & Andreas, Solar Position Algorithm, NREL/TP-560-34302, rev. 2008, worked example";
const golden = { time: utc("2003-10-17T19:30:30Z"), latitude: rad(39.742476), longitude: rad(-105.1786) };
const goldenSun = () => sunPosition(golden.time, golden.latitude, golden.longitude);
const goldenSeen = () => apparentAltitudeAt(goldenSun().trueAltitude, 82_000);

const ephemeris: Tolerance = {
	absolute: 0.02,
	basis: "source",
	reason: "0.01° of right ascension and of declination: stated error of the low-precision series",
};
const seconds: Tolerance = {
	absolute: 5,
	basis: "source",
	reason: "0.02° of hour angle, twice the stated error of the low-precision series",
};
const rightAscension: Tolerance = {
	absolute: 0.05,
	basis: "source",
	reason: "0.01° of right ascension is 2.4 s, the stated error of the low-precision series",
};

const spa = (
	name: string,
	published: number,
	computed: () => number,
	tolerance: Tolerance,
): ReferenceRow => ({ name, published, computed, tolerance, source: SPA, kind: "print" });

// Points of the same algorithm, evaluated apart from this project
const SPA_POINT = "Reda & Andreas, NREL/TP-560-34302 (2008), the algorithm";
const equinox = () => sunPosition(utc("2024-03-20T12:00:00Z"), 0, 0);
const delhi = () => sunPosition(utc("2025-01-15T08:30:00Z"), rad(28.6), rad(77.2));
const point = (
	name: string,
	published: number,
	computed: () => number,
	tolerance: Tolerance,
): ReferenceRow => ({ name, published, computed, tolerance, source: SPA_POINT, kind: "formula" });

const MEEUS =
	"Meeus, Astronomical Algorithms, 2nd ed. 1998, ex. 28.a (1992-10-13 0h TD), in two public copies";
const meeusTime = utc("1992-10-13T00:00:00Z") - 59; // TD runs 59 s ahead of UT in 1992

// Duffie & Beckman's examples by solar time on the Greenwich meridian, so that solar time is hours from noon
const DUFFIE = "Duffie & Beckman, Solar Engineering of Thermal Processes, ex.";
const atSolarTime = (date: string, hour: number) => {
	const { noon } = sunDay(utc(`${date}T12:00:00Z`), rad(43), 0);
	return sunPosition(noon + (hour - 12) * 3600, rad(43), 0);
};
const zenith = (date: string, hour: number) => 90 - deg(atSolarTime(date, hour).trueAltitude);
const azimuth = (date: string, hour: number) => deg(atSolarTime(date, hour).azimuth) - 180;
const cooper: Tolerance = {
	absolute: 1.2,
	basis: "source",
	reason: "Cooper's declination, which the book takes, is up to 0.9° off near an equinox, and one decimal",
};
const duffie = (
	example: string,
	name: string,
	published: number,
	computed: () => number,
	tolerance: Tolerance,
): ReferenceRow => ({
	name,
	published,
	computed,
	tolerance,
	source: `${DUFFIE} ${example}`,
	kind: "print",
});

/** Hour of the UT day [h] of a rise or set at longitude 0. */
const riseOrSet = (date: string, latitude: number, which: "sunrise" | "sunset") => {
	const day = sunDay(utc(`${date}T12:00:00Z`), rad(latitude), 0);
	return day.kind === "riseAndSet" ? day[which] - utc(`${date}T00:00:00Z`) : Number.NaN;
};
const clock = (h: number, m: number, s: number) => h * 3600 + m * 60 + s;
const A21 = "Reda & Andreas, NREL/TP-560-34302 (2008), table A2.1";
const a21 = (
	date: string,
	latitude: number,
	which: "sunrise" | "sunset",
	published: number,
): ReferenceRow => ({
	name: `${which} ${date}, latitude ${latitude}°`,
	published,
	computed: () => riseOrSet(date, latitude, which),
	tolerance: seconds,
	source: A21,
	kind: "print",
});
const goldenDay = (noonish: string) => {
	const day = sunDay(utc(noonish), golden.latitude, golden.longitude);
	if (day.kind !== "riseAndSet") throw new Error("the sun rises in Golden");
	return day;
};

export const sets: readonly ReferenceSet[] = [
	{
		quantity: "Sun position",
		unit: "°",
		role: "check",
		rows: [
			spa("zenith, true, Golden", 50.127954, () => 90 - deg(goldenSun().trueAltitude), ephemeris),
			spa("zenith, seen through 820 hPa, Golden", 50.111622, () => 90 - deg(goldenSeen()), ephemeris),
			spa("azimuth, Golden", 194.340241, () => deg(goldenSun().azimuth), ephemeris),
			spa(
				"incidence on a 30° slope facing 170°, Golden",
				25.187,
				() => {
					const sun = { apparentAltitude: goldenSeen(), azimuth: goldenSun().azimuth };
					return deg(Math.acos(cosIncidence(sun, rad(30), rad(170))));
				},
				ephemeris,
			),
			point("zenith, true, equinox at 0, 0", 1.8331, () => 90 - deg(equinox().trueAltitude), ephemeris),
			point("azimuth, equinox at 0, 0", 85.4145, () => deg(equinox().azimuth), {
				absolute: 0.63,
				basis: "source",
				reason: "0.02° on the great circle, 1.83° from the zenith",
			}),
			point("zenith, true, 28.6° N", 54.1328, () => 90 - deg(delhi().trueAltitude), ephemeris),
			point("apparent altitude, 28.6° N", 35.8904, () => deg(delhi().apparentAltitude), ephemeris),
			point("azimuth, 28.6° N", 205.9629, () => deg(delhi().azimuth), ephemeris),
		],
	},
	{
		quantity: "Declination",
		unit: "°",
		role: "check",
		rows: [
			{
				name: "1992-10-13",
				published: -7.78381,
				computed: () => deg(declination(meeusTime)),
				tolerance: { absolute: 0.01, basis: "source", reason: "stated error of the low-precision series" },
				source: "the open library astropy, apparent place (the day of Meeus, ex. 25.a)",
				kind: "library",
			},
		],
	},
	{
		quantity: "Equation of time",
		unit: "min",
		role: "check",
		rows: [
			point("2003-10-17", 14.641511, () => equationOfTime(golden.time) / 60, rightAscension),
			point("2024-03-20", -7.305, () => equationOfTime(utc("2024-03-20T12:00:00Z")) / 60, rightAscension),
			{
				name: "1992-10-13",
				published: 13 + 42.6 / 60,
				computed: () => equationOfTime(meeusTime) / 60,
				tolerance: rightAscension,
				source: MEEUS,
				kind: "print",
			},
		],
	},
	{
		quantity: "Declination by a textbook's formula",
		unit: "°",
		role: "sanity",
		why: "Cooper's one-term declination against an ephemeris",
		rows: [duffie("1.6.3", "16 March", -2.4, () => deg(declination(utc("2001-03-16T16:00:00Z"))), cooper)],
	},
	{
		quantity: "Equation of time by a textbook's formula",
		unit: "min",
		role: "sanity",
		why: "Spencer's series against an ephemeris",
		rows: [
			duffie("1.5.1", "3 February", -13.5, () => equationOfTime(utc("2001-02-03T16:30:00Z")) / 60, {
				absolute: 0.6,
				basis: "source",
				reason: "stated error of Spencer's series",
			}),
		],
	},
	{
		quantity: "Sunrise, noon and sunset",
		unit: "s",
		role: "check",
		rows: [
			spa(
				"sunrise, Golden, 17 October",
				clock(6, 12, 43),
				() => goldenDay("2003-10-17T19:00:00Z").sunrise - utc("2003-10-17T07:00:00Z"),
				seconds,
			),
			point(
				"noon, Golden, 17 October",
				clock(11, 46, 4.97),
				() => goldenDay("2003-10-17T19:00:00Z").noon - utc("2003-10-17T07:00:00Z"),
				seconds,
			),
			spa(
				"sunset, Golden, evening of the UT day: 16 October by the clock",
				clock(17, 20, 19),
				() => goldenDay("2003-10-16T19:00:00Z").sunset - utc("2003-10-16T07:00:00Z"),
				seconds,
			),
			point(
				"sunset, Golden, evening of 17 October",
				clock(17, 18, 51),
				() => goldenDay("2003-10-17T19:00:00Z").sunset - utc("2003-10-17T07:00:00Z"),
				seconds,
			),
			a21("1994-01-02", 35, "sunrise", clock(7, 8, 12.8)),
			a21("1994-01-02", 35, "sunset", clock(16, 59, 55.9)),
			a21("1996-07-05", -35, "sunrise", clock(7, 8, 15.4)),
			a21("1996-07-05", -35, "sunset", clock(17, 1, 4.5)),
			a21("2004-12-04", -35, "sunrise", clock(4, 38, 57.1)),
			a21("2004-12-04", -35, "sunset", clock(19, 2, 2.5)),
		],
	},
	{
		quantity: "Sun and planes by solar time",
		unit: "°",
		role: "sanity",
		why: "the book takes Cooper's one-term declination",
		rows: [
			duffie(
				"1.6.1",
				"incidence, 13 February 10:30, slope 45°, 15° west of south",
				35,
				() => deg(Math.acos(cosIncidence(atSolarTime("2001-02-13", 10.5), rad(45), rad(195)))),
				cooper,
			),
			duffie("1.6.2a", "zenith, 13 February 9:30", 66.5, () => zenith("2001-02-13", 9.5), cooper),
			duffie("1.6.2a", "azimuth, 13 February 9:30", -40, () => azimuth("2001-02-13", 9.5), cooper),
			duffie("1.6.2b", "zenith, 1 July 18:30", 79.6, () => zenith("2001-07-01", 18.5), cooper),
			duffie("1.6.2b", "azimuth, 1 July 18:30", 112, () => azimuth("2001-07-01", 18.5), cooper),
			duffie("1.6.3", "zenith, 16 March 16:00", 70.3, () => zenith("2001-03-16", 16), cooper),
			duffie("1.6.3", "azimuth, 16 March 16:00", 66.8, () => azimuth("2001-03-16", 16), cooper),
		],
	},
	{
		quantity: "Extraterrestrial irradiation on the horizontal",
		unit: "MJ/m² day",
		role: "sanity",
		why: "one-term declinations and distance factors against an ephemeris",
		rows: [
			duffie("1.10.1", "43° N, 15 April", 33.8, () => dailyOutside("2001-04-15", 43), {
				relative: 0.03,
				basis: "source",
				reason: "Cooper's declination may be 0.9° off: 2 %; a one-term distance factor 0.3 %",
			}),
			{
				name: "20° S, 3 September",
				published: 32.2,
				computed: () => dailyOutside("2001-09-03", -20),
				tolerance: {
					relative: 0.03,
					basis: "source",
					reason: "a one-term declination may be 0.9° off: 2 %; a one-term distance factor 0.3 %",
				},
				source: "Allen et al., FAO Irrigation and Drainage Paper 56 (1998), example 8",
				kind: "memory",
			},
		],
	},
	{
		quantity: "Distance factor of the sun",
		unit: "-",
		role: "check",
		rows: [
			spa("2003-10-17, from 0.996542 AU", 0.996542 ** -2, () => distanceFactor(golden.time), {
				absolute: 0.0012,
				basis: "claim",
				reason: "Spencer's fit of one year against the true sun of 1990 to 2050",
			}),
		],
	},
];

/** Sum over a day of what a level plane outside the air receives [MJ/m²], by the books' solar constant of 1367 W/m². */
function dailyOutside(date: string, latitude: number): number {
	const start = utc(`${date}T00:00:00Z`);
	let sum = 0;
	for (let t = 30; t < 86_400; t += 60) {
		const sine = Math.sin(sunPosition(start + t, rad(latitude), 0).trueAltitude);
		sum += 60 * 1367 * distanceFactor(start + t) * Math.max(0, sine);
	}
	return sum / 1e6;
}
