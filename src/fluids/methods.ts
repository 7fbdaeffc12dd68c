import { ICE_POINT } from "../constants.ts";
import { inRange, type Method } from "../methods.ts";
import type { Fluid } from "./fluid.ts";

const CRAGOE = [ICE_POINT, ICE_POINT + 200] as const; // [K] 0–200 °C
const THINNEST = 2e-6; // [m²/s] viscosity below which ASTM D341 corrects Walther's line

/** Methods behind the properties of a fluid, each with a flag where one of the temperatures [K] is outside its range. */
export function fluidMethods(fluid: Fluid, temperatures: readonly number[]): readonly Method[] {
	const beyond = ([low, high]: readonly [number, number]) =>
		temperatures.some((t) => !(t >= low && t <= high));
	const thin = temperatures.some((t) => fluid.viscosity(t) / fluid.density(t) < THINNEST);
	const walther: Method = {
		name: "Viscosity of an oil between two points",
		source: "ASTM D341; Walther, Erdöl und Teer 7 (1931) 382–384",
		confirmed: true,
		outsideRange: thin,
	};
	const own: Method = {
		name: `Properties of ${fluid.name}`,
		...(fluid.source !== undefined && { source: fluid.source }),
		confirmed: fluid.confirmed,
		outsideRange: beyond(fluid.range),
	};
	switch (fluid.family) {
		case "water":
		case "glycol":
			return [own];
		case "vegetableOil":
			return [walther, own];
		case "mineralOil":
			return [
				walther,
				{
					name: "Heat capacity and conductivity of petroleum oils",
					source: "Cragoe, NBS Misc. Publ. 97 (1929)",
					confirmed: false, // the conductivity's divisor
					outsideRange: beyond(CRAGOE),
				},
				inRange({
					name: "Density of lubricating oils",
					source: "API MPMS ch. 11.1 / ASTM D1250",
					confirmed: true,
				}),
			];
		default:
			return fluid.family satisfies never;
	}
}
