import { ProblemError } from "../problem/problem.ts";
import { drawnCost, hourOf, type March, number, record } from "./draw-cost.ts";

/** What an answer costs: about a millisecond of one core each unit, rounded up from a measurement of the contract's examples. */
export const COSTS: Readonly<Record<string, number>> = {
	getSunPosition: 1,
	getSunDay: 10,
	getBoilingPoint: 1,
	getDishOptics: 5,
	getReceiverLosses: 5,
	getLoopLosses: 5,
	getFluids: 1,
	getFluid: 1,
	getInsulations: 1,
	getTankCooling: 5,
	getTappingProfiles: 1,
	warmUpTank: 25,
	rankImprovements: 200,
	assessInstantHeater: 15,
	assessTestRun: 150,
	getMeta: 1,
	getLiveness: 1,
	getReadiness: 1,
};

/** What one working out of a range costs, and a range takes at most 40: a day's march, or an instant heater's answer. */
const OF_A_RANGE: Readonly<Record<string, number>> = {
	warmUpTank: 25,
	rankImprovements: 65, // each improvement in the same draws
	assessInstantHeater: 15,
};
const RANGE = 40;
const USUAL_STEP = 120; // [s] that a march takes where none is asked

/** How many days a range works out at most, and how long one step of a day takes [s]: measured. */
const DAYS_OF_A_RANGE = { warmUpTank: 40, rankImprovements: 430 } as const;
const STEP = 15e-6;
const MARGIN = 2; // for a slower machine

/** Refuses a range, once its first day is marched, where the rest would surely outlast the time for one answer: a plant whose
 *  dish turns away and back all day takes ten times the usual steps.
 *  @param time   for one answer [s]
 *  @param steps  of the day as stated */
export function rangeWithin(time: number, operationId: keyof typeof DAYS_OF_A_RANGE, steps: number): void {
	const days = DAYS_OF_A_RANGE[operationId];
	if (steps * days * STEP * MARGIN <= time) return;
	const detail = `The range would work out some ${days} days, and this plant's takes ${steps} steps, short ones wherever its fluid nears a limit or its dish turns: longer than the ${time} s that one answer may take here. Ask without a range, or for a longer step if yours is short`;
	throw new ProblemError("too-large", detail, [
		{ in: "body", pointer: "/withRange", detail, code: "too_large" },
	]);
}

/** Cost of an operation with what it usually is asked. */
export function baseCost(operationId: string): number {
	const cost = COSTS[operationId];
	if (cost === undefined) throw new Error(`api/operations/cost.ts states no cost for ${operationId}`);
	return cost;
}

/** What costs no more than this is worked out where it arrives: handing it to another thread would cost as much. */
export const LIGHT = 1;

type Body = Readonly<Record<string, unknown>>;

interface Item {
	readonly operation: string;
	readonly body: Body;
}

/** Estimated cost of one request, before anything is computed: a range adds to it; a finer step, a longer run, more layers and
 *  draws that turn the tank over multiply it; a batch costs what its items cost. Measured cost of generated requests lies within
 *  some three times of it either way; a plant whose dish turns away and back all day can take ten times as long. */
export function estimatedCost(operationId: string, body: Body): number {
	if (operationId === "runBatch")
		return (body.items as readonly Item[]).reduce(
			(sum, item) => sum + estimatedCost(item.operation, item.body),
			0,
		);
	const base = baseCost(operationId);
	if (operationId === "assessTestRun") return testRunCost(base, body);
	const range = body.withRange === true ? RANGE * (OF_A_RANGE[operationId] ?? 0) : 0;
	if (!DAYS.has(operationId)) return base + range;
	const march = marchOf(body);
	const day = dayCost(march) + drawnCost(body, march);
	return Math.ceil(((base + range) * Math.max(LEAST_DAY, day)) / COSTS.warmUpTank!);
}

/** Operations that march a plant through a day. */
const DAYS = new Set(["warmUpTank", "rankImprovements"]);
const LEAST_DAY = 12; // [cost units] whatever the run, as sky, sizes and the answer itself take as much
const USUAL_HOURS = 12;
const USUAL_LAYERS = 10;
const MOST_LAYERS = 50; // beyond this, and below the least step, the request is refused for itself
const LEAST_STEP = 15; // [s]

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
	COSTS.warmUpTank! * (hours / USUAL_HOURS) * stepFactor(step) * (1 + (layers - USUAL_LAYERS) / 150);

/** Steps longer than the usual one save less than they leave out, as the plant divides them where its receiver warms fast. */
const stepFactor = (step: number): number =>
	step < USUAL_STEP ? USUAL_STEP / step : Math.sqrt(USUAL_STEP / step);

const ROWS = 61; // of the run that the cost is stated for

/** A run of measurements costs by its rows, and less than that where they come faster than it marches. */
function testRunCost(base: number, body: Body): number {
	const { time } = record(body.run);
	const more = (Array.isArray(time) ? time.length : ROWS) / ROWS;
	return Math.ceil(Math.max(5, base * Math.min(more, Math.sqrt(more))));
}

/** The estimated cost of a checked request; one beyond the budget is refused, with what makes it dear. */
export function costWithin(budget: number, operationId: string, body: Body): number {
	const cost = estimatedCost(operationId, body);
	if (cost <= budget) return cost;
	const [pointer, advice] = dearest(operationId, body);
	const detail = `This request costs ${cost} units and one may cost ${budget}; ${advice}`;
	throw new ProblemError("too-large", detail, [{ in: "body", pointer, detail, code: "too_large" }]);
}

function dearest(operationId: string, body: Body): readonly [pointer: string, advice: string] {
	if (operationId === "runBatch") return ["/items", "send the items in several batches"];
	if (operationId === "assessTestRun") return ["/run/time", "send fewer rows"];
	const march = marchOf(body);
	if (drawnCost(body, march) > dayCost(march)) return dearestDraw(record(body.draw));
	if (body.withRange === true && typeof body.stepS !== "number")
		return ["/withRange", "ask for it without a range"];
	if (typeof body.stepS === "number") return ["/stepS", "ask for a longer step"];
	return ["/seriesStepMin", "ask for rows further apart"];
}

function dearestDraw({ profile, scale }: Body): readonly [pointer: string, advice: string] {
	return profile !== undefined && typeof scale === "number" && scale > 1
		? [
				"/draw/scale",
				"so many households turn so small a tank over too often: ask for fewer, or fewer layers",
			]
		: ["/draw/draws", "they turn so small a tank over too often: ask for fewer or less, or fewer layers"];
}
