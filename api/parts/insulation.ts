import { z } from "@hono/zod-openapi";
import {
	type Insulation as CoreInsulation,
	type Grounds,
	INSULATION_MATERIALS,
	type InsulationId,
	practice,
} from "../../src/index.ts";
import { fourDigits, outOfRange, type RuleFault } from "../validation/rule.ts";
import { assume } from "../wire/defaults.ts";
import { millimetres, ratio, toSi } from "../wire/units.ts";

const IDS = Object.keys(INSULATION_MATERIALS) as [InsulationId, ...InsulationId[]];

/** Lagging with the defaults of its place: around a pipe, a receiver or a tank. */
export function insulation(material: InsulationId, thicknessMm: number, grounds: Grounds, mostMm: number) {
	return z.strictObject({
		material: assume(z.enum(IDS).meta({ description: "What it is made of." }), material, grounds),
		thicknessMm: assume(millimetres("Of the layer; 0 for none.", 0, mostMm), thicknessMm, grounds),
		moistFraction: assume(
			ratio("Water in it, by volume. Wet lagging conducts several times as well as dry.", 0, 0.15),
			0,
			practice("dry, which lasts only under a cover that keeps rain out"),
		),
		weatherproof: assume(
			z.boolean().meta({ description: "Whether a cover keeps rain out of it." }),
			true,
			practice("a jacket with sealed seams, as lagging out of doors needs"),
		),
		surfaceEmittance: assume(
			ratio("Of its outer skin, for heat radiation.", 0.02, 1),
			0.9,
			practice("plastic, paint or weathered cloth; bright metal has 0.05–0.2"),
		),
	});
}

export type Insulation = z.output<ReturnType<typeof insulation>>;

export function coreInsulation(layer: Insulation): CoreInsulation {
	return {
		material: layer.material,
		thickness: toSi.millimetres(layer.thicknessMm),
		moisture: layer.moistFraction,
		surfaceEmittance: layer.surfaceEmittance,
	};
}

/** A layer holds no more water than its moisture factor was given for. */
export function mostMoisture(pointer: string, { material, moistFraction }: Insulation): readonly RuleFault[] {
	const { mostMoisture: most, name } = INSULATION_MATERIALS[material];
	return moistFraction > most
		? [
				outOfRange(
					`${pointer}/moistFraction`,
					`${fourDigits(moistFraction)} is more water than is known of ${name}: at most ${most}`,
				),
			]
		: [];
}
