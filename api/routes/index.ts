import type { Operation } from "../operation.ts";
import { batchOf } from "./batch.ts";
import { boilingPoint } from "./boiling-point.ts";
import { dishOpticsOperation } from "./dish-optics.ts";
import { fluid } from "./fluid.ts";
import { fluids } from "./fluids.ts";
import { live, ready } from "./health.ts";
import { instant } from "./instant-feasibility.ts";
import { insulations } from "./insulations.ts";
import { loopLossesOperation } from "./loop-losses.ts";
import { meta } from "./meta.ts";
import { receiverLossesOperation } from "./receiver-losses.ts";
import { sensitivity } from "./sensitivity.ts";
import { sunDay } from "./sun-day.ts";
import { sunPosition } from "./sun-position.ts";
import { tankCoolingOperation } from "./tank-cooling.ts";
import { tappingProfiles } from "./tapping-profiles.ts";
import { testRun } from "./test-run.ts";
import { warmUp } from "./warm-up.ts";

/** What can be asked alone, and in a batch. */
const single: readonly Operation[] = [
	sunPosition,
	sunDay,
	boilingPoint,
	dishOpticsOperation,
	receiverLossesOperation,
	loopLossesOperation,
	fluids,
	fluid,
	insulations,
	tankCoolingOperation,
	tappingProfiles,
	warmUp,
	instant,
	testRun,
	sensitivity,
	meta,
	live,
	ready,
];

/** Every operation of the service, in the order in which the contract shows them. */
export const operations: readonly Operation[] = [...single, batchOf(single)];
