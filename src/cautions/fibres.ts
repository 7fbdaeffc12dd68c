import { type Insulation, insulationMaterial } from "../heat/insulation.ts";
import { hasPane, hasTube, type Receiver } from "../receiver/receiver.ts";
import type { Caution, CautionRule } from "./caution.ts";

/** Fibres and panes, hazards during construction. */
export const fibres: CautionRule = ({ plant: { receiver, loop, tank } }) => {
	const layers = [
		...(hasTube(receiver) ? [receiver.insulation] : []),
		loop.supply.insulation,
		loop.return.insulation,
		tank.insulation,
	];
	return [...fibresIn(layers), ...paneOf(receiver)];
};

/** A pane in front of a receiver. */
export function paneOf(receiver: Receiver): readonly Caution[] {
	if (!hasPane(receiver)) return [];
	return [
		{
			code: "glass",
			severity: "warning",
			parameters: {},
			message:
				"The receiver's pane can shatter from heat, rain on hot glass, or a tool. Use toughened glass, wear gloves and goggles, and leave its fixing to a qualified fitter.",
		},
	];
}

/** Fibrous insulation, each material once. */
export function fibresIn(layers: readonly Insulation[]): readonly Caution[] {
	const laid = layers.filter(({ thickness }) => thickness > 0);
	const materials = [...new Set(laid.map(({ material }) => material))].map(insulationMaterial);
	const cautions: Caution[] = [];
	for (const { name, hazard } of materials) {
		if (hazard === "fibreDust")
			cautions.push({
				code: "fibreDust",
				severity: "warning",
				parameters: { material: name },
				message:
					"Cutting {material} frees fibres that hurt skin, eyes and lungs. Wear gloves, long sleeves, goggles and a dust mask, and wet the cut, as local rules for such work and the maker's safety sheet require.",
			});
		if (hazard === "carcinogenicFibre")
			cautions.push({
				code: "carcinogenicFibre",
				severity: "danger",
				parameters: { material: name },
				message:
					"The fibres of {material} may cause cancer. Choose another insulation; where it is unavoidable, only trained people with the protection that the law requires may work with it.",
			});
	}
	return cautions;
}
