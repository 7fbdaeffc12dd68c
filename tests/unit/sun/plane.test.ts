import { describe, expect, it } from "vitest";
import {
	cosIncidence,
	hayDaviesParts,
	isotropicPlaneIrradiance,
	planeIrradiance,
} from "../../../src/sun/plane.ts";

const rad = Math.PI / 180;
const sun = { apparentAltitude: 35 * rad, azimuth: 140 * rad };
const sky = { beam: 800, diffuse: 90, extraterrestrial: 1361 };

describe("cosIncidence", () => {
	it("is the sine of the altitude on the level, whatever way it faces", () => {
		expect(cosIncidence(sun, 0, 0)).toBeCloseTo(Math.sin(sun.apparentAltitude), 12);
		expect(cosIncidence(sun, 0, 2)).toBeCloseTo(Math.sin(sun.apparentAltitude), 12);
	});

	it("is one on a plane that faces the sun, and minus one on its back", () => {
		expect(cosIncidence(sun, 55 * rad, sun.azimuth)).toBeCloseTo(1, 12);
		expect(cosIncidence(sun, 125 * rad, sun.azimuth + Math.PI)).toBeCloseTo(-1, 12);
	});

	it("equals the five-term formula in declination and hour angle (Duffie & Beckman eq. 1.6.2)", () => {
		const [latitude, d, H, tilt, fromSouth] = [43 * rad, -14 * rad, -22.5 * rad, 45 * rad, 15 * rad];
		const five =
			Math.sin(d) * Math.sin(latitude) * Math.cos(tilt) -
			Math.sin(d) * Math.cos(latitude) * Math.sin(tilt) * Math.cos(fromSouth) +
			Math.cos(d) * Math.cos(latitude) * Math.cos(tilt) * Math.cos(H) +
			Math.cos(d) * Math.sin(latitude) * Math.sin(tilt) * Math.cos(fromSouth) * Math.cos(H) +
			Math.cos(d) * Math.sin(tilt) * Math.sin(fromSouth) * Math.sin(H);
		const up = Math.sin(latitude) * Math.sin(d) + Math.cos(latitude) * Math.cos(d) * Math.cos(H);
		const south = Math.sin(latitude) * Math.cos(d) * Math.cos(H) - Math.cos(latitude) * Math.sin(d);
		const west = Math.cos(d) * Math.sin(H);
		const position = { apparentAltitude: Math.asin(up), azimuth: Math.PI + Math.atan2(west, south) };
		expect(cosIncidence(position, tilt, Math.PI + fromSouth)).toBeCloseTo(five, 12);
		expect(five).toBeCloseTo(0.817, 2); // the book's example 1.6.1
	});
});

describe("planeIrradiance", () => {
	it("is the global irradiance on the level", () => {
		const global = sky.beam * Math.sin(sun.apparentAltitude) + sky.diffuse;
		for (const model of [planeIrradiance, isotropicPlaneIrradiance])
			expect(model(sun, sky, { tilt: 0, azimuth: 1 }, 0.5).total).toBeCloseTo(global, 9);
	});

	it("becomes the isotropic answer without beam", () => {
		const grey = { ...sky, beam: 0 };
		const plane = { tilt: 0.7, azimuth: Math.PI };
		expect(planeIrradiance(sun, grey, plane, 0.2)).toEqual(isotropicPlaneIrradiance(sun, grey, plane, 0.2));
	});

	it("gives the back of a wall no beam and no circumsolar light", () => {
		const wall = planeIrradiance(sun, sky, { tilt: Math.PI / 2, azimuth: sun.azimuth + Math.PI }, 0);
		expect(wall.beam).toBe(0);
		expect(wall.total).toBeCloseTo(((1 - sky.beam / sky.extraterrestrial) * sky.diffuse) / 2, 9);
	});

	it("adds up to its total", () => {
		const parts = planeIrradiance(sun, sky, { tilt: 1, azimuth: 2 }, 0.3);
		expect(parts.beam + parts.skyDiffuse + parts.ground).toBeCloseTo(parts.total, 12);
		expect(parts.ground).toBeGreaterThan(0);
	});

	it("stays finite and bounded as the sun sets", () => {
		const low = { apparentAltitude: 1e-9, azimuth: Math.PI };
		const wall = planeIrradiance(
			low,
			{ ...sky, beam: 20, diffuse: 3 },
			{ tilt: Math.PI / 2, azimuth: Math.PI },
			0.2,
		);
		expect(wall.total).toBeLessThan(30);
		const below = { apparentAltitude: -0.1, azimuth: Math.PI };
		expect(planeIrradiance(below, { ...sky, beam: 0, diffuse: 0 }, { tilt: 1, azimuth: 3 }, 0.2).total).toBe(
			0,
		);
	});
});

describe("hayDaviesParts", () => {
	it("loses nothing of the diffuse on the level", () => {
		const sine = Math.sin(sun.apparentAltitude);
		const { circumsolar, isotropic } = hayDaviesParts(sky, sine);
		expect(circumsolar * sine + isotropic).toBeCloseTo(sky.diffuse, 12);
	});
});
