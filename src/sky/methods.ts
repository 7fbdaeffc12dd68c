import type { Method } from "../methods.ts";

const SUN: Method = {
	name: "Sun position, low-precision solar theory",
	source: "Meeus, Astronomical Algorithms, 2nd ed. 1998, ch. 16 and 25",
	confirmed: true,
	outsideRange: false,
};
const SPLIT: Method = {
	name: "Beam split from global irradiance",
	source: "Erbs, Klein & Duffie, Solar Energy 28 (1982) 293–302",
	confirmed: true,
	outsideRange: false,
};
const HIGHEST_TESTED = 4000; // [m] the clear-sky model's coefficients were fitted to stations up to about here (from memory)

/** Methods behind the beam and diffuse of a clear sky. */
export function clearSkyMethods(elevation: number): readonly Method[] {
	return [
		SUN,
		{
			name: "Clear-sky beam and diffuse from Linke turbidity",
			source: "Ineichen & Perez, Solar Energy 73 (2002) 151–157",
			confirmed: true,
			outsideRange: elevation > HIGHEST_TESTED,
		},
		{
			name: "Relative air mass",
			source: "Kasten & Young, Applied Optics 28 (1989) 4735–4738",
			confirmed: true,
			outsideRange: false,
		},
	];
}

/** Methods behind a measured sky: a split of global irradiance where the beam was not measured. */
export function measuredSkyMethods(beam: "measured" | "fromDiffuse" | "split"): readonly Method[] {
	switch (beam) {
		case "measured":
		case "fromDiffuse":
			return [SUN];
		case "split":
			return [SUN, SPLIT];
		default:
			return beam satisfies never;
	}
}
