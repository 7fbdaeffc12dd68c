import type { Body, CostAdvice } from "./cost.ts";
import { drawnCost, hourOf, type March, number, record } from "./draw-cost.ts";

const USUAL_DAY = 25; // [cost units] of a warm-up with the usual step, layers and hours, which nobody draws from
const LEAST_DAY = 12; // [cost units] whatever the run, as sky, sizes and the answer itself take as much
const USUAL_STEP = 120; // [s]
const USUAL_HOURS = 12;
const USUAL_LAYERS = 10;
const MOST_LAYERS = 50; // beyond this, and below the least step, the request is refused for itself
const LEAST_STEP = 15; // [s]

/** How many times as much as the usual day a request's march costs: a finer step, a longer run, more layers and draws that turn
 *  the tank over multiply it. */
export function marchFactor(body: Body): number {
	const march = marchOf(body);
	return Math.max(LEAST_DAY, dayCost(march) + drawnCost(body, march)) / USUAL_DAY;
}

/** What makes a march expensive. */
export function marchAdvice(body: Body): CostAdvice {
	const march = marchOf(body);
	if (drawnCost(body, march) > dayCost(march)) return drawAdvice(record(body.draw));
	if (body.withRange === true && typeof body.stepS !== "number")
		return ["/withRange", "ask for it without a range"];
	if (typeof body.stepS === "number") return ["/stepS", "ask for a longer step"];
	return ["/seriesStepMin", "ask for rows further apart"];
}

/** The march that a request asks for, which may not have been checked. */
function marchOf(body: Body): March {
	const tank = record(body.tank);
	const layers = Array.isArray(tank.startTemperatureC) ? tank.startTemperatureC.length : USUAL_LAYERS;
	const from = hourOf(body.startTime) ?? 12 - USUAL_HOURS / 2;
	const to = hourOf(body.endTime) ?? 12 + USUAL_HOURS / 2;
	const row = 60 * (number(body.seriesStepMin) ?? Number.POSITIVE_INFINITY);
	return {
		layers: Math.min(MOST_LAYERS, number(tank.nodes) ?? layers),
		hours: Math.max(0, to - from),
		step: Math.max(LEAST_STEP, Math.min(number(body.stepS) ?? USUAL_STEP, row)), // a row of the series ends a step
	};
}

/** What marching through a day costs besides its draws: as many steps as it has, each somewhat more with more layers. */
const dayCost = ({ layers, hours, step }: March): number =>
	USUAL_DAY * (hours / USUAL_HOURS) * stepFactor(step) * (1 + (layers - USUAL_LAYERS) / 150);

/** Steps longer than the usual one save less than their number, as the plant divides them where its receiver warms fast. */
const stepFactor = (step: number): number =>
	step < USUAL_STEP ? USUAL_STEP / step : Math.sqrt(USUAL_STEP / step);

function drawAdvice({ profile, scale }: Body): CostAdvice {
	return profile !== undefined && typeof scale === "number" && scale > 1
		? [
				"/draw/scale",
				"so many households turn so small a tank over too often: ask for fewer, or fewer layers",
			]
		: ["/draw/draws", "they turn so small a tank over too often: ask for fewer or less, or fewer layers"];
}
