import type { Dish } from "../dish/dish.ts";
import { focalPeakIrradiance } from "../dish/focal-spot.ts";
import { apertureArea } from "../dish/optics.ts";
import type { Receiver } from "../receiver/receiver.ts";
import { declination } from "../sun/position.ts";
import type { Caution, CautionRule } from "./caution.ts";

const FULL_SUN = 1000; // [W/m²] beam of the stagnation temperature

/** A flat coil in a focal spot, whose temperatures assume evenly distributed light. */
export const flatCoil: CautionRule = ({ plant: { site, dish, receiver }, task }) =>
	flatCoilInFocus(receiver, {
		dish,
		area: apertureArea(dish, site.latitude, declination((task.start + task.end) / 2)),
	});

/** The dish that illuminates a receiver. */
export interface LitBy {
	readonly dish: Dish;
	readonly area: number; // aperture [m²]
}

/** A flat coil in a focus. The size of the spot does not depend on that of the disc, so the caution applies to every size.
 *  @param litBy  undefined where only the light that the coil absorbs is known */
export function flatCoilInFocus(receiver: Receiver, litBy: LitBy | undefined): readonly Caution[] {
	if (receiver.kind !== "openCoil" && receiver.kind !== "glazedCoil") return [];
	const peak = litBy && focalPeakIrradiance(litBy.dish, FULL_SUN * litBy.area);
	return [
		{
			code: "flatCoilInFocus",
			severity: "danger",
			parameters: peak === undefined ? {} : { peakIrradiance: { kind: "irradiance", value: peak } },
			message:
				peak === undefined
					? "A dish lights inner turns most; film and wall temperatures assume even light: charring, burn-through, fire. Use a cavity, or let licensed fitters defocus and measure; never without flow."
					: "Full sun puts {peakIrradiance} on inner turns; film and wall temperatures assume even light: charring, burn-through, fire. Use a cavity, or let licensed fitters defocus and measure; never without flow.",
		},
	];
}
