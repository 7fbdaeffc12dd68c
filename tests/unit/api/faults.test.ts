import { expect, it } from "vitest";
import { bodyFaults } from "../../../api/faults.ts";
import { operations } from "../../../api/routes/index.ts";

const { input } = operations.find(({ operationId }) => operationId === "getDishOptics")!;

/** What a dish is refused with, by field. */
function details(dish: object): Readonly<Record<string, string>> {
	const read = input.safeParse({ dish });
	if (read.success) throw new Error("not refused");
	return Object.fromEntries(
		bodyFaults(read.error, input, { dish }).map(({ pointer, detail }) => [pointer!, detail]),
	);
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
		["/dish/colour"]!.split("known here: ")[1]!
		.split(", ");
	expect(told).toContain("rimAngleDeg"); // a two-axis dish alone has it
	expect(told).not.toContain("mirrorAreaM2"); // and this only the other kind
	expect(new Set(told).size).toBe(told.length);
	const other = details({ kind: "fixedFocusOffset", diameterM: 2, colour: "red" })["/dish/colour"]!;
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
