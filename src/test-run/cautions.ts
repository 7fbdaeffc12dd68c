import type { Build, Caution } from "../cautions/caution.ts";
import { cautionsOf } from "../cautions/cautions.ts";
import { concentratedLight } from "../cautions/concentrated-light.ts";
import { scald } from "../cautions/scald.ts";
import type { Plant } from "../plant/plant.ts";
import type { Delivered } from "./delivered.ts";
import type { Factor } from "./factor.ts";
import type { Factors } from "./factors.ts";
import type { Gap } from "./gap.ts";
import { storeHeatCapacity } from "./heat-content.ts";
import type { PredictedRun, RunSky } from "./predicted-run.ts";
import { rowCautions } from "./row-cautions.ts";
import { type Column, type TestRun, waterTemperature } from "./run.ts";

type Fits = { readonly factors: Factors; readonly gap: Gap | undefined };
type Known = { readonly plant: Plant; readonly build: Build; readonly sky: RunSky };

/** Cautions: first about the readings of the run, then about the operation of the plant. */
export function runCautions(
	run: TestRun,
	fits: Fits,
	gained: Delivered,
	known: Known | undefined,
	prediction: PredictedRun | undefined,
): readonly Caution[] {
	return [
		...rowCautions(run, fits.factors.noise),
		...readingCautions(run, fits.factors, gained),
		...strayingRun(run, fits),
		...hazards(run, known, prediction),
	];
}

function readingCautions(run: TestRun, factors: Factors, { efficiency }: Delivered): Caution[] {
	const cautions: Caution[] = [];
	const impossible = isUnphysical(factors.opticalFactor) || isUnphysical(factors.effectiveAperture);
	if (impossible || (efficiency && efficiency.value - efficiency.halfWidth > 1))
		cautions.push({
			code: "moreHeatThanSun",
			severity: "warning",
			parameters: {},
			message:
				"The water gained more heat than the beam on the aperture contains, or lost heat while the sun heated it. Check the volume, the aperture, the beam sensor and its unit, and whether the thermometer represents the complete tank.",
		});
	if (isUnphysical(factors.loss) || isUnphysical(factors.tankLoss))
		cautions.push({
			code: "heatFromTheAir",
			severity: "warning",
			parameters: {},
			message:
				"According to the fit, the plant gains heat from colder air. Check the shade of the air thermometer, the aim of the beam sensor and whether something else heated or cooled the tank.",
		});
	if (run.thermometers.length === 1)
		cautions.push({
			code: "oneThermometer",
			severity: "info",
			parameters: {},
			message:
				"One thermometer represents the complete tank. A tank that was not stirred is stratified: a reading at the top overstates its heat, one at the bottom understates it.",
		});
	return cautions;
}

// Gain of log-likelihood that white noise alone reaches in one run of twenty: chi-square of one degree at the boundary of its range
// (Self & Liang, J. Am. Stat. Assoc. 82 (1987) 605–610, from memory)
const SURE = 2.71 / 2;

/** An error that persists from row to row, about the fit of the complete plant where there is one, else about that of one lump. */
function strayingRun(run: TestRun, { factors, gap }: Fits): Caution[] {
	const lump = factors.lump?.fit;
	const { evidence, straying } = gap?.noise ?? {
		evidence: lump?.evidence ?? 0,
		straying: lump?.disturbance ?? 0,
	};
	if (evidence < SURE) return [];
	const duration = run.time[run.time.length - 1]! - run.time[0]!;
	const value = (straying * Math.sqrt(duration)) / storeHeatCapacity(run, waterTemperature(run, 0));
	return [
		{
			code: "strayingRun",
			severity: "info",
			parameters: { strays: { kind: "difference", value } },
			message:
				"The residuals of the fit do not only scatter from row to row: they drift by about {strays} over the run. The half-widths include that, but contain the true value in about nine cases of ten rather than in 95 %. Possible causes are a drifting thermometer or beam sensor, water drawn or stirred, a shadow, or a plant that differs from the model.",
		},
	];
}

const isUnphysical = (factor: Factor) => factor.outcome === "undetermined" && factor.reason === "unphysical";

function hazards(
	run: TestRun,
	known: Known | undefined,
	prediction: PredictedRun | undefined,
): readonly Caution[] {
	if (known && prediction) {
		const { plant, build, sky } = known;
		const { task, outcome } = prediction;
		const air = { coldest: Math.min(...Array.from<number>(sky.ambient)), source: "stated" } as const; // measured during the run
		return cautionsOf({ plant, build, task, air, outcome });
	}
	const last = run.time.length - 1;
	const ends = run.thermometers.map((column) => hottest(column));
	const tankMean = Array.from(run.time, (_, row) => waterTemperature(run, row));
	const outcome = {
		endTop: Math.max(...ends),
		endTemperatures: Float64Array.from(run.thermometers, (column) => column[last]!),
		series: { time: Array.from(run.time), tankMean },
	};
	return [...concentratedLight(undefined), ...scald({ plant: { tank: run.tank }, outcome })];
}

function hottest(column: Column): number {
	let most = Number.NEGATIVE_INFINITY;
	for (let row = 0; row < column.length; row++) most = Math.max(most, column[row]!);
	return most;
}
