import type { Insulation } from "../heat/insulation.ts";
import { hasTube } from "../receiver/receiver.ts";
import type { Caution, CautionRule } from "./caution.ts";

/** Insulation exposed to rain. */
export const wetInsulation: CautionRule = ({ plant: { receiver, loop, tank }, build }) => {
	const layers = [
		...(hasTube(receiver) ? [receiver.insulation] : []),
		loop.supply.insulation,
		loop.return.insulation,
		tank.insulation,
	].filter(({ thickness }) => thickness > 0);
	return wetLayers(layers, build.weatherproof);
};

/** Rain in layers of insulation.
 *  @param weatherproof  whether a cover keeps outdoor layers dry */
export function wetLayers(layers: readonly Insulation[], weatherproof: boolean): readonly Caution[] {
	const wettest = Math.max(0, ...layers.map(({ moisture }) => moisture));
	if (wettest === 0 && weatherproof) return [];
	return [
		{
			code: "wetInsulation",
			severity: "warning",
			parameters: { moisture: { kind: "ratio", value: wettest } },
			message:
				"Insulation is wet, or has no cover that keeps rain out. Wet insulation loses several times as much heat and corrodes the pipe under it: jacket it with sealed seams, fitted by a qualified insulation fitter.",
		},
	];
}
