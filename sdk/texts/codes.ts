import type { components } from "../schema.d.ts";

type Schemas = components["schemas"];

/** Cautions that a warm-up never gives: those of an instant heater, of a part that is asked about alone, and of a test run's readings. */
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

/** Parts of a plant that a sentence can name; the contract has them as text. */
type Part = "tank" | "coil" | "receiver" | "loop" | "supplyPipe" | "returnPipe" | "furtherTube";

/** Last part of a problem's `type`; the contract has it as text. */
export type ProblemKind =
	| "invalid-request"
	| "malformed-json"
	| "malformed-request"
	| "unauthorized"
	| "forbidden"
	| "not-found"
	| "method-not-allowed"
	| "not-acceptable"
	| "request-timeout"
	| "length-required"
	| "payload-too-large"
	| "unsupported-media-type"
	| "out-of-range"
	| "contradictory"
	| "impossible"
	| "too-large"
	| "no-convergence"
	| "too-many-requests"
	| "headers-too-large"
	| "abandoned"
	| "internal"
	| "overloaded";

type Wall = NonNullable<Schemas["Tank"]["wallMaterial"]>;
/** Walls that a caution can name: those with a limit of temperature. */
type Plastic = Extract<Wall, "polyethylene">;
type Texts<Code extends string> = Readonly<Record<Code, string>>;
type Ranking = Schemas["SensitivityResponse"];

/** Names of things: what a sentence's parameters hold in English, by the contract's ids. */
export interface Names {
	readonly fluids: Texts<Schemas["Fluid"]["id"]>;
	readonly insulations: Texts<Schemas["InsulationMaterial"]["id"]>;
	readonly plastics: Texts<Plastic>;
	readonly parts: Texts<Part>;
}

/** A sentence for each caution of a warm-up, and for each reason why it reaches no target. A new code of the contract is a compile
 *  error in each language until it has its words here or below. */
export interface WarmUp {
	readonly cautions: Texts<Exclude<Schemas["Caution"]["code"], Elsewhere>>;
	readonly reasons: Texts<Schemas["Reason"]["code"]>;
}

/** Words for all other codes, which the widget does not carry. */
export interface Further {
	readonly metals: Texts<Exclude<Wall, Plastic>>;
	readonly cautions: Texts<Elsewhere>;
	readonly instantReasons: Texts<Schemas["InstantReason"]["code"]>;
	readonly problems: Texts<ProblemKind>;
	readonly faults: Texts<Schemas["FieldFault"]["code"]>; // of a `{field}`
	readonly profiles: Texts<Schemas["TappingProfile"]["id"]>;
	readonly improvements: Texts<Schemas["Improvement"]["id"]>;
	readonly notApplicable: Texts<Ranking["notApplicable"][number]["code"]>;
	readonly rankingAdvice: Texts<Schemas["RankingAdvice"]["code"]>;
	readonly runAdvice: Texts<Schemas["RunAdvice"]["code"]>;
	readonly runNeeds: Texts<Schemas["Unlock"]["need"]>;
}
