import { describe, expect, it } from "vitest";
import { sourcesIn } from "../../sources.ts";

const sources = sourcesIn("src/cautions").map(({ path, text }) => [path, text] as const);

/** Codes that a file gives: plain, or one of two by a condition. */
const codesIn = (source: string) =>
	[...source.matchAll(/\bcode: ([^\n]*)/g)].flatMap(([, given]) =>
		[...given!.matchAll(/"(\w+)"/g)].map(([, code]) => code!),
	);

const messages = sources.flatMap(([name, source]) =>
	[...source.matchAll(/"([^"\n]{60,})"/g)].map(([, message]) => [name, message!] as const),
);

/** What every answer must be able to warn of, by the code that does. */
const HAZARDS: readonly (readonly [hazard: string, code: string])[] = [
	["scald at the tap", "scald"],
	["pressure without relief", "closedTank"],
	["a blocked vent", "openVent"],
	["boiling at this elevation", "waterBoils"],
	["a boiling point below the sea's", "lowBoilingPoint"],
	["fluid above its bulk limit", "fluidAboveBulkLimit"],
	["fluid above its film limit", "fluidAboveFilmLimit"],
	["flash point", "fluidAboveFlashPoint"],
	["fire", "fluidBurns"],
	["expansion", "expansionTooSmall"],
	["concentrated light", "concentratedLight"],
	["light on a spot of a flat coil", "flatCoilInFocus"],
	["a pump that stops", "pumpStops"],
	["Legionella", "legionella"],
	["glass", "glass"],
	["mineral wool", "fibreDust"],
	["wet insulation", "wetInsulation"],
	["copper with galvanised steel", "copperWithGalvanised"],
	["galvanised steel above 60 °C", "galvanisedTooHot"],
	["plastic above its limit", "plasticTooHot"],
	["fluid against drinking water", "singleWall"],
	["freezing", "loopFreezes"],
	["frost that assumed air cannot rule out", "mayFreeze"],
	["electric shock", "electricShock"],
	["roof, wind and structure", "windAndWeight"],
];

describe("the words of every caution", () => {
	it.each(HAZARDS)("warn of %s", (_hazard, code) => {
		expect(sources.flatMap(([, source]) => codesIn(source))).toContain(code);
	});

	it("have a code each, no two alike", () => {
		const codes = sources.flatMap(([, source]) => codesIn(source));
		expect(codes.length).toBeGreaterThan(30);
		expect(new Set(codes).size).toBe(codes.length);
		expect(messages.length).toBeGreaterThanOrEqual(codes.length); // some codes have two sentences
	});

	it.each(messages)("of %s defer to local codes or those licensed: %s", (_name, message) => {
		expect(message).toMatch(/local|licensed|qualified|the law requires/);
		expect(message).toMatch(/\.$/);
	});
});
