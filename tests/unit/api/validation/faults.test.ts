import { expect, it } from "vitest";
import { operations } from "../../../../api/operations/index.ts";
import { bodyFaults } from "../../../../api/validation/faults.ts";

/** What a dish is refused with, by field. */
function details(dish: object): Readonly<Record<string, string>> {
	return refusals("getDishOptics", { dish });
}

/** What an operation refuses a body with, by field. */
function refusals(operationId: string, body: object): Readonly<Record<string, string>> {
	const faults = faultsOf(operationId, body);
	return Object.fromEntries(faults.map(({ pointer, detail }) => [pointer!, detail]));
}

function faultsOf(operationId: string, body: object) {
	const { input: schema } = operations.find((operation) => operation.operationId === operationId)!;
	const read = schema.safeParse(body);
	if (read.success) throw new Error("not refused");
	return bodyFaults(read.error, schema, body);
}

it("a name with a word too many in front is taken for the one without", () => {
	expect(details({ apertureDiameterM: 2 })["/dish/apertureDiameterM"]).toMatch(/did you mean diameterM\?$/);
});

it("a name with a word missing in front is taken for the one with it", () => {
	expect(details({ diameterM: 2, fraction: 0.1 })["/dish/fraction"]).toMatch(
		/did you mean blockedFraction\?$/,
	);
	expect(details({ diameterM: 2, altitudeDeg: 5 })["/dish/altitudeDeg"]).toMatch(
		/did you mean lowestSunAltitudeDeg\?$/,
	);
});

it("where the kind is left out, the names told are those of the usual kind, each once", () => {
	const told = details({ diameterM: 2, colour: "red" })
		["/dish/colour"]!.split("known names: ")[1]!
		.split(", ");
	expect(told).toContain("rimAngleDeg"); // a two-axis dish alone has it
	expect(told).not.toContain("mirrorAreaM2"); // and this only the other kind
	expect(new Set(told).size).toBe(told.length);
	const other = details({ kind: "offsetPolar", diameterM: 2, colour: "red" })["/dish/colour"]!;
	expect(other).toContain("mirrorAreaM2");
	expect(other).not.toContain("rimAngleDeg");
});

it("a kind that must be said is not taken for granted", () => {
	const receivers = operations.find(({ operationId }) => operationId === "getReceiverLosses")!.input;
	const body = { receiver: { colour: "red" }, dish: { diameterM: 2 } };
	const read = receivers.safeParse(body);
	expect(read.success).toBe(false);
	if (!read.success) expect(bodyFaults(read.error, receivers, body).length).toBeGreaterThan(0);
});

const DAY = {
	site: { latitude: 31.2, longitude: -7.9, elevationM: 2350 },
	date: "2026-01-15",
	dish: { diameterM: 2 },
	tank: { volumeL: 150 },
};

it("a name in another unit is taken for the one in ours", () => {
	const asked = { site: DAY.site, dish: DAY.dish, wantedFlowGpm: 2, linePressurePSI: 30 };
	const told = refusals("assessInstantHeater", asked);
	expect(told["/wantedFlowGpm"]).toMatch(/did you mean wantedFlowLPerMin\?$/);
	expect(told["/linePressurePSI"]).toMatch(/did you mean linePressureKpa\?$/);
	const tank = refusals("warmUpTank", { ...DAY, tank: { volumeGallons: 40 } });
	expect(tank["/tank/volumeGallons"]).toMatch(/did you mean volumeL\?$/);
});

it("a name that is right elsewhere is sent there, before one that is nearly it", () => {
	expect(refusals("getDishOptics", { diameterM: 2 })["/diameterM"]).toMatch(
		/did you mean dish\.diameterM\?$/,
	);
	const { site: _, ...siteless } = DAY;
	const flat = refusals("warmUpTank", { ...siteless, latitude: 31.2, lengthM: 3 });
	expect(flat["/latitude"]).toMatch(/did you mean site\.latitude\?$/);
	expect(flat["/lengthM"]).toMatch(/did you mean coil\.lengthM\?$/);
	const deep = refusals("warmUpTank", { ...DAY, tank: { volumeL: 150, date: "2026-01-15" } });
	expect(deep["/tank/date"]).toMatch(/it belongs beside tank, not in it$/);
});

