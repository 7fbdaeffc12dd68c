import type { DayCase } from "../uncertainty/day-case.ts";

/** Why an improvement is not there to be made. */
export type Idle =
	| "alreadySo" // the plant has it already
	| "measuredWhole" // dish and receiver were measured together, and their parts are not known
	| "notOnThisReceiver"
	| "noRoom" // a longer coil or wider opening does not fit
	| "noSun"; // nothing to choose an opening by

/** A case improved, or why not. */
export type Changed = DayCase | Idle;
