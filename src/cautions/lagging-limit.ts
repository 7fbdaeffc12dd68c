import { type InsulationMaterial, insulationMaterial } from "../heat/insulation.ts";
import { type CautionRule, temperature } from "./caution.ts";

/** Lagging hotter than it bears. */
export const laggingLimit: CautionRule = ({ outcome, plant: { receiver, loop, tank } }) => {
	const places: readonly (readonly [where: string, material: InsulationMaterial, hottest: number])[] = [
		...(receiver.kind === "efficiencyLine"
			? []
			: [["receiver", insulationMaterial(receiver.insulation.material), outcome.stagnation] as const]),
		["supply pipe", insulationMaterial(loop.supply.insulation.material), outcome.maximumOil],
		["return pipe", insulationMaterial(loop.return.insulation.material), outcome.maximumOil],
		["tank", insulationMaterial(tank.insulation.material), outcome.endTop],
	];
	return places
		.filter(([, material, hottest]) => hottest > material.serviceLimit)
		.map(([place, material, hottest]) => ({
			code: "laggingTooHot",
			severity: "warning",
			parameters: {
				place,
				material: material.name,
				hottest: temperature(hottest),
				limit: temperature(material.serviceLimit),
			},
			message:
				"At the {place} {material} can meet {hottest}; it bears about {limit}. It shrinks, smokes or burns: choose a lagging whose data sheet covers it, to your local fire code.",
		}));
};
