import type { Fluid } from "../fluids/fluid.ts";
import { boilingPoint, standardPressure } from "../sky/atmosphere.ts";
import { type CautionRule, temperature } from "./caution.ts";

/** Fluid families that are mostly water. */
const AQUEOUS: Readonly<Record<Fluid["family"], boolean>> = {
	water: true,
	glycol: true,
	mineralOil: false,
	vegetableOil: false,
};

/** Water in the loop above its boiling point at ambient pressure; the pressure of the circuit is unknown. */
export const loopBoils: CautionRule = ({ plant: { site, loop }, outcome }) => {
	if (!AQUEOUS[loop.fluid.family]) return [];
	const boiling = boilingPoint(standardPressure(site.elevation));
	if (outcome.maximumFilm <= boiling) return [];
	return [
		{
			code: "loopFluidBoils",
			severity: "danger",
			parameters: {
				fluid: loop.fluid.name,
				boilingPoint: temperature(boiling),
				film: temperature(outcome.maximumFilm),
			},
			message:
				"{fluid} reaches {film} at the absorber and boils without pressure at {boilingPoint} here. Steam drives hot fluid out of a vent and bursts a closed loop without a listed relief valve: raise the flow, use oil, or have a licensed fitter pressurise the loop.",
		},
	];
};
