import {
	type ChargedDraw,
	fluidById,
	type InstantOutcome,
	type InstantRow,
	type LevelRow,
	type NeededAperture,
	type ServedUse,
} from "../../../src/index.ts";
import { wireProvenance } from "../../parts/provenance.ts";
import { fromSi } from "../../wire/units.ts";
import { type FeedFlow, feedFlow, type InstantPlan } from "./plan.ts";
import type { InstantResponse } from "./response.ts";

function wireNeeded(needed: NeededAperture | undefined) {
	if (needed?.kind !== "found") return {};
	return { apertureNeededM2: needed.area, diameterNeededM: Math.sqrt((4 * needed.area) / Math.PI) };
}

/** @param needed  aperture for the wanted flow under this row's beam */
export function wireRow(
	row: InstantRow,
	needed: NeededAperture | undefined,
	plan: InstantPlan,
): InstantResponse["best"] {
	const { conditions, steady, leastFlow } = row;
	const { arrangement, duty } = plan.task;
	const flows = steady.kind === "flows";
	const power = flows ? steady.power : 0;
	const wall = flows ? steady.hottestWall : undefined;
	const outlet = flows ? steady.outlet : undefined;
	const feed = feedFlow(plan);
	return {
		beamIrradianceWPerM2: conditions.beam,
		ambientC: fromSi.celsius(conditions.ambient),
		sunAltitudeDeg: fromSi.degrees(conditions.altitude),
		serves: row.serving === "serves",
		flowLPerMin: flows ? feed(steady.massFlow) : 0,
		powerW: power,
		electricEquivalentKw: fromSi.kilowatts(power),
		efficiency: row.efficiency,
		...(wall !== undefined && {
			wallTemperatureC: fromSi.celsius(wall),
			wallSuperheatK: wall - duty.boiling,
		}),
		...(outlet && {
			leavingTemperatureC: fromSi.celsius(outlet.leaving),
			pipeLossW: outlet.loss,
		}),
		...(arrangement.kind === "direct" && { leastFlowLPerMin: feed(leastFlow) }),
		...(flows && steady.oil && { oilTemperatureC: fromSi.celsius(steady.oil.temperature) }),
		...wireNeeded(needed),
	};
}

export function wireLevel(row: LevelRow, plan: InstantPlan): InstantResponse["levels"][number] {
	const { drawn, leastFlow } = row;
	const { task } = plan;
	const base = wireRow(row, row.needed, plan);
	if (!drawn) return base;
	const { leaving, atTap } = drawn;
	return {
		...base,
		...(leaving !== undefined && { outletTemperatureC: fromSi.celsius(leaving) }),
		...(atTap !== undefined && { tapTemperatureC: fromSi.celsius(atTap) }),
		wantedFlowBoils: (task.wantedFlow ?? 0) < leastFlow,
	};
}

function wireDraw(draw: ChargedDraw, feed: FeedFlow) {
	switch (draw.kind) {
		case "sustained":
			return { outcome: "sustained" as const };
		case "coilTooSmall":
			return { outcome: "coilTooSmall" as const, coilFlowLPerMin: feed(draw.flowAtCharge) };
		case "lasts":
			return {
				outcome: "lasts" as const,
				lastsMin: fromSi.minutes(draw.duration),
				...(draw.recovery !== undefined && { recoveryMin: fromSi.minutes(draw.recovery) }),
			};
	}
}

export function wireUse(served: ServedUse, plan: InstantPlan): InstantResponse["uses"][number] {
	const { use, steady, fromCharge } = served;
	const feed = feedFlow(plan);
	const flow = steady.kind === "flows" ? steady.massFlow : 0;
	const demand = (massFlow: number, power: number, temperature: number) => ({
		flowLPerMin: feed(massFlow),
		temperatureC: fromSi.celsius(temperature),
		electricEquivalentKw: fromSi.kilowatts(power),
	});
	return {
		use: use.id,
		modest: demand(served.modestFlow, served.modestPower, use.modest.temperature),
		lavish: demand(served.lavishFlow, served.lavishPower, use.lavish.temperature),
		givenFlowLPerMin: feed(flow),
		givenShare: flow / served.modestFlow,
		...wireNeeded(served.needed),
		...(fromCharge && { fromCharge: wireDraw(fromCharge, feed) }),
		...wireProvenance(use),
	};
}

/** The pipe to the tap, and how long cold water runs from it before hot water: at the wanted flow, else at the steady one. */
export function wireOutlet(
	{ outlet, best }: InstantOutcome,
	plan: InstantPlan,
): NonNullable<InstantResponse["outletPipe"]> | undefined {
	if (!outlet) return undefined;
	const { duty, wantedFlow } = plan.task;
	const flow = wantedFlow ?? (best.steady.kind === "flows" ? best.steady.massFlow : 0);
	return {
		contentL: fromSi.litres(outlet.content),
		untilHotL: fromSi.litres(outlet.untilHot / fluidById("water").density(duty.cold)),
		...(flow > 0 && { untilHotMin: fromSi.minutes(outlet.untilHot / flow) }),
	};
}

export function wireVessel(
	outcome: InstantOutcome,
	plan: InstantPlan,
): NonNullable<InstantResponse["vessel"]> | undefined {
	const { arrangement } = plan.task;
	if (!outcome.vessel || arrangement.kind !== "vessel") return undefined;
	const { charge, draw } = outcome.vessel;
	return {
		chargeTemperatureC: fromSi.celsius(charge.charge),
		...(charge.levelsOff !== undefined && { levelsOffC: fromSi.celsius(charge.levelsOff) }),
		...(charge.warmUp !== undefined && { warmUpMin: fromSi.minutes(charge.warmUp) }),
		oilLimitC: fromSi.celsius(arrangement.vessel.limit),
		...(charge.toLimit !== undefined && { toLimitMin: fromSi.minutes(charge.toLimit) }),
		...(charge.filmAtCharge !== undefined && { filmTemperatureC: fromSi.celsius(charge.filmAtCharge) }),
		...(draw && { fromCharge: wireDraw(draw, feedFlow(plan)) }),
	};
}
