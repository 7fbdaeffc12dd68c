import type { Fluid } from "./fluid.ts";
import { propyleneGlycol } from "./glycol.ts";
import { mineralOil } from "./mineral-oil.ts";
import { vegetableOil } from "./vegetable-oil.ts";
import { water } from "./water.ts";

/** Identifiers of the heat transfer fluids of a loop. */
export const FLUID_IDS = [
	"water",
	"mineralOilVg22",
	"mineralOilVg32",
	"mineralOilVg46",
	"mineralOilVg68",
	"propyleneGlycol25",
	"propyleneGlycol40",
	"propyleneGlycol50",
	"vegetableOil",
] as const;

export type FluidId = (typeof FLUID_IDS)[number];

const FLUIDS: Readonly<Record<FluidId, Fluid>> = {
	water,
	mineralOilVg22: mineralOil(22),
	mineralOilVg32: mineralOil(32),
	mineralOilVg46: mineralOil(46),
	mineralOilVg68: mineralOil(68),
	propyleneGlycol25: propyleneGlycol(25),
	propyleneGlycol40: propyleneGlycol(40),
	propyleneGlycol50: propyleneGlycol(50),
	vegetableOil,
};

/** The fluid with an identifier. */
export function fluidById(id: FluidId): Fluid {
	return FLUIDS[id];
}
