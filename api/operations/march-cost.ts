import type { Body, CostAdvice } from "./cost.ts";
import { drawnCost, hourOf, type March, number, record } from "./draw-cost.ts";

const TYPICAL_DAY = 25; // [cost units] of a warm-up with the default step, layers and hours, without draws
const LEAST_DAY = 12; // [cost units] of any run, for sky, design and the answer itself
const DEFAULT_STEP = 120; // [s]
const DEFAULT_HOURS = 12;
const DEFAULT_LAYERS = 10;
const MOST_LAYERS = 50; // more layers, or a step below LEAST_STEP, are refused by the schema
const LEAST_STEP = 15; // [s]

/** Cost of a simulated day relative to the typical one: it grows with a finer step, a longer run, more layers and draws that turn
 *  the tank over. */
export function marchFactor(body: Body): number {
	const march = marchOf(body);
	return Math.max(LEAST_DAY, dayCost(march) + drawnCost(body, march)) / TYPICAL_DAY;
}

/** The field that makes a simulated day expensive. */
export function marchAdvice(body: Body): CostAdvice {
	const march = marchOf(body);
	if (drawnCost(body, march) > dayCost(march)) return drawAdvice(record(body.draw));
	if (body.withRange === true && typeof body.stepS !== "number") return ["/withRange", "omit withRange"];
	if (typeof body.stepS === "number") return ["/stepS", "send a longer stepS"];
	return ["/seriesStepMin", "send a longer seriesStepMin"];
}

/** The day that a request describes, which may be unchecked. */
function marchOf(body: Body): March {
	const tank = record(body.tank);
	const layers = Array.isArray(tank.startTemperatureC) ? tank.startTemperatureC.length : DEFAULT_LAYERS;
	const from = hourOf(body.startTime) ?? 12 - DEFAULT_HOURS / 2;
	const to = hourOf(body.endTime) ?? 12 + DEFAULT_HOURS / 2;
	const row = 60 * (number(body.seriesStepMin) ?? Number.POSITIVE_INFINITY);
	return {
		layers: Math.min(MOST_LAYERS, number(tank.nodes) ?? layers),
		hours: Math.max(0, to - from),
		step: Math.max(LEAST_STEP, Math.min(number(body.stepS) ?? DEFAULT_STEP, row)), // every row of the series ends a step
	};
}

/** Cost of a day without its draws: proportional to its steps, each slightly more expensive with more layers. */
const dayCost = ({ layers, hours, step }: March): number =>
	TYPICAL_DAY * (hours / DEFAULT_HOURS) * stepFactor(step) * (1 + (layers - DEFAULT_LAYERS) / 150);

/** Steps longer than the default save less than their number, as the plant divides them where its receiver warms fast. */
const stepFactor = (step: number): number =>
	step < DEFAULT_STEP ? DEFAULT_STEP / step : Math.sqrt(DEFAULT_STEP / step);

function drawAdvice({ profile, scale }: Body): CostAdvice {
	return profile !== undefined && typeof scale === "number" && scale > 1
		? [
				"/draw/scale",
				"this many households turn over this tank too often: send a smaller scale, or fewer tank.nodes",
			]
		: [
				"/draw/draws",
				"these draws turn over this tank too often: send fewer or smaller draws, or fewer tank.nodes",
			];
}
