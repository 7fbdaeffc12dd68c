import { bracketedRoot } from "../numeric/root.ts";
import { type Heater, scaledHeater } from "./heater.ts";
import { flowOf, type Steady } from "./steady.ts";

/** The aperture that a wanted flow takes, or that no dish up to the bound gives it. */
export type NeededAperture =
	| { readonly kind: "found"; readonly area: number /* [m²] */ }
	| { readonly kind: "beyondBound"; readonly flowAtBound: number /* [kg/s] */ };

const TOLERANCE = 1e-5; // [-] of the area

/** Aperture of the smallest heater of these proportions (`scaledHeater`) that gives a flow.
 *  @param heater    sets proportions and quality     @param wantedFlow  [kg/s]
 *  @param largest   area of the bound [m²]
 *  @param steadyOf  what a heater of any size gives; must not fall as the heater grows */
export function neededAperture(
	heater: Heater,
	wantedFlow: number,
	largest: number,
	steadyOf: (heater: Heater) => Steady,
): NeededAperture {
	const bound = largest / heater.apertureArea;
	const flowAt = (factor: number) => flowOf(steadyOf(scaledHeater(heater, factor)));
	const flowAtBound = flowAt(bound);
	if (!(flowAtBound >= wantedFlow)) return { kind: "beyondBound", flowAtBound };
	const guess = (bound * wantedFlow) / flowAtBound; // flow grows all but in proportion to the area
	const factor = bracketedRoot(
		(size) => (size === 0 ? -wantedFlow : flowAt(size) - wantedFlow),
		0,
		bound,
		TOLERANCE * guess,
	);
	return { kind: "found", area: factor * heater.apertureArea };
}
