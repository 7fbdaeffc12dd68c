import { ICE_POINT } from "../constants.ts";
import type { Column, TestRun } from "./run.ts";

/** The checked columns. */
type Rows = Pick<TestRun, "time" | "thermometers" | "beam" | "pumpOn">;

/** A row that is physically impossible, or that follows too long a gap. */
export interface RowFault {
	readonly kind: "backwards" | "gap" | "ice" | "boils" | "spike";
	readonly thermometer: number | undefined; // index, top first; undefined for a fault of the times
	readonly row: number;
	readonly value: number; // the reading [K], or the time since the previous row [s]
	readonly limit: number; // limit that it exceeds, in the same unit
}

const SHORT = 600; // [s] a span that is never a gap
const GAP = 5; // over the median span
const DARK = 5; // [W/m²] a pyrheliometer's zero error; common practice, no source
const AMISS = 2; // [K] tolerance of the boiling point for thermometer and weather; common practice, no source
const SPIKE = 10; // [K] difference from both neighbours on the same side, within ten minutes of each: a loose contact, not water

/** All faulty rows: times that do not increase, a gap during a run in the sun, ice, steam, and a reading that jumps and returns.
 *  A gap is more than ten minutes and more than five times the usual span; with the pump off or without sun it is not a gap.
 *  @param boilingPoint  of the tank's water [K] */
export function rowFaults(run: Rows, boilingPoint: number): readonly RowFault[] {
	return [
		...timeFaults(run),
		...run.thermometers.flatMap((column, thermometer) => [
			...rangeFaults(column, thermometer, boilingPoint),
			...spikes(run.time, column, thermometer),
		]),
	];
}

function timeFaults(run: Rows): RowFault[] {
	const { time } = run;
	const spans = Array.from({ length: time.length - 1 }, (_, i) => time[i + 1]! - time[i]!);
	const usual = spans.toSorted((a, b) => a - b)[Math.floor(spans.length / 2)]!;
	const longest = Math.max(SHORT, GAP * usual);
	return spans.flatMap((span, i): RowFault[] => {
		const fault = { thermometer: undefined, row: i + 1, value: span };
		if (!(span > 0)) return [{ kind: "backwards", ...fault, limit: 0 }];
		return span > longest && !atRest(run, i) ? [{ kind: "gap", ...fault, limit: longest }] : [];
	});
}

function atRest({ pumpOn, beam }: Rows, row: number): boolean {
	if (pumpOn !== undefined) return !pumpOn[row];
	return beam !== undefined && beam[row]! <= DARK && beam[row + 1]! <= DARK;
}

function rangeFaults(column: Column, thermometer: number, boilingPoint: number): RowFault[] {
	const faults: RowFault[] = [];
	for (let row = 0; row < column.length; row++) {
		const value = column[row]!;
		if (!(value >= ICE_POINT)) faults.push({ kind: "ice", thermometer, row, value, limit: ICE_POINT });
		if (value > boilingPoint + AMISS)
			faults.push({ kind: "boils", thermometer, row, value, limit: boilingPoint });
	}
	return faults;
}

function spikes(time: Column, column: Column, thermometer: number): RowFault[] {
	const faults: RowFault[] = [];
	for (let row = 1; row < column.length - 1; row++) {
		const [before, after] = [column[row]! - column[row - 1]!, column[row]! - column[row + 1]!];
		const near = time[row]! - time[row - 1]! <= SHORT && time[row + 1]! - time[row]! <= SHORT;
		if (near && before * after > 0 && Math.min(Math.abs(before), Math.abs(after)) > SPIKE)
			faults.push({ kind: "spike", thermometer, row, value: column[row]!, limit: column[row - 1]! });
	}
	return faults;
}
