import { batchOf } from "./batch/batch.ts";
import { boilingPoint } from "./boiling-point.ts";
import { dishOpticsOperation } from "./dish-optics/route.ts";
import { fluidProperties } from "./fluid.ts";
import { fluids } from "./fluids.ts";
import { live, ready } from "./health.ts";
import { instant } from "./instant-heater/route.ts";
import { insulations } from "./insulations.ts";
import { loopLossesOperation } from "./loop-losses/route.ts";
import { metaOf } from "./meta.ts";
import type { Operation } from "./operation.ts";
import { receiverLossesOperation } from "./receiver-losses/route.ts";
import { sensitivity } from "./sensitivity/route.ts";
import { sunDay } from "./sun-day/route.ts";
import { sunPosition } from "./sun-position.ts";
import { tankCoolingOperation } from "./tank-cooling/route.ts";
import { tappingProfiles } from "./tapping-profiles.ts";
import { testRun } from "./test-run/route.ts";
import { warmUp } from "./warm-up/route.ts";

/** Operations that can be called alone and in a batch. */
const single: readonly Operation[] = [
	sunPosition,
	sunDay,
	boilingPoint,
	dishOpticsOperation,
	receiverLossesOperation,
	loopLossesOperation,
	fluids,
	fluidProperties,
	insulations,
	tankCoolingOperation,
	tappingProfiles,
	warmUp,
	instant,
	testRun,
	sensitivity,
	metaOf(() => single),
	live,
	ready,
];

/** Every operation of the service, in the order in which the contract shows them. */
export const operations: readonly Operation[] = [...single, batchOf(single)];
