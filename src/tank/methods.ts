import { CYLINDER_IN_WIND, insulationMethod, moistureMethod } from "../heat/methods.ts";
import { type Citation, inRange, type Method } from "../methods.ts";
import type { TankCooling } from "./cooling.ts";
import type { Tank } from "./tank.ts";

export const STRATIFIED_TANK: Citation = {
	name: "Stratified tank of mixed layers",
	source: "Duffie & Beckman, Solar Engineering of Thermal Processes, ch. 8",
	confirmed: true,
};

const LARGEST_LABELLED = 0.5; // [m³] Regulation (EU) 812/2013, Article 1

/** Methods behind the cooling of a tank, each with a flag where it is used outside its range.
 *  @param ambient  of the air around it [K] */
export function coolingMethods(tank: Tank, cooling: TankCooling, ambient: number): readonly Method[] {
	const { insulation } = tank;
	const hottest = tank.startTemperatures.reduce((most, t) => Math.max(most, t), 0);
	return [
		inRange(STRATIFIED_TANK),
		inRange({
			name: "Conduction through a cylinder's wall, ends and edges",
			source:
				"Langmuir, Adams & Meikle, Trans. Am. Electrochem. Soc. 24 (1913) 53–76, in Incropera 6e, table 4.1",
			confirmed: true,
		}),
		inRange({ name: "Wind and buoyancy on the tank's skin, as on a cylinder", ...CYLINDER_IN_WIND }),
		...(insulation.thickness > 0 ? [insulationMethod("Tank", insulation, hottest, ambient)] : []),
		...(insulation.thickness > 0 && insulation.moisture > 0 ? [moistureMethod([hottest])] : []),
		{
			name: "Energy class of a hot water storage tank",
			source: "Regulation (EU) 812/2013, Annex II, table 2",
			confirmed: true,
			outsideRange: cooling.standing.volume > LARGEST_LABELLED * (1 + 1e-9), // tolerance for a volume from rounded dimensions
		},
	];
}
