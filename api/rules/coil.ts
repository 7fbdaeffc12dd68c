import { coilFits } from "../../src/index.ts";
import { coilBand, coreCoil } from "../schemas/coil.ts";
import { coreTank } from "../schemas/tank.ts";
import { contradictory, impossible, outOfRange, type Rule, said } from "./fault.ts";

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
	if (tank.fillL !== undefined && tank.fillL > tank.volumeL) return [];
	const inside = coreTank(tank, draw.mainsTemperatureC, asIs);
	const wound = coreCoil(coil, inside, asIs);
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
	if (wound.length < band)
		return [
			impossible(
				"/coil/lengthM",
				`a coil of ${said(wound.length)} m does not reach from its bottom to its top, ${said(band)} m above it`,
			),
		];
	return [];
};
