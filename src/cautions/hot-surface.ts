import { type Caution, temperature } from "./caution.ts";

const TOUCHABLE = 333.15; // [K] 60 °C, metal that is touched for five seconds; ASTM C1055 (value from memory)

/** Skin that burns whoever touches it.
 *  @param surfaces  where, and how hot it gets there [K] */
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
				"The outside of the {place} stands at {surfaceTemperature}; above {limit} a touch burns. Lag it thicker or fence it off where people come near, to your local safety code.",
		}));
}
