import { type Coil as CoreCoil, coilFits, type Tank } from "../../src/index.ts";
import { type Coil, coilBand, coreCoil } from "../schemas/coil.ts";
import { coreTank } from "../schemas/tank.ts";
import { contradictory, impossible, outOfRange, type Rule, type RuleFault, said } from "./fault.ts";
import { fillWithinVolume, tankDimensions } from "./tank.ts";

const asIs = <T>(_pointer: string, value: T, _why: string): T => value;

const NARROWEST_HELIX = 2; // [-] over the tube's bore, up to which flow in a helix is worked out

/** A coil has one length. */
export const coilLength: Rule = ({ coil }) =>
	coil.lengthM !== undefined && coil.turns !== undefined
		? ["lengthM", "turns"].map((name) =>
				contradictory(`/coil/${name}`, "lengthM and turns say the same thing: give only one"),
			)
		: [];

/** The coil's top is above its bottom, and its tube fits between them. */
export const coilFitsTank: Rule = ({ coil, tank, draw }) => {
	if (coil.bottomHeight >= coil.topHeight)
		return [
			contradictory(
				"/coil/topHeight",
				`the coil's top at ${said(coil.topHeight)} of the height is not above its bottom at ${said(coil.bottomHeight)}`,
			),
		];
	if ([...fillWithinVolume({ tank }), ...tankDimensions({ tank })].length > 0) return [];
	const inside = coreTank(tank, draw.mainsTemperatureC, asIs);
	return windingFaults(coil, coreCoil(coil, inside, asIs), inside);
};

/** What keeps a coil from being wound into its tank. */
function windingFaults(coil: Coil, wound: CoreCoil, inside: Tank): readonly RuleFault[] {
	const narrowest = NARROWEST_HELIX * wound.innerDiameter;
	if (wound.coilDiameter < narrowest)
		return [
			outOfRange(
				"/coil/coilDiameterM",
				`a tube of this bore is hardly wound to a helix of ${said(wound.coilDiameter)} m; the narrowest is ${said(narrowest)} m`,
			),
		];
	const fit = coilFits(wound, inside);
	if (fit.outcome === "tooWide")
		return [
			impossible(
				"/coil/coilDiameterM",
				`a helix of ${said(wound.coilDiameter)} m does not fit the tank; the widest is ${said(fit.widest)} m`,
			),
		];
	if (fit.outcome === "tooLong")
		return [
			impossible(
				coil.turns === undefined ? "/coil/lengthM" : "/coil/turns",
				`a coil of ${said(wound.length)} m does not fit the tank; the longest between those heights is ${said(fit.longest)} m`,
			),
		];
	const band = coilBand(wound, inside);
	return wound.length < band
		? [
				impossible(
					"/coil/lengthM",
					`a coil of ${said(wound.length)} m does not reach from its bottom to its top, ${said(band)} m above it`,
				),
			]
		: [];
}
