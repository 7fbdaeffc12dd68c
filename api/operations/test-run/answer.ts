import { type Fluid, runAdvice, type TestRun, type TestRunReport } from "../../../src/index.ts";
import { isoText, isoTexts } from "../../wire/time-zone.ts";
import { fromSi } from "../../wire/units.ts";
import { wireAdvice } from "./advice.ts";
import { type Need, wireFactor } from "./factor.ts";
import type { TestRunPlan } from "./plan.ts";
import { MOST_ROWS, type TestRunRequest } from "./request.ts";
import type { TestRunResponse } from "./response.ts";
import { unlocksOf } from "./unlocks.ts";

type Answer = Omit<TestRunResponse, "assumed" | "cautions" | "methods">;

export function wireTestRun(request: TestRunRequest, plan: TestRunPlan, report: TestRunReport): Answer {
	const { run, timeZone, fluid } = plan;
	const factors = wireFactors(run, report, fluid);
	const comparison = wireComparison(request, report);
	return {
		timeZone,
		startTime: isoText(run.time[0]!, timeZone),
		endTime: isoText(run.time[run.time.length - 1]!, timeZone),
		...wireDelivered(report),
		standardPower: wireStandard(report),
		factors,
		...(Number.isFinite(report.factors.noise) && { readingNoiseK: report.factors.noise }),
		comparison,
		unlocks: unlocksOf({ factors, comparison }),
		advice: runAdvice(run, report, plan.elevation, MOST_ROWS).map(wireAdvice),
		series: wireSeries(plan, report),
	};
}

function wireDelivered({ delivered }: TestRunReport) {
	const { efficiency } = delivered;
	return {
		durationMin: fromSi.minutes(delivered.duration),
		startTemperatureC: fromSi.celsius(delivered.start),
		endTemperatureC: fromSi.celsius(delivered.end),
		heatCapacityKjPerK: fromSi.kilojoules(delivered.heatCapacity),
		deliveredKwh: fromSi.kilowattHours(delivered.heat),
		meanPowerW: delivered.power.value,
		meanPowerUncertaintyW: delivered.power.halfWidth,
		...(efficiency && { efficiency: efficiency.value, efficiencyUncertainty: efficiency.halfWidth }),
	};
}

function wireStandard({ standard }: TestRunReport): Answer["standardPower"] {
	if (standard.outcome === "undetermined") return { outcome: "undetermined", reason: standard.reason };
	return {
		outcome: standard.outcome,
		powerAt50KW: standard.singleFigure,
		uncertaintyFromResolutionW: standard.fromResolution,
		uncertaintyFromScatterW: standard.fromScatter,
		interceptW: standard.intercept,
		slopeWPerK: standard.slope,
		rSquared: standard.determination,
		intervalsCounted: standard.counted,
		intervalsLeftOut: standard.leftOut,
		extrapolated: !standard.within,
		asInStandard: standard.asInStandard,
	};
}

function wireFactors(run: TestRun, { factors }: TestRunReport, fluid: Fluid): Answer["factors"] {
	const { oilIn, oilOut } = run;
	const oil = oilIn && oilOut ? (meanOf(oilIn) + meanOf(oilOut)) / 2 : fluid.range[0];
	const flow = (capacityRate: number) =>
		fromSi.litresPerMinute(capacityRate / (fluid.density(oil) * fluid.heatCapacity(oil)));
	return {
		effectiveApertureM2: wireFactor(factors.effectiveAperture),
		opticalFactor: wireFactor(factors.opticalFactor),
		lossWPerK: wireFactor(factors.loss),
		tankLossWPerK: wireFactor(factors.tankLoss),
		collectorLossWPerK: wireFactor(factors.collectorLoss),
		oilCapacityRateWPerK: wireFactor(factors.capacityRate),
		oilFlowLPerMin: wireFactor(factors.capacityRate, flow),
		loopLossWPerK: wireFactor(factors.loopLoss),
	};
}

function meanOf(column: ArrayLike<number>): number {
	let sum = 0;
	for (let row = 0; row < column.length; row++) sum += column[row]!;
	return sum / column.length;
}

function wireComparison({ site, dish, run }: TestRunRequest, report: TestRunReport): Answer["comparison"] {
	const { gap, prediction, delivered } = report;
	if (!gap || !prediction) {
		const needs: Need[] = [];
		if (!site) needs.push("site");
		if (!dish) needs.push("dish");
		if (!run.beamIrradianceWPerM2) needs.push("beam");
		if (run.ambientC === undefined) needs.push("ambient");
		return { outcome: "notCompared", needs };
	}
	const [predicted] = prediction.run.thermometers;
	return {
		outcome: "compared",
		predictedMeanPowerW: delivered.power.value - gap.power.value,
		predictedEndTemperatureC: fromSi.celsius(predicted![predicted!.length - 1]!),
		gapW: gap.power.value,
		gapUncertaintyW: gap.power.halfWidth,
		endDifferenceK: gap.temperature,
		verdict: gap.verdict,
		explainedBy: [...gap.causes],
		causes: gap.shares.map(({ cause, ratio, power, differs }) => ({
			cause,
			ratio: wireFactor(ratio),
			...(power && { powerW: power.value, powerUncertaintyW: power.halfWidth }),
			differs,
		})),
		unexplainedW: gap.unexplained,
	};
}

function wireSeries(
	{ run, timeZone }: TestRunPlan,
	{ intervals, prediction }: TestRunReport,
): Answer["series"] {
	const predicted = prediction?.run.thermometers[0];
	return {
		time: isoTexts(
			intervals.map(({ to }) => run.time[to]!),
			timeZone,
		),
		lengthMin: intervals.map(({ length }) => fromSi.minutes(length)),
		waterTemperatureC: intervals.map(({ water }) => fromSi.celsius(water)),
		deliveredPowerW: intervals.map(({ power }) => power),
		powerUncertaintyW: intervals.map(({ uncertainty }) => uncertainty),
		...(run.beam && { beamIrradianceWPerM2: intervals.map(({ beam }) => beam) }),
		...(run.ambient && { ambientC: intervals.map(({ ambient }) => fromSi.celsius(ambient)) }),
		...(predicted && { predictedTemperatureC: intervals.map(({ to }) => fromSi.celsius(predicted[to]!)) }),
	};
}
