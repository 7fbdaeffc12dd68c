import type { Fluid } from "../fluids/fluid.ts";
import { insulationMaterial } from "../heat/insulation.ts";
import { hasTube, type Receiver } from "../receiver/receiver.ts";
import { bulkLimit } from "./bulk-limit.ts";
import type { Caution, DayAir, HotFluid } from "./caution.ts";
import { bySeverity } from "./cautions.ts";
import { concentratedLight } from "./concentrated-light.ts";
import { fibresIn, paneOf } from "./fibres.ts";
import { filmLimit } from "./film-limit.ts";
import { fire } from "./fire.ts";
import { flatCoilInFocus, type LitBy } from "./flat-coil.ts";
import { insulationAboveLimit } from "./insulation-limit.ts";
import { pumpStops } from "./pump-stops.ts";
import { receiverFrost } from "./receiver-frost.ts";
import { wetLayers } from "./wet-insulation.ts";

/** A receiver alone. */
export interface ReceiverCircumstances {
	readonly receiver: Receiver;
	readonly litBy: LitBy | undefined; // undefined where its light is stated without a dish
	readonly fluid: Fluid;
	readonly hottest: HotFluid["outcome"];
	readonly air: DayAir;
	readonly weatherproof: boolean; // whether a cover keeps its insulation dry
}

/** All cautions about a receiver in the focus, the most serious first. */
export function receiverCautions(seen: ReceiverCircumstances): readonly Caution[] {
	const { receiver, litBy, fluid, hottest, air } = seen;
	const hot: HotFluid = { plant: { loop: { fluid } }, outcome: hottest };
	return bySeverity([
		...concentratedLight({}),
		...flatCoilInFocus(receiver, litBy),
		...[bulkLimit, filmLimit, fire, pumpStops].flatMap((rule) => rule(hot)),
		...receiverFrost(fluid, air),
		...laggingCautions(seen),
		...paneOf(receiver),
	]);
}

function laggingCautions({ receiver, hottest, weatherproof }: ReceiverCircumstances): readonly Caution[] {
	if (!hasTube(receiver) || receiver.insulation.thickness === 0) return [];
	const { insulation } = receiver;
	return [
		...insulationAboveLimit([["receiver", insulationMaterial(insulation.material), hottest.stagnation]]),
		...wetLayers([insulation], weatherproof),
		...fibresIn([insulation]),
	];
}
