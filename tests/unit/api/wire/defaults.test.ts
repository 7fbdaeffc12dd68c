import { readFileSync } from "node:fs";
import { z } from "@hono/zod-openapi";
import { describe, expect, it } from "vitest";
import { IN_PLACE } from "../../../../api/compute/answer-text.ts";
import { hostel } from "../../../../api/demo/hostel.ts";
import { instant } from "../../../../api/operations/instant-heater/route.ts";
import { warmUp } from "../../../../api/operations/warm-up/route.ts";
import { valueAt } from "../../../../api/validation/schema-tree.ts";
import { appliedDefaults, assume, part } from "../../../../api/wire/defaults.ts";
import { wireValue } from "../../../../api/wire/rounding.ts";
import { type Grounds, practice } from "../../../../src/design/grounds.ts";

type Json = Record<string, unknown>;
interface Answer {
	readonly assumed: readonly ({ readonly pointer: string; readonly value: unknown } & Grounds)[];
	readonly [name: string]: unknown;
}

const dishAndSite = {
	site: { latitude: 31.2, longitude: -7.9, elevationM: 2350 },
	dish: { diameterM: 2 },
};
const least = { ...dishAndSite, date: "2025-01-15", tank: { volumeL: 150 } };

async function answered(body: unknown, operation = warmUp): Promise<Answer> {
	const answer = await operation.answer(operation.input.parse(body), body, IN_PLACE);
	return wireValue(operation.output, answer) as Answer;
}

/** A body with every value that an answer assumed. */
const completed = (body: unknown, assumed: Answer["assumed"]) =>
	assumed.reduce<Json>(
		(sent, { pointer, value }) => withValue(sent, pointer, value),
		structuredClone(body) as Json,
	);

const keysOf = (pointer: string) => pointer.slice(1).split("/");
const given = (body: unknown, pointer: string) => valueAt(body, keysOf(pointer)) !== undefined;

/** A body with a value put at a pointer. */
function withValue(body: Json, pointer: string, value: unknown): Json {
	const copy = structuredClone(body);
	const keys = keysOf(pointer);
	let here = copy;
	for (const key of keys.slice(0, -1)) {
		here[key] ??= {};
		here = here[key] as Json;
	}
	here[keys.at(-1)!] = value;
	return copy;
}

