import { afterAll, describe, expect, it } from "vitest";
import { hostel } from "../../api/demo/hostel.ts";
import { morningRun, twoReadings } from "../../api/demo/test-runs.ts";
import { type Answer, type Body, RaykettleProblem } from "../../sdk/index.ts";
import { failures, parsed, raykettle } from "./service.ts";

type Request = Body<"assessTestRun">;
type Report = Answer<"assessTestRun">;

afterAll(() => expect(failures).toEqual([]));

async function assessed(request: Request): Promise<Report> {
	const answer = await raykettle.assessTestRun(request);
	parsed("assessTestRun", answer);
	expect(JSON.stringify(answer)).not.toMatch(/null|NaN/);
	const pointers = answer.assumed.map(({ pointer }) => pointer);
	expect(new Set(pointers).size).toBe(pointers.length);
	for (const column of Object.values(answer.series)) expect(column).toHaveLength(answer.series.time.length);
	return answer;
}

async function refused(request: unknown): Promise<RaykettleProblem> {
	const error = await raykettle.assessTestRun(request as Request).catch((caught: unknown) => caught);
	if (!(error instanceof RaykettleProblem)) throw new Error("the request was answered");
	return error;
}

const morning: Request = morningRun.value;
const changed = (run: Partial<Request["run"]>): Request => ({ ...morning, run: { ...morning.run, ...run } });
const faults = (problem: RaykettleProblem) => problem.errors.map(({ pointer, code }) => [pointer, code]);

