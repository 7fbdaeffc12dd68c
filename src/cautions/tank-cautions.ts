import { insulationMaterial } from "../heat/insulation.ts";
import type { WallMaterialId } from "../heat/wall-materials.ts";
import type { TankCooling } from "../tank/cooling.ts";
import type { Tank } from "../tank/tank.ts";
import type { Caution, DayAir } from "./caution.ts";
import { bySeverity } from "./cautions.ts";
import { fibresIn } from "./fibres.ts";
import { hotSurfaces } from "./hot-surface.ts";
import { insulationAboveLimit } from "./insulation-limit.ts";
import { legionella } from "./legionella.ts";
import { plasticsTooHot } from "./plastics.ts";
import { pressure } from "./pressure.ts";
import { scald } from "./scald.ts";
import { tankFrost } from "./tank-frost.ts";
import { wetLayers } from "./wet-insulation.ts";

/** A tank alone. */
export interface TankCircumstances {
	readonly tank: Tank;
	readonly wall: WallMaterialId;
	readonly cooling: TankCooling;
	readonly air: DayAir; // outdoors
	readonly weatherproof: boolean; // whether a cover or a roof keeps its insulation dry
}

/** All cautions about a tank at rest, the most serious first. */
export function tankCautions(seen: TankCircumstances): readonly Caution[] {
	const { tank, wall, cooling, air, weatherproof } = seen;
	const { insulation } = tank;
	const hottest = Math.max(...tank.startTemperatures);
	const stored = {
		plant: { tank },
		outcome: {
			endTop: cooling.endTemperatures[0]!,
			endTemperatures: cooling.endTemperatures,
			series: { time: cooling.curve.time, tankMean: cooling.curve.mean },
		},
	};
	return bySeverity([
		...[scald, pressure, legionella].flatMap((rule) => rule(stored)),
		...plasticsTooHot([["tank", wall, hottest]]),
		...tankFrost({ plant: { tank }, air }),
		...hotSurfaces([["tank", cooling.surfaceTemperature]]),
		...(insulation.thickness > 0
			? insulationAboveLimit([["tank", insulationMaterial(insulation.material), hottest]])
			: []),
		...(insulation.thickness > 0 ? wetLayers([insulation], weatherproof) : []),
		...fibresIn([insulation]),
	]);
}
