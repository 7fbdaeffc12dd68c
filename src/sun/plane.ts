import type { SunDirection } from "./position.ts";

/** A fixed flat surface. */
export interface Plane {
	readonly tilt: number; // from the horizontal [rad]
	readonly azimuth: number; // direction it faces, clockwise from north [rad]
}

/** Irradiance from the sky. */
export interface SkyIrradiance {
	readonly beam: number; // on a plane normal to it [W/m²]
	readonly diffuse: number; // on the horizontal [W/m²]
	readonly extraterrestrial: number; // normal, outside the atmosphere [W/m²]
}

/** Irradiance on a tilted plane by source [W/m²]. */
export interface PlaneIrradiance {
	readonly beam: number;
	readonly skyDiffuse: number;
	readonly ground: number;
	readonly total: number;
}

/** Sky diffuse, divided into a part from around the sun and an isotropic part. */
export interface DiffuseParts {
	readonly circumsolar: number; // treated as beam, on a plane normal to it [W/m²]
	readonly isotropic: number; // on the horizontal [W/m²]
}

const LOWEST_SINE = Math.sin(Math.PI / 180); // below 1° the ratio of the planes is meaningless; common practice, no source

/** Cosine of the angle between the sun and the normal of a plane; negative when the sun is behind it.
 *  @param tilt,azimuth  of the plane [rad]
 *  Check   Duffie & Beckman, Solar Engineering of Thermal Processes, ex. 1.6.1   tests/reference/sun.reference.ts */
export function cosIncidence(position: SunDirection, tilt: number, azimuth: number): number {
	const { apparentAltitude, azimuth: sunAzimuth } = position;
	return (
		Math.sin(apparentAltitude) * Math.cos(tilt) +
		Math.cos(apparentAltitude) * Math.sin(tilt) * Math.cos(sunAzimuth - azimuth)
	);
}

/** Circumsolar and isotropic parts of the sky diffuse (Hay & Davies).
 *  circumsolar = A·D/sin α, isotropic = (1 − A)·D, A = beam/extraterrestrial
 *  @param sineAltitude  of the sun [-]; below an altitude of 1° the value at 1° is used
 *  Source  Hay & Davies, Proc. First Canadian Solar Radiation Data Workshop (1980) 59–72 */
export function hayDaviesParts(sky: SkyIrradiance, sineAltitude: number): DiffuseParts {
	const A = sky.beam / sky.extraterrestrial;
	return {
		circumsolar: (A * sky.diffuse) / Math.max(sineAltitude, LOWEST_SINE),
		isotropic: (1 - A) * sky.diffuse,
	};
}

/** Irradiance on a tilted plane, with the diffuse by Hay & Davies 1980.
 *  skyDiffuse = D·[A·Rb + (1 − A)·(1 + cos β)/2], Rb = max(0, cos θ)/sin α
 *  ground = albedo·G·(1 − cos β)/2, G = beam·sin α + D
 *  Error   none given; it neglects the brighter horizon: Perez's model gives 9 % more in the example below
 *  Check   Duffie & Beckman, ex. 2.16, recomputed with this model: 1.251 MJ/m²   tests/reference/sky.reference.ts */
export function planeIrradiance(
	sun: SunDirection,
	sky: SkyIrradiance,
	plane: Plane,
	albedo: number,
): PlaneIrradiance {
	const parts = hayDaviesParts(sky, Math.sin(sun.apparentAltitude));
	return onPlane(sun, sky, plane, albedo, parts);
}

/** Irradiance on a tilted plane, with an isotropic diffuse sky.
 *  Source  Liu & Jordan, Solar Energy 7 (1963) 53–74
 *  Check   Duffie & Beckman, ex. 2.15.1: 1.17 MJ/m²   tests/reference/sky.reference.ts */
export function isotropicPlaneIrradiance(
	sun: SunDirection,
	sky: SkyIrradiance,
	plane: Plane,
	albedo: number,
): PlaneIrradiance {
	return onPlane(sun, sky, plane, albedo, { circumsolar: 0, isotropic: sky.diffuse });
}

function onPlane(
	sun: SunDirection,
	sky: SkyIrradiance,
	plane: Plane,
	albedo: number,
	parts: DiffuseParts,
): PlaneIrradiance {
	const facing = Math.max(0, cosIncidence(sun, plane.tilt, plane.azimuth)); // nothing from behind
	const global = sky.beam * Math.max(0, Math.sin(sun.apparentAltitude)) + sky.diffuse;
	const cosTilt = Math.cos(plane.tilt);
	const beam = sky.beam * facing;
	const skyDiffuse = parts.circumsolar * facing + (parts.isotropic * (1 + cosTilt)) / 2;
	const ground = (albedo * global * (1 - cosTilt)) / 2;
	return { beam, skyDiffuse, ground, total: beam + skyDiffuse + ground };
}
