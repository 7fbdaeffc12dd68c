import type { Weather } from "../sky/weather.ts";
import { emptyLedger, type Ledger } from "./ledger.ts";
import { NODES, RECEIVER, RETURN } from "./nodes.ts";
import type { DaySeries } from "./outcome.ts";
import type { PlantState } from "./state.ts";
import type { DishFacing, StepReport } from "./step.ts";

type Columns = { -readonly [K in keyof DaySeries]: number[] };

/** Running records of a simulated day: sums, extremes, events and rows of the series. Changed only by `recordStep` and `recordRow`. */
export interface DayRecords {
	readonly ledger: Ledger;
	readonly columns: Columns;
	maximumOil: number;
	maximumFilm: number;
	leastFlow: number; // Infinity until the pump runs
	starvedTime: number;
	tankLimitTime: number; // turned away while the sun shines, like the next
	oilLimitTime: number;
	onSunTime: number; // facing the sun while it shines
	pumpTime: number;
	boilTime: number; // NaN until it boils
	steps: number; // number of steps
	pumped: number; // volume since the previous row [m³]
	lastRow: { time: number; useful: number; toWater: number; tankLoss: number };
}

const STARVED = 0.95; // of the set flow; below it the pump counts as starved

export function emptyRecords(state: PlantState): DayRecords {
	const hottest = Math.max(...Array.from({ length: NODES }, (_, node) => state.loop.temperatures[node]!));
	return {
		ledger: emptyLedger(),
		columns: {
			time: [],
			sunAltitude: [],
			beam: [],
			ambient: [],
			tankMean: [],
			tankTop: [],
			tankBottom: [],
			oilHot: [],
			oilCold: [],
			flow: [],
			powerToFluid: [],
			powerToWater: [],
			tankLoss: [],
		},
		maximumOil: hottest,
		maximumFilm: hottest,
		leastFlow: Number.POSITIVE_INFINITY,
		starvedTime: 0,
		tankLimitTime: 0,
		oilLimitTime: 0,
		onSunTime: 0,
		pumpTime: 0,
		boilTime: Number.NaN,
		steps: 0,
		pumped: 0,
		lastRow: { time: Number.NaN, useful: 0, toWater: 0, tankLoss: 0 },
	};
}

/** Records a step of `dt` seconds that ended at `time`. */
export function recordStep(
	records: DayRecords,
	report: StepReport,
	setFlow: number,
	time: number,
	dt: number,
): void {
	records.steps += 1;
	records.maximumOil = Math.max(records.maximumOil, report.oil);
	records.maximumFilm = Math.max(records.maximumFilm, report.film);
	if (report.lit > 0) recordFacing(records, report.onSun, dt);
	if (report.drive.flow > 0) {
		records.pumpTime += dt;
		records.pumped += report.drive.flow * dt;
		records.leastFlow = Math.min(records.leastFlow, report.drive.flow);
		if (report.drive.flow < STARVED * setFlow) records.starvedTime += dt;
	}
	if (report.vented > 0 && Number.isNaN(records.boilTime)) records.boilTime = time;
}

function recordFacing(records: DayRecords, facing: DishFacing, dt: number): void {
	switch (facing) {
		case "onSun":
			records.onSunTime += dt;
			break;
		case "tankLimit":
			records.tankLimitTime += dt;
			break;
		case "oilLimit":
			records.oilLimitTime += dt;
			break;
		case "below":
			break;
		default:
			facing satisfies never;
	}
}

/** Adds a row to the series at instant `i` of the weather. */
export function recordRow(records: DayRecords, state: PlantState, weather: Weather, i: number): void {
	const { columns, ledger, lastRow } = records;
	const time = weather.time[i]!;
	const span = time - lastRow.time;
	const mean = (sum: number) => (span > 0 ? sum / span : 0);
	const layers = state.tank.temperatures;
	columns.time.push(time);
	columns.sunAltitude.push(weather.sunAltitude[i]!);
	columns.beam.push(weather.beam[i]!);
	columns.ambient.push(weather.ambient[i]!);
	columns.tankMean.push(meanTemperature(layers));
	columns.tankTop.push(layers[0]!);
	columns.tankBottom.push(layers[layers.length - 1]!);
	columns.oilHot.push(state.loop.temperatures[RECEIVER]!);
	columns.oilCold.push(state.loop.temperatures[RETURN]!);
	columns.flow.push(mean(records.pumped));
	columns.powerToFluid.push(mean(ledger.useful - lastRow.useful));
	columns.powerToWater.push(mean(ledger.toWater - lastRow.toWater));
	columns.tankLoss.push(mean(ledger.tankLoss - lastRow.tankLoss));
	records.pumped = 0;
	records.lastRow = { time, useful: ledger.useful, toWater: ledger.toWater, tankLoss: ledger.tankLoss };
}

/** Mean of the layers, which have equal mass [K]. */
export function meanTemperature(layers: Float64Array): number {
	let sum = 0;
	for (let i = 0; i < layers.length; i++) sum += layers[i]!;
	return sum / layers.length;
}
