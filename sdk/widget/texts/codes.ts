import type { components } from "../../schema.d.ts";

type Schemas = components["schemas"];

/** Cautions that a warm-up never gives, and the widget has no words for: those of an instant heater, of a part that is asked about
 *  alone, and of the readings of a test run. */
type Elsewhere =
	| "closedLine"
	| "coarseReadings"
	| "coilFreezes"
	| "dishInWind"
	| "heatFromTheAir"
	| "hotSurface"
	| "moreHeatThanSun"
	| "oneThermometer"
	| "receiverFreezes"
	| "sparseBeam"
	| "standingWaterBoils"
	| "starvedColdStart"
	| "steamAtTap"
	| "steamInCoil"
	| "strayingRun"
	| "tapRunsHot"
	| "waterDrawn";

/** A sentence for each caution of a warm-up: a new code of the contract is a compile error until it has one, or stands above. */
export type Hazards = Readonly<Record<Exclude<Schemas["Caution"]["code"], Elsewhere>, string>>;

/** A sentence for each reason why a target is not reached. */
export type Reasons = Readonly<Record<Schemas["Reason"]["code"], string>>;