describe("what the answer says it assumed", () => {
	it.each([
		["the least that must be said", least],
		["the hostel", hostel.request],
		[
			"a measured dish",
			{ ...least, receiver: { kind: "efficiencyLine", opticalEfficiency: 0.7, lossCoefficientWPerK: 3 } },
		],
		["a glazed coil", { ...least, receiver: { kind: "glazedCoil" } }],
		["an off-axis dish on a polar axis", { ...least, dish: { kind: "offsetPolar", mirrorAreaM2: 3 } }],
		["a closed tank", { ...least, tank: { volumeL: 150, vented: false, diameterM: 0.4 } }],
		["a draw", { ...least, draw: { draws: [{ time: "12:00", litres: 20 }] } }],
	])("of %s lists nothing that was sent, and each value once", async (_name, body) => {
		const { assumed } = await answered(body);
		for (const { pointer, reason, basis, source } of assumed) {
			expect(given(body, pointer), pointer).toBe(false);
			expect(reason.length, pointer).toBeGreaterThan(3);
			const published = ["standard", "handbook", "measured"].includes(basis);
			expect(source !== undefined, pointer).toBe(published);
		}
		expect(new Set(assumed.map(({ pointer }) => pointer)).size).toBe(assumed.length);
	});

	it.each([
		["the least that must be said", least],
		["the hostel", hostel.request],
	])("of %s, sent back, leaves nothing to assume and changes nothing", async (_name, body) => {
		const { assumed, ...before } = await answered(body);
		const { assumed: left, ...after } = await answered(completed(body, assumed));
		expect(left).toEqual([]);
		for (const name of ["endTemperatureC", "timeToTargetMin", "usableLitresAt40C", "maximumOilTemperatureC"])
			expect(after[name], name).toBeCloseTo(before[name] as number, 4); // values go back rounded to eight digits
		const codes = ({ cautions }: Json) => (cautions as Json[]).map(({ code }) => code);
		expect(codes(after)).toEqual(codes(before).filter((code) => code !== "mayFreeze")); // the air is stated now
	});

	it("of an instant heater's vessel on a day, sent back, leaves nothing to assume and changes nothing", async () => {
		const body = { ...dishAndSite, date: "2025-01-15", arrangement: "vessel" };
		const { assumed, ...before } = await answered(body, instant);
		const pointers = assumed.map(({ pointer }) => pointer);
		expect(pointers).toEqual(
			expect.arrayContaining(["/vessel/diameterM", "/vessel/coil/lengthM", "/startTime"]),
		);
		const { assumed: left, ...after } = await answered(completed(body, assumed), instant);
		expect(left).toEqual([]);
		expect(after.electricEquivalentKw).toBeCloseTo(before.electricEquivalentKw as number, 4);
		expect(after.outcome).toBe(before.outcome);
	});

	it("drops each value as soon as it is sent", async () => {
		const { assumed } = await answered(least);
		const soon = { ...least, startTime: "12:00", endTime: "12:10" }; // a day so short that each costs little
		for (const { pointer, value } of assumed) {
			const sent = withValue(soon, pointer, value);
			const { assumed: left } = await answered(sent);
			expect(
				left.map((one) => one.pointer),
				pointer,
			).not.toContain(pointer);
		}
	});

	it("names what follows from other values with its reason", async () => {
		const { assumed } = await answered(least);
		const found = Object.fromEntries(assumed.map(({ pointer, value }) => [pointer, value]));
		expect(found).toMatchObject({
			"/site/timeZone": "Africa/Casablanca",
			"/tank/startTemperatureC": 10,
			"/tank/fillL": 150,
			"/receiver/apertureDiameterM": "auto",
		});
		expect(found["/startTime"]).toMatch(/^\d\d:\d\d$/);
		expect(found["/endTime"]).toMatch(/^\d\d:\d\d$/);
	});
});

describe("defaults of a schema", () => {
	const Inner = z.strictObject({
		size: assume(z.number(), 3, practice("usual")),
		name: z.string().optional(),
	});
	const Outer = z.strictObject({
		inner: part(Inner),
		list: z.array(z.strictObject({ a: assume(z.number(), 1, practice("one")) })).optional(),
		choice: assume(z.union([z.number(), z.literal("auto")]), "auto", practice("best")),
	});
	const taken = (body: unknown) =>
		appliedDefaults(Outer, body, Outer.parse(body)).map(({ pointer }) => pointer);

	it("are found in objects left out whole, in part, and in lists", () => {
		expect(taken({})).toEqual(["/inner/size", "/choice"]);
		expect(taken({ inner: {}, list: [{}, { a: 2 }], choice: 4 })).toEqual(["/inner/size", "/list/0/a"]);
		expect(taken({ inner: { size: 3 }, choice: "auto" })).toEqual([]);
	});

	it("must have a reason", () => {
		const bare = z.strictObject({ size: z.number().default(3) });
		expect(() => appliedDefaults(bare, {}, bare.parse({}))).toThrow("/size has a default without a reason");
	});

	it("say in the contract why, and leave where it comes from to the answer", () => {
		const contract = readFileSync(new URL("../../../../openapi/openapi.json", import.meta.url), "utf8");
		const defaults = contract.match(/Default: [^"]+/g) ?? [];
		expect(defaults.length).toBeGreaterThan(100);
		expect(defaults.filter((text) => /from memory|no source/.test(text))).toEqual([]);
	});

	it("stand in the contract with their reason", () => {
		expect(
			assume(z.number().meta({ description: "Size.", "x-unit": "m" }), 3, practice("usual")).meta(),
		).toMatchObject({
			description: "Size. Default: usual.",
			"x-unit": "m",
		});
	});
});
