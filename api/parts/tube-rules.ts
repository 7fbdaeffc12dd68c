import { hasTube } from "../../src/index.ts";
import { contradictory, type Rule, type RuleFault, said } from "../validation/rule.ts";
import type { DayRule } from "./day-request.ts";
import type { Loop } from "./loop.ts";
import type { Receiver } from "./receiver.ts";

interface Tube {
	readonly innerDiameterMm: number;
	readonly outerDiameterMm: number;
}

/** A tube is wider outside than inside. */
export function tubeWall(pointer: string, tube: Tube): readonly RuleFault[] {
	return tube.outerDiameterMm <= tube.innerDiameterMm
		? [
				contradictory(
					`${pointer}/outerDiameterMm`,
					`a tube of ${said(tube.outerDiameterMm)} mm outside has no room for a bore of ${said(tube.innerDiameterMm)} mm`,
				),
			]
		: [];
}

export const receiverTubeWall: Rule<{ readonly receiver: Receiver }> = ({ receiver }) =>
	hasTube(receiver) ? tubeWall("/receiver/tube", receiver.tube) : [];

export const pipeWalls: Rule<{ readonly loop: Loop }> = ({ loop }) => [
	...tubeWall("/loop/supply", loop.supply),
	...tubeWall("/loop/return", loop.return),
];

/** Every tube of a plant is wider outside than inside. */
export const tubeWalls: DayRule = ({ receiver, loop, coil }) => [
	...receiverTubeWall({ receiver }),
	...pipeWalls({ loop }),
	...tubeWall("/coil", coil),
];
