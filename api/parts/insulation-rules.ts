import { INSULATION_MATERIALS } from "../../src/index.ts";
import { outOfRange, type RuleFault, said } from "../validation/rule.ts";
import type { Insulation } from "./insulation.ts";

/** A layer holds no more water than its moisture factor was given for. */
export function mostMoisture(pointer: string, { material, moistFraction }: Insulation): readonly RuleFault[] {
	const { mostMoisture: most, name } = INSULATION_MATERIALS[material];
	return moistFraction > most
		? [
				outOfRange(
					`${pointer}/moistFraction`,
					`${said(moistFraction)} is more water than is known of ${name}: at most ${most}`,
				),
			]
		: [];
}
