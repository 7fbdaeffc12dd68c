import { type Caution, temperature } from "./caution.ts";

const TOUCHABLE = 333.15; // [K] 60 °C, metal that is touched for five seconds; ASTM C1055 (value from memory)

/** Surfaces that burn on contact.
 *  @param surfaces  place and highest temperature [K] */
export function hotSurfaces(
	surfaces: readonly (readonly [where: string, temperature: number])[],
): readonly Caution[] {
	return surfaces
		.filter(([, hottest]) => hottest > TOUCHABLE)
		.map(([place, hottest]) => ({
			code: "hotSurface",
			severity: "warning",
			parameters: { place, surfaceTemperature: temperature(hottest), limit: temperature(TOUCHABLE) },
			message:
				"The outside of the {place} is at {surfaceTemperature}; above {limit} a touch burns. Insulate it more thickly or fence it off where people come near, to your local safety code.",
		}));
}
