import { describe, expect, it } from "vitest";
import { DomainError } from "../../../src/errors.ts";
import { testRunReport } from "../../../src/test-run/report.ts";
import { type RowFault, rowFaults } from "../../../src/test-run/row-faults.ts";
import type { TestRun } from "../../../src/test-run/run.ts";
import { runOf, threeHours, trajectory } from "./runs.ts";

const sound = runOf(threeHours, trajectory({ optical: 0.6, loss: 5, tankLoss: 1 }, threeHours));
const BOILING = 365; // [K]

const faults = (run: TestRun): readonly (readonly [RowFault["kind"], number])[] =>
	rowFaults(run, BOILING).map(({ kind, row }) => [kind, row]);

const withTime = (row: number, by: number) => ({
	...sound,
	time: Float64Array.from(sound.time, (t, i) => (i >= row ? t + by : t)),
});
const withReading = (row: number, value: number) => ({
	...sound,
	thermometers: [Float64Array.from(sound.thermometers[0]!, (t, i) => (i === row ? value : t))],
});

describe("bad rows", () => {
	it("are none in a sound run", () => expect(faults(sound)).toEqual([]));

	it("are those where time runs backwards or stands still", () => {
		expect(faults(withTime(40, -300))).toEqual([["backwards", 40]]);
		expect(faults(withTime(40, -60))).toEqual([["backwards", 40]]);
	});

	it("are those after a gap, unless the plant was at rest in it", () => {
		expect(faults(withTime(100, 1200))).toEqual([["gap", 100]]);
		expect(faults(withTime(100, 400))).toEqual([]);
		const pumpOn = Array.from(sound.time, (_, i) => i !== 99);
		expect(faults({ ...withTime(100, 1200), pumpOn })).toEqual([]);
		const beam = Float64Array.from(sound.beam!, (g, i) => (i === 99 || i === 100 ? 0 : g));
		expect(faults({ ...withTime(100, 1200), beam })).toEqual([]);
	});

	it("are ice, steam and a reading that jumps and comes back", () => {
		expect(faults(withReading(0, 270))).toContainEqual(["ice", 0]);
		expect(faults(withReading(7, Number.NaN))).toContainEqual(["ice", 7]);
		expect(faults(withReading(180, 368))).toEqual([["boils", 180]]);
		expect(faults(withReading(90, sound.thermometers[0]![90]! + 11))).toEqual([["spike", 90]]);
		expect(faults(withReading(90, sound.thermometers[0]![90]! - 11))).toEqual([["spike", 90]]);
		expect(faults(withReading(90, sound.thermometers[0]![90]! + 9))).toEqual([]);
	});

	it("end a report, as does a column that is short or holds no number", () => {
		const refused = (run: TestRun) => expect(() => testRunReport(run, undefined, 0)).toThrow(DomainError);
		refused(withTime(40, -300));
		refused({ ...sound, beam: Array.from(sound.beam!).slice(1) });
		refused({ ...sound, ambient: Float64Array.from(sound.ambient!, (t, i) => (i === 3 ? Number.NaN : t)) });
		refused(runOf({ ...threeHours, rows: 1 }, Float64Array.of(290)));
		expect(() => testRunReport(sound, undefined, 0)).not.toThrow();
	});
});
