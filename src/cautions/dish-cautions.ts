import type { Caution } from "./caution.ts";
import { bySeverity } from "./cautions.ts";
import { concentratedLight } from "./concentrated-light.ts";
import { dishInWind } from "./dish-in-wind.ts";

/** All cautions about a dish alone, the most serious first.
 *  @param apertureArea  [m²] */
export function dishCautions(apertureArea: number): readonly Caution[] {
	return bySeverity([...concentratedLight({}), ...dishInWind({ heater: { apertureArea } })]);
}