describe("200", () => {
	it("finds what keeps the hostel's morning behind its prediction", async () => {
		const answer = await assessed(morning);
		const { comparison } = answer;
		if (comparison.outcome !== "compared") throw new Error("not compared");
		expect(comparison.verdict).toBe("explained");
		expect(comparison.explainedBy).toEqual(["optics"]);
		const [optics] = comparison.causes;
		if (optics?.ratio.outcome !== "determined") throw new Error("undetermined");
		expect(optics.ratio.low).toBeLessThan(0.86); // what the example's mirror was given
		expect(optics.ratio.high).toBeGreaterThan(0.86);
		expect(comparison.gapW).toBeCloseTo(answer.meanPowerW - comparison.predictedMeanPowerW, 4);
		expect(answer.timeZone).toBe("Africa/Casablanca");
		expect(answer.deliveredKwh).toBeCloseTo((answer.meanPowerW * answer.durationMin) / 60_000, 5);
		// ΔT over the morning × water and wall
		expect(answer.deliveredKwh).toBeCloseTo((38.2 * answer.heatCapacityKjPerK) / 3600, 1);
		expect(answer.cautions.map(({ code }) => code)).toEqual(
			expect.arrayContaining(["concentratedLight", "oneThermometer"]),
		);
		expect(answer.methods.some(({ source }) => source?.includes("S580"))).toBe(true);
	});

	it("says what would tell the losses of that morning more closely, and how closely", async () => {
		const { advice, comparison } = await assessed(morning);
		expect(advice.map(({ code }) => code)).toEqual([
			"longerRun",
			"hotterTank",
			"closerRows",
			"finerThermometer",
		]);
		if (comparison.outcome !== "compared") throw new Error("not compared");
		const losses = comparison.causes.find(({ cause }) => cause === "losses")!.ratio;
		if (losses.outcome !== "determined") throw new Error(losses.reason);
		for (const { expected, message } of advice) {
			expect(message).toMatch(/^[A-Z].*\.$/);
			const names = expected.map(({ factor }) => factor);
			expect(names).not.toContain("comparison.causes.optics"); // told to a fortieth
			const ratio = expected.find(({ factor }) => factor === "comparison.causes.losses")!;
			expect(ratio.halfWidthNow).toBeCloseTo((losses.high - losses.low) / 2, 6);
			expect(ratio.halfWidth).toBeLessThan(0.8 * ratio.halfWidthNow);
		}
		const [longer, hotter, closer, finer] = advice;
		expect(longer!.addedMin).toBeCloseTo(180, 6);
		expect(longer!.endTemperatureC).toBeGreaterThan(55); // from 47 °C on, as it rose before
		expect(longer!.endTemperatureC).toBeLessThan(82); // ten below boiling at 2350 m
		expect(longer!.intervalMin).toBeUndefined();
		expect(hotter!.addedMin).toBeGreaterThan(longer!.addedMin!);
		expect(hotter!.endTemperatureC).toBeGreaterThan(82 - 0.5);
		expect(hotter!.endTemperatureC).toBeLessThan(83); // at the row that passes it; five minutes warm it by 0.8 K
		expect(closer!.intervalMin).toBeCloseTo(1 / 3, 6); // 10 s would make more rows than a run may have
		expect(finer!.readingNoiseK).toBe(0.01);
	});

	it("advises nothing where it can tell nothing, or where all is told", async () => {
		expect((await assessed(twoReadings.value)).advice).toEqual([]);
		const { time, tankTemperatureC } = morning.run;
		expect((await assessed({ run: { time, tankTemperatureC }, tank: { volumeL: 200 } })).advice).toEqual([]);
		const small = await assessed({ ...morning, dish: { diameterM: 1 } });
		for (const { expected } of small.advice)
			expect(expected.map(({ factor }) => factor)).not.toContain("factors.opticalFactor"); // impossible, not loose
	});

	it("says undetermined of two readings, and what would tell more", async () => {
		const answer = await assessed(twoReadings.value);
		for (const factor of Object.values(answer.factors)) expect(factor.outcome).toBe("undetermined");
		expect(answer.standardPower).toEqual({ outcome: "undetermined", reason: "tooFewIntervals" });
		expect(answer.meanPowerW).toBeGreaterThan(0);
		expect(answer.comparison).toEqual({ outcome: "notCompared", needs: ["site"] });
		const unlocks = Object.fromEntries(answer.unlocks.map(({ need, pointers }) => [need, pointers]));
		expect(unlocks.moreRows).toEqual(["/run/time"]);
		expect(unlocks.oilInAndOut).toEqual(["/run/oilInC", "/run/oilOutC"]);
		expect(unlocks.site).toEqual(["/site"]);
		expect(answer.assumed.map(({ pointer }) => pointer)).toContain("/thermometerResolutionK");
	});

	it("takes times and temperatures alone, and names every column that would tell more", async () => {
		const { time, tankTemperatureC } = morning.run;
		const answer = await assessed({ run: { time, tankTemperatureC }, tank: { volumeL: 200 } });
		expect(answer.efficiency).toBeUndefined();
		expect(answer.factors.lossWPerK).toMatchObject({ reason: "notMeasured" });
		const needs = answer.unlocks.map(({ need }) => need);
		for (const need of ["beam", "ambient", "dish", "site"]) expect(needs).toContain(need);
		expect(answer.series.beamIrradianceWPerM2).toBeUndefined();
	});

	it("reads several thermometers, fewer parts and a steady air", async () => {
		const single = morning.run.tankTemperatureC as readonly number[];
		const run = { ...morning.run, ambientC: 4, tankTemperatureC: [single.map((t) => t + 2), single] };
		const { site, dish, tank } = morning;
		const answer = await assessed({ run, site: site!, dish: dish!, tank, thermometerResolutionK: 0.05 });
		expect(answer.startTemperatureC).toBeCloseTo(9.6, 6);
		expect(answer.comparison.outcome).toBe("compared");
		const assumed = answer.assumed.map(({ pointer }) => pointer);
		for (const pointer of ["/receiver/kind", "/loop/fluid", "/coil/lengthM"])
			expect(assumed).toContain(pointer);
		expect(assumed).not.toContain("/tank/startTemperatureC");
		expect(answer.cautions.map(({ code }) => code)).not.toContain("oneThermometer");
	});

	it("turns the oil's rise into its flow", async () => {
		const beam = morning.run.beamIrradianceWPerM2!;
		const water = morning.run.tankTemperatureC as readonly number[];
		const answer = await assessed(
			changed({ oilInC: water.map((t) => t + 8), oilOutC: water.map((t, i) => t + 8 + beam[i]! / 60) }),
		);
		const { oilFlowLPerMin: flow, oilCapacityRateWPerK: rate } = answer.factors;
		if (flow.outcome !== "determined" || rate.outcome !== "determined") throw new Error("undetermined");
		// VG 32 oil at 40 °C: 860 kg/m³ and 1.95 kJ/kgK (mineral oils, from memory)
		expect(flow.value / ((rate.value / (860 * 1950)) * 60_000)).toBeCloseTo(1, 1);
	});

	it("tells the tank's loss of a night, and compares it", async () => {
		const hours = Array.from({ length: 61 }, (_, i) => i / 6);
		const night = {
			time: hours.map(
				(h) => `${new Date(Date.UTC(2025, 0, 15, 19) + h * 3.6e6).toISOString().slice(0, 19)}Z`,
			),
			tankTemperatureC: hours.map((h) => Math.round(10 * (2 + 48 * Math.exp(-h / 90))) / 10), // 90 h towards 2 °C
			beamIrradianceWPerM2: hours.map(() => 0),
			ambientC: 2,
		};
		const answer = await assessed({ ...morning, run: night });
		const { tankLossWPerK: loss } = answer.factors;
		if (loss.outcome !== "determined") throw new Error(loss.reason);
		expect(loss.value / (answer.heatCapacityKjPerK / 90 / 3.6)).toBeCloseTo(1, 1);
		expect(answer.comparison).toMatchObject({ outcome: "compared", causes: [{ cause: "tankLoss" }] });
		expect(answer.efficiency).toBeUndefined();
	});

	it("starts from water at the ice point", async () => {
		const cold = (morning.run.tankTemperatureC as readonly number[]).map((t) => t - 8.6);
		expect((await assessed(changed({ tankTemperatureC: cold }))).startTemperatureC).toBeCloseTo(0, 6);
	});

	it("cautions of more heat than the sun brings", async () => {
		const answer = await assessed({ ...morning, dish: { diameterM: 1 } });
		expect(answer.cautions.map(({ code }) => code)).toContain("moreHeatThanSun");
		expect(answer.factors.opticalFactor).toMatchObject({ outcome: "undetermined", reason: "unphysical" });
	});

	it("warns of readings that stray, and by how much", async () => {
		const steady = await assessed(morning);
		const column = morning.run.tankTemperatureC as readonly number[];
		const swing = (row: number) => 1.5 * Math.sin((4 * Math.PI * row) / column.length);
		const { cautions } = await assessed(
			changed({ tankTemperatureC: column.map((t, row) => t + swing(row)) }),
		);
		const told = cautions.find(({ code }) => code === "strayingRun");
		expect(steady.cautions.map(({ code }) => code)).not.toContain("strayingRun");
		expect(told?.severity).toBe("info");
		expect(told!.parameters.straysK).toBeGreaterThan(0.5);
		expect(told!.parameters.straysK).toBeLessThan(5);
		expect(told!.message).toMatch(/by about [\d.]+ K over the run/);
	});

	it("gives the same answer twice", async () => {
		expect(await assessed(morning)).toEqual(await assessed(morning));
	});
});

