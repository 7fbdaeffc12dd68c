import { insulationMaterial } from "../heat/insulation.ts";
import type { InsulationMaterial } from "../heat/insulation-materials.ts";
import { hasTube } from "../receiver/receiver.ts";
import { type Caution, type CautionRule, temperature } from "./caution.ts";

/** Insulation above its service limit. */
export const insulationLimit: CautionRule = ({ outcome, plant: { receiver, loop, tank } }) => {
	const layers = [
		...(hasTube(receiver) ? [["receiver", receiver.insulation, outcome.stagnation] as const] : []),
		["supply pipe", loop.supply.insulation, outcome.maximumOil] as const,
		["return pipe", loop.return.insulation, outcome.maximumOil] as const,
		["tank", tank.insulation, outcome.endTop] as const,
	].filter(([, { thickness }]) => thickness > 0);
	return insulationAboveLimit(
		layers.map(([place, { material }, hottest]) => [place, insulationMaterial(material), hottest]),
	);
};

type Place = readonly [where: string, material: InsulationMaterial, hottest: number];

/** Insulation above its service limit, for each place with the highest temperature of its inner face [K]. */
export function insulationAboveLimit(places: readonly Place[]): readonly Caution[] {
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
				"At the {place}, {material} can reach {hottest}; its limit is about {limit}. It shrinks, smokes or burns: choose insulation whose data sheet covers it, to your local fire code.",
		}));
}
