import type { Citation, Method } from "../methods.ts";
import { type Insulation, insulationMaterial, insulationOutsideRange } from "./insulation.ts";

const HOTTEST_WET = 333.15; // [K] 60 °C, above which vapour carries additional heat; common practice, no source

/** Source of the film coefficient inside a helical tube. */
export const HELICAL_FILM = {
	source:
		"Janssen & Hoogendoorn, Int. J. Heat Mass Transfer 21 (1978) 1197–1206; VDI Heat Atlas 2010, ch. G3",
	confirmed: false,
} as const;

/** Source of the film coefficient inside a straight tube. */
export const STRAIGHT_FILM = {
	source:
		"Hausen, Z. VDI Beih. Verfahrenstechnik 4 (1943) 91–98; Gnielinski, Int. Chem. Eng. 16 (1976) 359–368",
	confirmed: true,
} as const;

const CHURCHILL_CHU = "Churchill & Chu, Int. J. Heat Mass Transfer 18 (1975) 1049–1053";
const CHURCHILL_BERNSTEIN = "Churchill & Bernstein, J. Heat Transfer 99 (1977) 300–306";

/** Source of natural convection around a horizontal cylinder. */
export const HORIZONTAL_CYLINDER = { source: CHURCHILL_CHU, confirmed: true } as const;

/** Source of wind and buoyancy on a cylinder. */
export const CYLINDER_IN_WIND = {
	source: `${CHURCHILL_BERNSTEIN}; ${CHURCHILL_CHU}`,
	confirmed: true,
} as const;

export const HORIZONTAL_TUBE: Citation = {
	name: "Natural convection around a horizontal tube",
	...HORIZONTAL_CYLINDER,
};

export const CROSS_FLOW: Citation = {
	name: "Wind across a tube",
	source: CHURCHILL_BERNSTEIN,
	confirmed: true,
};

/** Conductivity of a layer of insulation, with a flag where its faces [K] are outside the range of its material.
 *  @param place  what the layer surrounds, with a capital letter */
export function insulationMethod(
	place: string,
	{ material: id, thickness }: Insulation,
	hotFace: number,
	coldFace: number,
): Method {
	const material = insulationMaterial(id);
	return {
		name: `${place} insulation: conductivity of ${material.name} at its mean temperature`,
		...(material.source !== undefined && { source: material.source }),
		confirmed: material.confirmed,
		outsideRange: thickness > 0 && insulationOutsideRange(material, hotFace, coldFace),
	};
}

/** Effect of moisture on insulation, with a flag where one of the temperatures [K] lets vapour carry heat through it. */
export function moistureMethod(temperatures: readonly number[]): Method {
	return {
		name: "Conductivity of damp insulation",
		source: "ISO 10456:2007, eq. 4 and table 4",
		confirmed: false,
		outsideRange: temperatures.some((t) => t > HOTTEST_WET),
	};
}
