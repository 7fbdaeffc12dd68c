import { insulationMaterial } from "../heat/insulation.ts";
import type { WallMaterialId } from "../heat/wall-materials.ts";
import type { ColdStart } from "../loop/cold-start.ts";
import type { Loop } from "../loop/loop.ts";
import type { LoopConditions, LoopLosses } from "../loop/losses.ts";
import { bulkLimit } from "./bulk-limit.ts";
import type { Caution, DayAir } from "./caution.ts";
import { bySeverity } from "./cautions.ts";
import { starvedStart } from "./cold-start.ts";
import { electricity } from "./electricity.ts";
import { fibresIn } from "./fibres.ts";
import { freezing } from "./freezing.ts";
import { hotSurfaces } from "./hot-surface.ts";
import { insulationAboveLimit } from "./insulation-limit.ts";
import { plasticsTooHot } from "./plastics.ts";
import { wetLayers } from "./wet-insulation.ts";

/** A loop alone. */
export interface LoopCircumstances {
	readonly loop: Loop;
	readonly conditions: LoopConditions;
	readonly losses: LoopLosses;
	readonly starts: readonly ColdStart[];
	readonly air: DayAir;
	readonly walls: {
		readonly supply: WallMaterialId;
		readonly return: WallMaterialId;
		readonly further: readonly WallMaterialId[]; // of the further tubes in the circuit
	};
	readonly weatherproof: boolean; // whether a cover keeps its insulation dry
}

/** All cautions about a loop, the most serious first. */
export function loopCautions(seen: LoopCircumstances): readonly Caution[] {
	const { loop, conditions, losses, starts, air, walls, weatherproof } = seen;
	const layers = [loop.supply.insulation, loop.return.insulation];
	const hottest = Math.max(conditions.supplyTemperature, conditions.returnTemperature);
	const hot = { maximumOil: hottest, maximumFilm: hottest, stagnation: hottest };
	const places = [
		["supply pipe", loop.supply, conditions.supplyTemperature, losses.supply],
		["return pipe", loop.return, conditions.returnTemperature, losses.return],
	] as const;
	return bySeverity([
		...bulkLimit({ plant: { loop }, outcome: hot }),
		...electricity({ plant: { loop } }),
		...freezing({ plant: { loop }, air }),
		...hotSurfaces(places.map(([place, , , { loss }]) => [place, loss.surfaceTemperature])),
		...insulationAboveLimit(
			places
				.filter(([, pipe]) => pipe.insulation.thickness > 0)
				.map(([place, pipe, inside]) => [place, insulationMaterial(pipe.insulation.material), inside]),
		),
		...plasticsTooHot([
			["supply pipe", walls.supply, conditions.supplyTemperature],
			["return pipe", walls.return, conditions.returnTemperature],
			...[...new Set(walls.further)].map((wall) => ["further tube", wall, hottest] as const),
		]),
		...wetLayers(layers, weatherproof),
		...fibresIn(layers),
		...starvedStart(loop.fluid.name, starts),
	]);
}
