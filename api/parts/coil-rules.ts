import { type Coil as CoreCoil, coilFits, type Tank } from "../../src/index.ts";
import { contradictory, impossible, outOfRange, type RuleFault, said } from "../validation/rule.ts";
import { type Coil, coilBand, coreCoil } from "./coil.ts";
import type { DayRule } from "./day-request.ts";
import { coreTank } from "./tank.ts";
import { fillWithinVolume, tankDimensions } from "./tank-rules.ts";

const asIs = <T>(_pointer: string, value: T, _grounds: unknown): T => value;

const NARROWEST_HELIX = 2; // [-] over the tube's bore, up to which flow in a helix is worked out

/** A coil has one length. */
export const coilLength: DayRule = ({ coil }) =>
	coil.lengthM !== undefined && coil.turns !== undefined
		? ["lengthM", "turns"].map((name) =>
				contradictory(`/coil/${name}`, "lengthM and turns say the same thing: give only one"),
			)
		: [];

/** The coil's top is above its bottom, and its tube fits between them. */
export const coilFitsTank: DayRule = ({ coil, tank, draw }) => {
	if (coil.bottomHeight >= coil.topHeight)
		return [
			contradictory(
				"/coil/topHeight",
				`the coil's top at ${said(coil.topHeight)} of the height is not above its bottom at ${said(coil.bottomHeight)}`,
			),
		];
	if ([...fillWithinVolume({ tank }), ...tankDimensions({ tank })].length > 0) return [];
	const inside = coreTank(tank, draw.mainsTemperatureC, asIs);
	return windingFaults("/coil", "tank", coil, coreCoil(coil, inside, asIs), inside);
};

/** What keeps a coil from being wound into the vessel it stands in.
 *  @param pointer  of the coil     @param place  what the vessel is called */
export function windingFaults(
	pointer: string,
	place: "tank" | "vessel",
	coil: Coil,
	wound: CoreCoil,
	inside: Tank,
): readonly RuleFault[] {
	const narrowest = NARROWEST_HELIX * wound.innerDiameter;
	if (wound.coilDiameter < narrowest)
		return [
			outOfRange(
				`${pointer}/coilDiameterM`,
				`a tube of this bore is hardly wound to a helix of ${said(wound.coilDiameter)} m; the narrowest is ${said(narrowest)} m`,
			),
		];
	const fit = coilFits(wound, inside);
	const lengthAt = `${pointer}/${coil.turns === undefined ? "lengthM" : "turns"}`;
	if (fit.outcome === "tooWide") {
		const detail = `a helix of ${said(wound.coilDiameter)} m does not fit the ${place}; the widest is ${said(fit.widest)} m`;
		return [impossible(`${pointer}/coilDiameterM`, detail)];
	}
	if (fit.outcome === "tooLong") {
		const detail = `a coil of ${said(wound.length)} m does not fit the ${place}; the longest between those heights is ${said(fit.longest)} m`;
		return [impossible(lengthAt, detail)];
	}
	const band = coilBand(wound, inside);
	if (wound.length >= band) return [];
	const detail = `a coil of ${said(wound.length)} m does not reach from its bottom to its top, ${said(band)} m above it`;
	return [impossible(lengthAt, detail)];
}
