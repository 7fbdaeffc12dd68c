import type { DayCase } from "../uncertainty/day-case.ts";

/** Reason why an improvement cannot be made. */
export type Idle =
	| "alreadySo" // the plant already has it
	| "measuredWhole" // dish and receiver were measured together, and their parts are unknown
	| "notOnThisReceiver"
	| "noRoom" // a longer coil or wider aperture does not fit
	| "noSun"; // without sun there is no optimum of the aperture

/** An improved case, or the reason why it cannot be improved. */
export type Changed = DayCase | Idle;
