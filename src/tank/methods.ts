import { insulationMaterial, insulationOutsideRange } from "../heat/insulation.ts";
import type { Method } from "../methods.ts";
import type { TankCooling } from "./cooling.ts";
import type { Tank } from "./tank.ts";

const LARGEST_LABELLED = 0.5; // [m³] Regulation (EU) 812/2013, Article 1
const HOTTEST_WET = 333.15; // [K] 60 °C, above which vapour carries further heat; common practice, no source

/** What the cooling of a tank rests on, each with a flag where it was stretched.
 *  @param ambient  of the air around it [K] */
export function coolingMethods(tank: Tank, cooling: TankCooling, ambient: number): readonly Method[] {
	const { insulation } = tank;
	const hottest = tank.startTemperatures.reduce((most, t) => Math.max(most, t), 0);
	return [
		{
			name: "Stratified tank of mixed layers",
			source: "Duffie & Beckman, Solar Engineering of Thermal Processes, ch. 8",
			outsideRange: false,
		},
		{
			name: "Conduction through a cylinder's wall, ends and edges",
			source:
				"Langmuir, Adams & Meikle, Trans. Am. Electrochem. Soc. 24 (1913) 53–76, in Incropera 6e, table 4.1",
			outsideRange: false,
		},
		{
			name: "Wind and buoyancy on the tank's skin, as on a cylinder",
			source:
				"Churchill & Bernstein, J. Heat Transfer 99 (1977) 300–306; Churchill & Chu, Int. J. Heat Mass Transfer 18 (1975) 1049–1053",
			outsideRange: false,
		},
		...laggingMethods(insulation, hottest, ambient),
		{
			name: "Energy class of a hot water storage tank",
			source: "Regulation (EU) 812/2013, Annex II, table 2",
			outsideRange: cooling.standing.volume > LARGEST_LABELLED * (1 + 1e-9), // a volume found from rounded dimensions
		},
	];
}

function laggingMethods(insulation: Tank["insulation"], hottest: number, ambient: number): Method[] {
	if (insulation.thickness === 0) return [];
	const material = insulationMaterial(insulation.material);
	return [
		{
			name: `Tank lagging: conductivity of ${material.name} at its mean temperature`,
			source: material.source,
			outsideRange: insulationOutsideRange(material, hottest, ambient),
		},
		...(insulation.moisture > 0
			? [
					{
						name: "Conductivity of damp lagging",
						source: "ISO 10456:2007, eq. 4 and table 4 (values from memory)",
						outsideRange: hottest > HOTTEST_WET,
					},
				]
			: []),
	];
}
