import { absorbedLight } from "./conditions.ts";
import type { Heater } from "./heater.ts";
import type { InstantHours } from "./hours.ts";
import type { NeededAperture } from "./needed-aperture.ts";
import type { InstantRow } from "./row.ts";
import type { InstantTask } from "./task.ts";
import type { ChargedDraw, VesselCharge } from "./vessel-charge.ts";

export type Verdict = "feasible" | "feasibleForPart" | "infeasible";

/** Why an instant heater falls short: a closed list. */
export type InstantReason =
	| "limitedByBoiling" // wanted as hot as water boils at the line's pressure
	| "noSun"
	| "sunBelowDish"
	| "tooLittleHeat" // even under the best sun asked about
	| "lostInPipe" // at the focus the water would be hot enough, at the tap it is not
	| "weakSunForPart" // under the best sun it would do
	| "boilsInReceiver"
	| "limitedByOilLimit"
	| "noDishWithinBound"
	| "chargeNotReached"
	| "coilTooSmall";

/** The verdict's grounds. */
export interface Findings {
	readonly levels: readonly InstantRow[];
	readonly hours: InstantHours | undefined;
	readonly best: InstantRow;
	readonly needed: NeededAperture | undefined;
	readonly charge: VesselCharge | undefined;
	readonly draw: ChargedDraw | undefined;
}

const THROUGHOUT = 0.995; // [-] of the window or more: within a minute or so of four hours

/** Share of what was asked about that is served, 0–1: of the window's time, or of the levels' number. */
export function servedShare({ levels, hours }: Findings): number {
	if (hours) return hours.heldShare;
	return levels.filter(({ serving }) => serving === "serves").length / levels.length;
}

export function verdict(findings: Findings): Verdict {
	const share = servedShare(findings);
	return share >= THROUGHOUT ? "feasible" : share > 0 ? "feasibleForPart" : "infeasible";
}

/** Everything that stands in the way, the most binding first; of a feasible heater only what concerns its vessel. */
export function reasons(heater: Heater, task: InstantTask, findings: Findings): readonly InstantReason[] {
	const { best, hours, levels, needed, charge, draw } = findings;
	const { duty } = task;
	const found: InstantReason[] = [];
	const rows = hours?.windowRows ?? levels;
	if (verdict(findings) !== "feasible") {
		if (duty.wanted >= duty.boiling) return ["limitedByBoiling"];
		if (!(absorbedLight(heater, best.conditions) > 0))
			return [best.conditions.beam > 0 ? "sunBelowDish" : "noSun"];
		if (best.steady.kind === "lostInPipe") found.push("lostInPipe");
		else if (best.serving === "tooLittle") found.push("tooLittleHeat");
		else if (rows.some(({ serving }) => serving === "tooLittle")) found.push("weakSunForPart");
		if (rows.some(({ serving }) => serving === "boils")) found.push("boilsInReceiver");
		const short = needed && whyNoDish(needed);
		if (short) found.push(short);
	}
	if (charge && !charge.reachesCharge) found.push("chargeNotReached");
	if (draw && !isPassed(draw)) found.push("coilTooSmall");
	return found;
}

function whyNoDish(needed: NeededAperture): InstantReason | undefined {
	switch (needed.kind) {
		case "found":
			return undefined;
		case "beyondBound":
			return "noDishWithinBound";
		case "coilTooSmall":
			return "limitedByOilLimit";
		default:
			return needed satisfies never;
	}
}

/** Whether the coil passes the flow at first. */
function isPassed(draw: ChargedDraw): boolean {
	switch (draw.kind) {
		case "sustained":
		case "lasts":
			return true;
		case "coilTooSmall":
			return false;
		default:
			return draw satisfies never;
	}
}
