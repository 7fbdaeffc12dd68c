import type { WallMaterialId } from "../heat/wall-materials.ts";
import type { DayOutcome } from "../plant/outcome.ts";
import type { Plant, Task } from "../plant/plant.ts";
import type { CautionCode } from "./codes.ts";

export type Severity = "danger" | "warning" | "info";

/** A number that a caution speaks of, in SI, with what kind of quantity it is so that an edge can say it in its own unit. */
export interface Quantity {
	readonly kind:
		| "temperature"
		| "difference"
		| "pressure"
		| "volume"
		| "area"
		| "length"
		| "duration"
		| "power"
		| "irradiance"
		| "energy"
		| "ratio";
	readonly value: number;
}

/** One thing to be careful of. The message is English; `{name}` stands for the parameter of that name. */
export interface Caution {
	readonly code: CautionCode;
	readonly severity: Severity;
	readonly parameters: Readonly<Record<string, Quantity | string>>;
	readonly message: string;
}

/** How a plant is built, beyond what its heat depends on. */
export interface Build {
	readonly tankWall: WallMaterialId;
	readonly coilWall: WallMaterialId;
	readonly pipeWalls: readonly WallMaterialId[]; // supply, return
	readonly weatherproof: boolean; // whether all insulation out of doors is kept dry by a cover
}

/** The air around a plant on the day asked about. */
export interface DayAir {
	readonly coldest: number; // [K]
	readonly source: "stated" | "assumed"; // assumed air, which nobody looked up, rules no frost out
}

/** What a rule may look at. */
export interface Circumstances {
	readonly plant: Plant;
	readonly build: Build;
	readonly task: Task;
	readonly air: DayAir;
	readonly outcome: DayOutcome;
}

/** One hazard: nothing when it does not arise. A rule that looks at less than a whole run serves answers that know less. */
export type CautionRule<Seen = Circumstances> = (circumstances: Seen) => readonly Caution[];

/** How hot a fluid can get: all that the rules about hot fluid look at. */
export interface HotFluid {
	readonly plant: { readonly loop: Pick<Plant["loop"], "fluid"> };
	readonly outcome: Pick<DayOutcome, "maximumOil" | "maximumFilm" | "stagnation">;
}

/** A tank and how it ends: all that the rules about stored water look at. */
export interface StandingTank {
	readonly plant: { readonly tank: Plant["tank"] };
	readonly outcome: Pick<DayOutcome, "endTop" | "endTemperatures"> & {
		readonly series: Pick<DayOutcome["series"], "time" | "tankMean">;
	};
}

export const temperature = (value: number): Quantity => ({ kind: "temperature", value });
