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

/** What to be careful of: first in reading the run, then in running the plant. */
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
				"The water took up more heat than the beam on the aperture can bring, or lost heat to a sun that warms it. Check the litres, the aperture, the beam sensor and its unit, and whether the thermometer reads the whole tank.",
		});
	if (isUnphysical(factors.loss) || isUnphysical(factors.tankLoss))
		cautions.push({
			code: "heatFromTheAir",
			severity: "warning",
			parameters: {},
			message:
				"The fit has the plant gain heat from colder air. Check the air thermometer's shade, the beam sensor's aim and whether something else warmed or cooled the tank.",
		});
	if (run.thermometers.length === 1)
		cautions.push({
			code: "oneThermometer",
			severity: "info",
			parameters: {},
			message:
				"One thermometer speaks for the whole tank. A tank that was not stirred keeps layers: a reading at the top shows more heat than it holds, one at the bottom less.",
		});
	return cautions;
}

// Of likelihood gained: white noise alone gains as much in one run of twenty, chi-square of one degree at the edge of its range
// (Self & Liang, J. Am. Stat. Assoc. 82 (1987) 605–610, from memory)
const SURE = 2.71 / 2;

/** An error that stays from row to row, about the fit of the whole plant where there is one, else about that of one lump. */
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
				"What the fit leaves of the readings does not only scatter from row to row: it strays by some {strays} over the run. The half-widths are wider for it, and hold the truth in some nine cases of ten rather than in 95 %. A thermometer or beam sensor that drifts, water drawn or stirred, a shadow, or a plant unlike the one fitted does that.",
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
		const air = { coldest: Math.min(...Array.from<number>(sky.ambient)), source: "stated" } as const; // read beside the run
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
