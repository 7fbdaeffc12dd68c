import type { Method } from "../methods.ts";
import { stagnationTemperature } from "../receiver/balance.ts";
import type { Conditions } from "./conditions.ts";
import { enthalpyRise } from "./duty.ts";
import type { Heater } from "./heater.ts";
import { type InstantHours, instantHours } from "./hours.ts";
import { instantMethods } from "./methods.ts";
import { type NeededAperture, neededAperture } from "./needed-aperture.ts";
import { vesselModel } from "./oil-vessel.ts";
import { type DrawnFlow, drawnFlow, type OutletOutcome, outletOutcome } from "./outlet-outcome.ts";
import { type InstantRow, instantRow } from "./row.ts";
import { type ServedUse, servedUses } from "./served-uses.ts";
import { flowOf } from "./steady.ts";
import { type InstantTask, outletPipe, vesselBetween } from "./task.ts";
import { type Findings, type InstantReason, reasons, servedShare, type Verdict, verdict } from "./verdict.ts";
import { type ChargedDraw, chargedDraw, type VesselCharge, vesselCharge } from "./vessel-charge.ts";

/** Result under one of the requested constant suns. */
export interface LevelRow extends InstantRow {
	readonly drawn: DrawnFlow | undefined; // the wanted flow directly through the focus
	readonly needed: NeededAperture | undefined; // for the wanted flow under this sun
}

/** The vessel under the best sun. */
export interface VesselOutcome {
	readonly charge: VesselCharge;
	readonly draw: ChargedDraw | undefined; // of the wanted flow
}

/** Whether an instant heater meets the demand, and what it delivers. */
export interface InstantOutcome {
	readonly verdict: Verdict;
	readonly wantedPower: number | undefined; // of the wanted flow [W]
	readonly servedShare: number; // share of the window's duration, or of the number of levels, 0–1
	readonly reasons: readonly InstantReason[];
	readonly levels: readonly LevelRow[];
	readonly hours: InstantHours | undefined;
	readonly best: InstantRow; // under the sun with the greatest flow, within the window if there is one
	readonly weakest: InstantRow; // under the sun with the smallest flow
	readonly needed: NeededAperture | undefined; // for the wanted flow at all times: under the weakest sun
	readonly uses: readonly ServedUse[]; // under the best sun
	readonly outlet: OutletOutcome | undefined; // for water directly through the focus
	readonly vessel: VesselOutcome | undefined;
	readonly stagnation: number; // of the receiver without flow, under the reference sun [K]
	readonly methods: readonly Method[];
}

const STAGNATION_SKY = { ambient: 298.15, wind: 0 }; // [K], [m/s] as for a plant's day
const STAGNATION_BEAM = 1000; // [W/m²]

/** Comparison of an instant heater with its demand: under constant suns, and over the hours of a day.
 *  Each row is a steady state: the minute or so in which heater and pipe warm up is neglected; that of the pipe is reported separately. */
export function instantOutcome(heater: Heater, task: InstantTask): InstantOutcome {
	const levels = task.levels.map((conditions) => levelRow(heater, task, conditions));
	const { pressure } = task.levels[0]!;
	const hours = task.day && instantHours(heater, task, task.day, pressure);
	const ranked = [...(hours?.windowRows ?? levels)].sort(byYield);
	const best = ranked.at(-1)!;
	const weakest = ranked[0]!;
	const needed = neededFor(heater, task, weakest.conditions);
	const vessel = vesselOutcome(heater, task, best.conditions);
	const findings: Findings = { levels, hours, best, needed, charge: vessel?.charge, draw: vessel?.draw };
	const reference = { ...best.conditions, ...STAGNATION_SKY };
	return {
		verdict: verdict(findings),
		wantedPower: task.wantedFlow === undefined ? undefined : task.wantedFlow * enthalpyRise(task.duty),
		servedShare: servedShare(findings),
		reasons: reasons(heater, task, findings),
		levels,
		hours,
		best,
		weakest,
		needed,
		uses: servedUses(heater, task, best.conditions, vessel?.charge.charge ?? task.duty.wanted),
		outlet: outletOutcome(task, best),
		vessel,
		stagnation: stagnationTemperature(heater.receiver, STAGNATION_BEAM * heater.absorbingArea, reference),
		methods: instantMethods(heater, task, [...levels, ...(hours?.rows ?? [])]),
	};
}

/** Order by flow, and without flow by beam. */
function byYield(a: InstantRow, b: InstantRow): number {
	return flowOf(a.steady) - flowOf(b.steady) || a.conditions.beam - b.conditions.beam;
}

function levelRow(heater: Heater, task: InstantTask, conditions: Conditions): LevelRow {
	const { arrangement, duty, wantedFlow } = task;
	const outlet = outletPipe(arrangement);
	const drawn =
		wantedFlow !== undefined && outlet ? drawnFlow(heater, outlet, duty, wantedFlow, conditions) : undefined;
	return {
		...instantRow(heater, task, conditions),
		drawn,
		needed: neededFor(heater, task, conditions),
	};
}

function neededFor(heater: Heater, task: InstantTask, conditions: Conditions): NeededAperture | undefined {
	const { arrangement, duty, wantedFlow, largestAperture } = task;
	if (wantedFlow === undefined) return undefined;
	return neededAperture(arrangement, heater, duty, wantedFlow, largestAperture, conditions);
}

function vesselOutcome(heater: Heater, task: InstantTask, conditions: Conditions): VesselOutcome | undefined {
	const { arrangement, duty, wantedFlow } = task;
	const between = vesselBetween(arrangement);
	if (!between) return undefined;
	const { ambient, wind, pressure } = conditions;
	const model = vesselModel(between.vessel, ambient, wind, pressure);
	const charge = vesselCharge(heater, model, between.start, conditions);
	return {
		charge,
		draw:
			wantedFlow === undefined
				? undefined
				: chargedDraw(heater, model, charge.charge, duty, wantedFlow, conditions),
	};
}
