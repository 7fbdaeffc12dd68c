import type { Grounds } from "./grounds.ts";

/** Times that follow from the sun and the calendar. */
export type TimeSubject = "run.start" | "run.end" | "window.start" | "window.end";

/** Sizes, limits and readings that follow from the rest of a description. */
export type SizeSubject =
	| "sky.diffuse"
	| "dish.rimAngle"
	| "dish.focalLength"
	| "receiver.innerDiameter"
	| "receiver.depth"
	| "receiver.tube.length"
	| "loop.pump.casingLossCoefficient"
	| "loop.control.highLimit"
	| "loop.control.oilLimit"
	| "loop.expansionVolume"
	| "coil.coilDiameter"
	| "coil.length"
	| "tank.fill"
	| "tank.height"
	| "tank.diameter"
	| "tank.startTemperature"
	| "tank.layers"
	| "tank.reliefPressure"
	| "vessel.diameter"
	| "vessel.limit"
	| "vessel.coil.coilDiameter"
	| "vessel.coil.length";

/** Every value that a design may have to assume. */
export type Subject = TimeSubject | SizeSubject;

/** A value omitted from a description: what is used instead, in SI, and why. */
export interface Assumption<S extends Subject = SizeSubject> {
	readonly subject: S;
	readonly value: number;
	readonly grounds: Grounds;
}

/** A complete part, and what had to be assumed to complete it. */
export interface Designed<T, S extends Subject = SizeSubject> {
	readonly design: T;
	readonly assumed: readonly Assumption<S>[];
}

/** The value stated; if it is omitted, the one that follows from the rest, as an assumption. */
export function statedOr<S extends Subject>(
	stated: number | undefined,
	subject: S,
	value: number,
	grounds: Grounds,
): Designed<number, S> {
	return stated === undefined
		? { design: value, assumed: [{ subject, value, grounds }] }
		: { design: stated, assumed: [] };
}
