import { absorbedLight } from "./conditions.ts";
import type { Heater } from "./heater.ts";
import type { InstantHours } from "./hours.ts";
import type { NeededAperture } from "./needed-aperture.ts";
import type { InstantRow } from "./row.ts";
import type { InstantTask } from "./task.ts";
import type { ChargedDraw, VesselCharge } from "./vessel-charge.ts";

export type Verdict = "feasible" | "feasibleForPart" | "infeasible";

/** Reason why an instant heater does not meet the demand. */
export type InstantReason =
	| "limitedByBoiling" // the wanted temperature is at or above boiling at line pressure
	| "noSun"
	| "sunBelowDish"
	| "tooLittleHeat" // even under the best sun
	| "lostInPipe" // the water is hot enough at the focus but not at the tap
	| "weakSunForPart" // it meets the demand under the best sun
	| "boilsInReceiver"
	| "limitedByOilLimit"
	| "noDishWithinBound"
	| "chargeNotReached"
	| "coilTooSmall";

/** Results on which the verdict depends. */
export interface Findings {
	readonly levels: readonly InstantRow[];
	readonly hours: InstantHours | undefined;
	readonly best: InstantRow;
	readonly needed: NeededAperture | undefined;
	readonly charge: VesselCharge | undefined;
	readonly draw: ChargedDraw | undefined;
}

const THROUGHOUT = 0.995; // [-] least share of the window that counts as complete: a minute or so of four hours is neglected

/** Share of the demand that is met, 0–1: of the window's duration, or of the number of levels. */
export function servedShare({ levels, hours }: Findings): number {
	if (hours) return hours.heldShare;
	return levels.filter(({ serving }) => serving === "serves").length / levels.length;
}

export function verdict(findings: Findings): Verdict {
	const share = servedShare(findings);
	return share >= THROUGHOUT ? "feasible" : share > 0 ? "feasibleForPart" : "infeasible";
}

/** All obstacles, the most restrictive first; for a feasible heater only those of its vessel. */
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
		const short = needed && reasonAgainstDish(needed);
		if (short) found.push(short);
	}
	if (charge && !charge.reachesCharge) found.push("chargeNotReached");
	if (draw && !isPassed(draw)) found.push("coilTooSmall");
	return found;
}

function reasonAgainstDish(needed: NeededAperture): InstantReason | undefined {
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

/** Whether the coil can transfer the heat of the flow at the start. */
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