describe("400", () => {
	it("names every fault of form", async () => {
		const problem = await refused({
			run: { time: ["yesterday", "2025-01-15T10:00:00Z"], tankTemperature: [1, 2] },
		});
		expect(problem.status).toBe(400);
		const pointers = problem.errors.map(({ pointer }) => pointer);
		for (const pointer of ["/run/time/0", "/run/tankTemperatureC", "/run/tankTemperature", "/tank"])
			expect(pointers).toContain(pointer);
	});

	it.each([
		[[8.6, null], "/run/tankTemperatureC/1"],
		[[8.6], "/run/tankTemperatureC"],
		[[8.6, 400], "/run/tankTemperatureC/1"],
	])("refuses the column %j", async (tankTemperatureC, pointer) => {
		const time = ["2025-01-15T10:00:00Z", "2025-01-15T10:10:00Z"];
		const problem = await refused({ run: { time, tankTemperatureC }, tank: { volumeL: 100 } });
		expect(problem.status).toBe(400);
		expect(problem.errors.map((fault) => fault.pointer)).toContain(pointer);
	});
});

describe("422", () => {
	const { time } = morning.run;
	const water = morning.run.tankTemperatureC as readonly number[];
	const put = (row: number, value: number) => water.map((t, i) => (i === row ? value : t));

	it("names every bad row at once", async () => {
		const problem = await refused(
			changed({
				time: time.map((text, i) => (i === 12 ? time[10]! : text)),
				tankTemperatureC: water.map((t, i) => (i === 20 ? -3 : i === 60 ? 105 : i === 40 ? t + 15 : t)),
			}),
		);
		expect(problem.status).toBe(422);
		expect(faults(problem)).toEqual(
			expect.arrayContaining([
				["/run/time/12", "contradictory"],
				["/run/tankTemperatureC/20", "impossible"],
				["/run/tankTemperatureC/60", "impossible"],
				["/run/tankTemperatureC/40", "impossible"],
			]),
		);
	});

	it("names the row after a gap", async () => {
		const cut = <T>(column: readonly T[]) => column.filter((_, i) => i < 20 || i > 32);
		const run = {
			time: cut(time),
			tankTemperatureC: cut(water),
			beamIrradianceWPerM2: cut(morning.run.beamIrradianceWPerM2!),
			ambientC: 4,
		};
		expect(faults(await refused({ ...morning, run }))).toEqual([["/run/time/20", "out_of_range"]]);
	});

	it("names the thermometer of several", async () => {
		const problem = await refused(changed({ tankTemperatureC: [water, put(30, 99)] }));
		expect(faults(problem)).toContainEqual(["/run/tankTemperatureC/1/30", "impossible"]);
	});

	it("knows that water boils at 92 °C up there", async () => {
		const end = water.length - 1;
		expect(faults(await refused(changed({ tankTemperatureC: put(end, 96) })))).toEqual([
			[`/run/tankTemperatureC/${end}`, "impossible"],
		]);
	});

	it("names the end of a run of many days", async () => {
		const days = Array.from({ length: 90 }, (_, i) => `${new Date(i * 3.6e6).toISOString().slice(0, 19)}Z`);
		const run = { time: days, tankTemperatureC: days.map(() => 20) };
		expect(faults(await refused({ run, tank: { volumeL: 100 } }))).toEqual([["/run/time/89", "too_large"]]);
	});

	it("names columns of other lengths", async () => {
		const problem = await refused(changed({ ambientC: [1, 2, 3], pumpOn: [true, true] }));
		expect(faults(problem)).toEqual([
			["/run/ambientC", "contradictory"],
			["/run/pumpOn", "contradictory"],
		]);
	});

	it("names what contradicts in the plant, with a site and without", async () => {
		const start = await refused({ ...morning, tank: { ...hostel.request.tank, startTemperatureC: 9 } });
		expect(faults(start)).toEqual([["/tank/startTemperatureC", "contradictory"]]);
		const sizes = { ...morning, dish: { diameterM: 2, apertureM2: 3 } };
		expect(faults(await refused(sizes)).map(([pointer]) => pointer)).toContain("/dish/apertureM2");
		const { run, tank } = morning;
		const alone = await refused({ run, tank: { ...tank, fillL: 900 }, dish: {} });
		expect(faults(alone).map(([pointer]) => pointer)).toEqual(["/dish", "/tank/fillL"]);
		const offset = await refused({ run, tank, dish: { kind: "offsetPolar", mirrorAreaM2: 8 } });
		expect(faults(offset)).toEqual([["/dish/kind", "contradictory"]]);
	});
});
