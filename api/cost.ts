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
	rankImprovements: 25,
	assessInstantHeater: 15,
};
const RANGE = 40;
const USUAL_STEP = 120; // [s] that a march takes where none is asked

/** Cost of an operation with what it usually is asked. */
export function baseCost(operationId: string): number {
	const cost = COSTS[operationId];
	if (cost === undefined) throw new Error(`api/cost.ts states no cost for ${operationId}`);
	return cost;
}

/** Estimated cost of one request, from its body alone and before anything is computed.
 *  A range adds to it and a finer step multiplies it; what is no number or flag is left to the schema to refuse. */
export function estimatedCost(operationId: string, body: Readonly<Record<string, unknown>>): number {
	const range = body.withRange === true ? RANGE * (OF_A_RANGE[operationId] ?? 0) : 0;
	const step = typeof body.stepS === "number" && body.stepS > 0 ? body.stepS : USUAL_STEP;
	return Math.ceil((baseCost(operationId) + range) * Math.max(1, USUAL_STEP / step));
}
