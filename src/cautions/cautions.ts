import { boiling } from "./boiling.ts";
import { bulkLimit } from "./bulk-limit.ts";
import type { Caution, CautionRule, Circumstances, Severity } from "./caution.ts";
import { concentratedLight } from "./concentrated-light.ts";
import { drinkingWater } from "./drinking-water.ts";
import { electricity } from "./electricity.ts";
import { elevation } from "./elevation.ts";
import { expansion } from "./expansion.ts";
import { fibres } from "./fibres.ts";
import { filmLimit } from "./film-limit.ts";
import { fire } from "./fire.ts";
import { flatCoil } from "./flat-coil.ts";
import { freezing } from "./freezing.ts";
import { heatTakenBack } from "./heat-taken-back.ts";
import { insulationLimit } from "./insulation-limit.ts";
import { legionella } from "./legionella.ts";
import { loopBoils } from "./loop-boils.ts";
import { metals } from "./metals.ts";
import { plastics } from "./plastics.ts";
import { pressure } from "./pressure.ts";
import { pumpStops } from "./pump-stops.ts";
import { receiverShade } from "./receiver-shade.ts";
import { scald } from "./scald.ts";
import { starvedFlow } from "./starved-flow.ts";
import { structure } from "./structure.ts";
import { tankFrost } from "./tank-frost.ts";
import { wetInsulation } from "./wet-insulation.ts";

const RULES: readonly CautionRule[] = [
	concentratedLight,
	flatCoil,
	scald,
	pressure,
	boiling,
	loopBoils,
	bulkLimit,
	filmLimit,
	fire,
	pumpStops,
	expansion,
	electricity,
	freezing,
	tankFrost,
	legionella,
	drinkingWater,
	insulationLimit,
	wetInsulation,
	metals,
	plastics,
	structure,
	fibres,
	starvedFlow,
	heatTakenBack,
	receiverShade,
	elevation,
];

const ORDER: readonly Severity[] = ["danger", "warning", "info"];

/** All cautions, the most serious first. */
export function cautionsOf(circumstances: Circumstances): readonly Caution[] {
	return bySeverity(RULES.flatMap((rule) => rule(circumstances)));
}

/** Cautions ordered by severity, the most serious first, otherwise unchanged. */
export function bySeverity(found: readonly Caution[]): readonly Caution[] {
	return ORDER.flatMap((severity) => found.filter((caution) => caution.severity === severity));
}
