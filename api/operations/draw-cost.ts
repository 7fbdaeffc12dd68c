import { TAPPING_PROFILE_IDS, type TappingProfileId, tappingProfile } from "../../src/index.ts";
import { fromSi } from "../wire/units.ts";

type Body = Readonly<Record<string, unknown>>;

/** What makes a simulated day more expensive than the typical one. */
export interface March {
	readonly layers: number;
	readonly hours: number;
	readonly step: number; // [s]
}

const HEAT_OF_A_LITRE = 1.163e-3; // kWh/K
const MOST_DRAWS = 200; // allowed by the schema
const SUBSTEPS = 10; // per layer content drawn
const SPENT = 18; // [-] e-foldings after which the heat left by a draw is negligible
const COST_OF_SUBSTEP = 8e-4; // [cost units]
const COST_OF_LAYER = 2e-5; // [cost units] per layer, each substep
const COST_OF_CHECK = 3e-4; // [cost units] of one draw in one step, whether it runs or not
const COST_OF_CALL = 3e-3; // [cost units] of one draw in a step in which it runs

interface Use {
	readonly hour: number; // hour of the day at which it starts
	readonly litres: number; // drawn from the tank, at most
	readonly flow: number; // [L/min]
}

/** Most that the draws add to the cost of one simulated day [cost units]. The tank is drawn in tenths of a layer's content until it
 *  is cold, so the cost follows how often the draws turn the tank over, but in any step no more often than empties it.
 *  @param body  a request, which may be unchecked */
export function drawnCost(body: Body, { layers, hours, step }: March): number {
	const uses = usesOf(body.draw);
	if (uses.length === 0) return 0;
	const steps = (hours * 3600) / step;
	const tank = record(body.tank);
	const litres = number(tank.fillL) ?? number(tank.volumeL) ?? 100;
	const turnovers = uses.reduce((sum, use) => sum + use.litres, 0) / litres;
	const calls = uses.reduce((sum, use) => sum + Math.min(steps, stepsOf(use, step)), 0);
	const emptied =
		Math.min(steps, stepsInUse(uses, step)) * turnoversUntilSpent(layers, number(tank.inletHeight));
	const substeps = calls + SUBSTEPS * layers * Math.min(turnovers, emptied);
	return (
		substeps * (COST_OF_SUBSTEP + COST_OF_LAYER * layers) +
		calls * COST_OF_CALL +
		uses.length * steps * COST_OF_CHECK
	);
}

/** Tank volumes after which a tank has the inlet's temperature: a chain of layers loses its excess as Poisson's tail falls, the part
 *  below a high inlet as a mixed tank does. */
function turnoversUntilSpent(layers: number, inletHeight = 0.05): number {
	const plug = 1 + (Math.sqrt(2 * SPENT * layers) + SPENT) / layers;
	return plug + SPENT * inletHeight;
}

const stepsOf = ({ litres, flow }: Use, step: number): number => 1 + (litres / flow) * (60 / step);

/** Steps in which at least one draw runs. */
function stepsInUse(uses: readonly Use[], step: number): number {
	const spans = uses
		.map(({ hour, litres, flow }) => [hour, hour + litres / flow / 60] as const)
		.sort(([a], [b]) => a - b);
	let until = Number.NEGATIVE_INFINITY;
	let steps = 0;
	for (const [from, to] of spans) {
		steps += (Math.max(to - Math.max(from, until), 0) * 3600) / step + (from > until ? 1 : 0);
		until = Math.max(until, to);
	}
	return steps;
}

/** The draws of a request; an invalid draw counts as none, since the schema refuses it. */
function usesOf(draw: unknown): readonly Use[] {
	const { draws, profile, scale, mainsTemperatureC, mixedTemperatureC } = record(draw);
	const mains = number(mainsTemperatureC) ?? 10;
	const mixed = number(mixedTemperatureC) ?? 40;
	const litresOf = (kwh: number, temperature: number) =>
		kwh / (HEAT_OF_A_LITRE * Math.max(1, temperature - mains));
	const listed = (Array.isArray(draws) ? draws.slice(0, MOST_DRAWS) : []).map((one: unknown): Use => {
		const { time, litres, energyKwh, temperatureC, flowLPerMin } = record(one);
		const volume = number(litres) ?? litresOf(number(energyKwh) ?? 0, number(temperatureC) ?? mixed);
		return { hour: hourOf(time) ?? 12, litres: volume, flow: number(flowLPerMin) ?? 6 };
	});
	if (!TAPPING_PROFILE_IDS.includes(profile as TappingProfileId)) return listed;
	const households = number(scale) ?? 1;
	const usual = tappingProfile(profile as TappingProfileId).map(({ minuteOfDay, energy, flow }): Use => {
		const litres = litresOf(fromSi.kilowattHours(energy * households), mixed);
		return { hour: minuteOfDay / 60, litres, flow: fromSi.litresPerMinute(flow * households) };
	});
	return [...listed, ...usual];
}

export const record = (value: unknown): Body =>
	typeof value === "object" && value !== null ? (value as Body) : {};

/** The value if it is a positive number, else undefined. */
export const number = (value: unknown): number | undefined =>
	typeof value === "number" && value > 0 ? value : undefined;

/** Hour of the day of a clock text, else undefined. */
export function hourOf(clock: unknown): number | undefined {
	const found = typeof clock === "string" ? /^(\d\d):(\d\d)$/.exec(clock) : null;
	return found ? Number(found[1]) + Number(found[2]) / 60 : undefined;
}
