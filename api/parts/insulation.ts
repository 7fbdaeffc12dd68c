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

/** Insulation with the defaults of its place: around a pipe, a receiver or a tank. */
export function insulation(material: InsulationId, thicknessMm: number, grounds: Grounds, mostMm: number) {
	return z.strictObject({
		material: assume(z.enum(IDS).meta({ description: "Material of the insulation." }), material, grounds),
		thicknessMm: assume(
			millimetres("Thickness of the insulation; 0 for none.", 0, mostMm),
			thicknessMm,
			grounds,
		),
		moistFraction: assume(
			ratio(
				"Water content of the insulation, by volume. Wet insulation conducts several times as much heat as dry insulation.",
				0,
				0.15,
			),
			0,
			practice("dry, as insulation stays only under a cover that keeps rain out"),
		),
		weatherproof: assume(
			z.boolean().meta({ description: "Whether a cover keeps rain out of the insulation." }),
			true,
			practice("a jacket with sealed seams, as insulation outdoors needs"),
		),
		surfaceEmittance: assume(
			ratio("Thermal emittance of the insulation's outer surface.", 0.02, 1),
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

/** Insulation holds no more water than its moisture factor is known for. */
export function mostMoisture(pointer: string, { material, moistFraction }: Insulation): readonly RuleFault[] {
	const { mostMoisture: most, name } = INSULATION_MATERIALS[material];
	return moistFraction > most
		? [
				outOfRange(
					`${pointer}/moistFraction`,
					`must be at most ${most}, the wettest ${name} with known properties; ${fourDigits(moistFraction)} is not`,
				),
			]
		: [];
}
