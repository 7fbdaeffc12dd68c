import { insulationMaterial } from "../heat/insulation.ts";
import { outletPipe, vesselBetween } from "../instant/task.ts";
import { bulkLimit } from "./bulk-limit.ts";
import type { Caution, HotFluid } from "./caution.ts";
import { bySeverity } from "./cautions.ts";
import { closedLine } from "./closed-line.ts";
import { concentratedLight } from "./concentrated-light.ts";
import { dishInWind } from "./dish-in-wind.ts";
import { drinkingWater } from "./drinking-water.ts";
import { filmLimit } from "./film-limit.ts";
import { fire } from "./fire.ts";
import { flatCoilInFocus } from "./flat-coil.ts";
import { hotSurfaces } from "./hot-surface.ts";
import { hotTap } from "./hot-tap.ts";
import type { InstantCircumstances } from "./instant.ts";
import { insulationAboveLimit } from "./insulation-limit.ts";
import { plasticsTooHot } from "./plastics.ts";
import { pumpStops } from "./pump-stops.ts";
import { instantFrost } from "./receiver-frost.ts";
import { standingWater } from "./standing-water.ts";
import { steamAtTap } from "./steam-at-tap.ts";
import { steamInCoil } from "./steam-in-coil.ts";

const RULES = [
	concentratedLight,
	standingWater,
	steamInCoil,
	steamAtTap,
	closedLine,
	hotTap,
	instantFrost,
	dishInWind,
];

/** All cautions about an instant heater, the most serious first. */
export function instantCautions(circumstances: InstantCircumstances): readonly Caution[] {
	const { dish, heater } = circumstances;
	return bySeverity([
		...flatCoilInFocus(heater.receiver, { dish, area: heater.apertureArea }),
		...RULES.flatMap((rule) => rule(circumstances)),
		...outletCautions(circumstances),
		...vesselCautions(circumstances),
	]);
}

/** Cautions about the pipe to the tap: its hot surface, its insulation at steam temperature, and plastic at the receiver. */
function outletCautions({ task, outcome, walls }: InstantCircumstances): readonly Caution[] {
	const outlet = outletPipe(task.arrangement);
	if (!outlet || !outcome.outlet) return [];
	const { length, insulation } = outlet;
	if (length === 0) return [];
	const insulated = insulation.thickness > 0;
	return [
		...hotSurfaces([["pipe to the tap", outcome.outlet.skin]]),
		...plasticsTooHot([["pipe to the tap", walls.outlet, Math.max(task.duty.wanted, outcome.stagnation)]]),
		...insulationAboveLimit(
			insulated ? [["pipe to the tap", insulationMaterial(insulation.material), task.duty.boiling]] : [],
		),
	];
}

/** Cautions about the oil of a vessel. */
function vesselCautions({ task, outcome, walls }: InstantCircumstances): readonly Caution[] {
	const between = vesselBetween(task.arrangement);
	if (!between || !outcome.vessel) return [];
	const { fluid, coil, limit } = between.vessel;
	const { levelsOff, filmAtCharge, charge } = outcome.vessel.charge;
	const hot: HotFluid = {
		plant: { loop: { fluid } },
		outcome: {
			maximumOil: levelsOff ?? limit,
			maximumFilm: filmAtCharge ?? charge,
			stagnation: outcome.stagnation,
		},
	};
	return [
		...[bulkLimit, filmLimit, fire, pumpStops].flatMap((rule) => rule(hot)),
		...drinkingWater({ plant: { loop: { fluid }, coil } }),
		...plasticsTooHot([
			["vessel", walls.vessel, hot.outcome.maximumOil],
			["coil", walls.coil, hot.outcome.maximumOil],
		]),
	];
}
