import type { WallMaterialId } from "../heat/wall-materials.ts";
import type { DayOutcome } from "../plant/outcome.ts";
import type { Plant, Task } from "../plant/plant.ts";
import type { CautionCode } from "./codes.ts";

export type Severity = "danger" | "warning" | "info";

/** A quantity in a caution, in SI, with its kind, so that the edge can express it in another unit. */
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

/** A caution. The message is in English; `{name}` is a placeholder for the parameter of that name. */
export interface Caution {
	readonly code: CautionCode;
	readonly severity: Severity;
	readonly parameters: Readonly<Record<string, Quantity | string>>;
	readonly message: string;
}

/** Construction of a plant that does not affect its heat. */
export interface Build {
	readonly tankWall: WallMaterialId;
	readonly coilWall: WallMaterialId;
	readonly pipeWalls: readonly WallMaterialId[]; // supply, return
	readonly weatherproof: boolean; // whether a cover keeps all outdoor insulation dry
}

/** The air around a plant on the day. */
export interface DayAir {
	readonly coldest: number; // [K]
	readonly source: "stated" | "assumed"; // assumed air does not exclude frost
}

/** Input of a rule. */
export interface Circumstances {
	readonly plant: Plant;
	readonly build: Build;
	readonly task: Task;
	readonly air: DayAir;
	readonly outcome: DayOutcome;
}

/** A rule for one hazard; empty when it does not arise. A rule with a smaller input also serves other operations. */
export type CautionRule<Seen = Circumstances> = (circumstances: Seen) => readonly Caution[];

/** Highest temperatures of a fluid: the input of the rules about hot fluid. */
export interface HotFluid {
	readonly plant: { readonly loop: Pick<Plant["loop"], "fluid"> };
	readonly outcome: Pick<DayOutcome, "maximumOil" | "maximumFilm" | "stagnation">;
}

/** A tank and its final state: the input of the rules about stored water. */
export interface StandingTank {
	readonly plant: { readonly tank: Plant["tank"] };
	readonly outcome: Pick<DayOutcome, "endTop" | "endTemperatures"> & {
		readonly series: Pick<DayOutcome["series"], "time" | "tankMean">;
	};
}

export const temperature = (value: number): Quantity => ({ kind: "temperature", value });