it("a name with its object's before it is sent into the object", () => {
	const told = refusals("warmUpTank", { ...DAY, tankVolumeL: 150, dish_diameterM: 2, loopFluid: "water" });
	expect(told["/tankVolumeL"]).toMatch(/did you mean tank\.volumeL\?$/);
	expect(told["/dish_diameterM"]).toMatch(/did you mean dish\.diameterM\?$/);
	expect(told["/loopFluid"]).toMatch(/did you mean loop\.fluid\?$/);
});

it("a name with words left out before its unit is taken for the whole", () => {
	expect(refusals("warmUpTank", { ...DAY, targetC: 60 })["/targetC"]).toMatch(
		/did you mean targetTemperatureC\?$/,
	);
});

it("a kind that stands for its whole object is put into it", () => {
	const told = refusals("warmUpTank", { ...DAY, receiver: "openCoil", sky: "measured" });
	expect(told["/receiver"]).toBe(
		'receiver must be an object; "openCoil" is not; did you mean { "kind": "openCoil" }?',
	);
	expect(told["/sky"]).toMatch(/did you mean \{ "kind": "measured" \}\?$/);
});

it("a name of another kind is sent to that kind", () => {
	const sky = { time: ["2026-01-15T08:00:00Z", "2026-01-15T20:00:00Z"], windMPerS: 2 };
	expect(refusals("warmUpTank", { ...DAY, sky })["/sky/time"]).toMatch(/it belongs to kind "measured"$/);
	const receiver = { kind: "efficiencyLine", absorptance: 0.9 };
	expect(refusals("warmUpTank", { ...DAY, receiver })["/receiver/absorptance"]).toMatch(
		/it belongs to kind "cavity", "openCoil" or "glazedCoil"$/,
	);
});

it("a choice that is nearly one of those that stand is taken for it", () => {
	const told = refusals("warmUpTank", { ...DAY, receiver: { kind: "opencoil" } })["/receiver/kind"];
	expect(told).toBe(
		'receiver.kind must be one of "cavity", "openCoil", "glazedCoil" or "efficiencyLine"; "opencoil" is not; did you mean "openCoil"?',
	);
	const short = refusals("warmUpTank", { ...DAY, draw: { profile: "XXXL" } })["/draw/profile"];
	expect(short).toMatch(/"XXXL" is not$/); // any short word is near any other
	const far = refusals("warmUpTank", { ...DAY, loop: { fluid: "brine" } })["/loop/fluid"];
	expect(far).toMatch(/"brine" is not$/);
});

it("what cannot be read is told once, and held against no further rule", () => {
	const told = faultsOf("warmUpTank", { ...DAY, date: "15/01/2026" });
	expect(told.map(({ pointer, code }) => [pointer, code])).toEqual([["/date", "wrong_format"]]);
	const year = faultsOf("warmUpTank", { ...DAY, date: "1815-01-15" });
	expect(year.map(({ pointer, code }) => [pointer, code])).toEqual([["/date", "broken_rule"]]);
});

it("a currency that is none is told in words", () => {
	const told = refusals("rankImprovements", { ...DAY, prices: { currency: "dirham" } })["/prices/currency"];
	expect(told).toBe("prices.currency must be three capital letters, as in ISO 4217, such as MAD");
});

it("a list of one too few counts in the singular", () => {
	const body = { site: DAY.site, dish: DAY.dish, beamIrradianceWPerM2: [] };
	expect(refusals("assessInstantHeater", body)["/beamIrradianceWPerM2"]).toMatch(
		/must have at least 1 entry$/,
	);
});
