import { describe, expect, it } from "vitest";
import { hostel } from "../../api/demo/hostel.ts";
import { SensitivityResponse } from "../../api/operations/sensitivity/response.ts";
import { sensitivity } from "../../api/operations/sensitivity/route.ts";
import { IMPROVEMENTS } from "../../src/index.ts";
import { app, failures, problemIn } from "./service.ts";

const quick = {
	...hostel.request,
	stepS: 300,
	receiver: {
		kind: "cavity",
		apertureDiameterM: 0.14,
		innerDiameterM: 0.18,
		depthM: 0.18,
		tube: { lengthM: 7 },
	},
	tank: { ...hostel.request.tank, nodes: 4 },
};

/** A spiral so wide for its dish that the step towards the best opening winds its tube too tight. */
const narrowed = {
	site: hostel.request.site,
	date: "2025-06-15",
	stepS: 300,
	dish: { diameterM: 0.7, rimAngleDeg: 30, slopeErrorMrad: 1, specularityMrad: 0, trackingErrorMrad: 2 },
	receiver: { kind: "openCoil", apertureDiameterM: 0.17 },
	loop: { fluid: "water" },
	tank: { volumeL: 70, nodes: 4 },
};

/** A dish so large for its spiral that the absorber is about as hot as the model covers. */
const scorched = (diameterM: number) => ({
	...narrowed,
	startTime: "11:00",
	endTime: "13:00",
	draw: {},
	dish: { ...narrowed.dish, diameterM, rimAngleDeg: 90, reflectance: 0.95, cleanliness: 0.99 },
	receiver: { kind: "openCoil", apertureDiameterM: 0.125 },
	loop: { fluid: "mineralOilVg68", pump: { flowLPerMin: 9 } },
	tank: { volumeL: 5000, nodes: 4 },
});

const hollow = { kind: "cavity", apertureDiameterM: 0.06, innerDiameterM: 0.08, depthM: 0.08 };
const spiral = { kind: "openCoil" };
const tight = { ...spiral, apertureDiameterM: 0.025 };

/** A pump so slow under so large a dish that the oil meets its limit again and again: short steps all day. */
const limited = {
	site: hostel.request.site,
	date: "2026-06-15",
	dish: { diameterM: 3.5 },
	loop: { pump: { flowLPerMin: 0.5 } },
	tank: { volumeL: 300 },
};

const ranges = sensitivity.examples.ranges!.value;

const send = (path: string, body: unknown) =>
	app.request(path, {
		method: "POST",
		headers: { "content-type": "application/json" },
		body: JSON.stringify(body),
	});

async function answered(body: unknown): Promise<SensitivityResponse> {
	const response = await send("/v1/sensitivity", body);
	const json = await response.json();
	expect(response.status, JSON.stringify(json)).toBe(200);
	expect(failures).toEqual([]);
	return SensitivityResponse.parse(json);
}

async function warmUp(body: unknown) {
	const response = await send("/v1/tank/warm-up", body);
	expect(response.status).toBe(200);
	return (await response.json()) as {
		readonly timeToTargetMin: number;
		readonly endTemperatureC: number;
		readonly usableLitresAt40C: number;
		readonly energyBalance: { readonly toWaterKwh: number };
	};
}

/** The request with the values that an answer's pointers name. */
function applied(
	body: object,
	changes: readonly { readonly pointer: string; readonly to: unknown }[],
): object {
	const made = structuredClone(body) as Record<string, unknown>;
	for (const { pointer, to } of changes) {
		const keys = pointer.split("/").slice(1);
		let holder = made;
		for (const key of keys.slice(0, -1)) {
			holder[key] ??= {};
			holder = holder[key] as Record<string, unknown>;
		}
		holder[keys.at(-1)!] = to;
	}
	return made;
}

describe("200", () => {
	it.each(Object.entries(sensitivity.examples))("answers its example %s", async (_name, { value }) => {
		const { days, range, improvements, notApplicable, refused } = await answered(value);
		if (range === undefined) expect(days).toBe(improvements.length + 1);
		expect(days).toBeLessThanOrEqual(range ? 17 * 13 + 30 : 17); // and a sample of the plant itself, where a gain needs one
		expect(refused).toEqual([]);
		expect([...improvements, ...notApplicable].map(({ id }) => id).sort()).toEqual([...IMPROVEMENTS].sort());
	});

	it("each step, written into the request, gives the day that was told", async () => {
		const { improvements, base } = await answered(quick);
		const plain = await warmUp(quick);
		expect(base.endTemperatureC).toBe(plain.endTemperatureC);
		expect(base.toWaterKwh).toBe(plain.energyBalance.toWaterKwh);
		for (const { id, changes, day, gains, how } of improvements) {
			const { diameterM: _one, ...dish } = quick.dish; // the area stands in for it
			const body = id === "aperture" ? { ...quick, dish } : quick;
			const made = await warmUp(applied(body, changes));
			expect(changes.length, id).toBeGreaterThan(0);
			expect(Math.abs(made.endTemperatureC - day.endTemperatureC), id).toBeLessThan(1e-4);
			expect(Math.abs(made.timeToTargetMin - day.timeToTargetMin!), id).toBeLessThan(1e-3);
			expect(Math.abs(made.usableLitresAt40C - day.usableLitresAt40C), id).toBeLessThan(1e-3);
			const sign = how === "made" ? 1 : -1;
			expect(gains.endTemperatureK, id).toBeCloseTo(sign * (day.endTemperatureC - base.endTemperatureC), 4);
			expect(gains.timeToTargetMin, id).toBeCloseTo(sign * (base.timeToTargetMin! - day.timeToTargetMin!), 3);
		}
	});

	it("ranks by litres and by minutes, and orders by what is asked", async () => {
		const byLitres = await answered(quick);
		const byMinutes = await answered({ ...quick, rankedBy: "minutes" });
		const falling = (values: readonly number[]) => [...values].sort((a, b) => b - a);
		const litres = byLitres.improvements.map(({ gains }) => gains.usableLitresAt40C);
		const minutes = byMinutes.improvements.map(({ gains }) => gains.timeToTargetMin!);
		expect(litres).toEqual(falling(litres));
		expect(minutes).toEqual(falling(minutes));
		const places = byLitres.improvements.map((_, i) => i + 1);
		expect(byLitres.improvements.map(({ ranks }) => ranks.litres)).toEqual(places);
		expect(byMinutes.improvements.map(({ ranks }) => ranks.minutes)).toEqual(places);
		expect(byLitres.improvements[0]!.id).toBe("aperture");
	});

	it("tells what a gain costs where a price is given, and nowhere else", async () => {
		const prices = { currency: "MAD", aperture: 1800, flow: 200 };
		const { improvements, currency } = await answered({ ...quick, prices });
		expect(currency).toBe("MAD");
		for (const { id, cost, gains } of improvements) {
			if (id === "aperture") {
				expect(cost!.perLitre! * gains.usableLitresAt40C).toBeCloseTo(1800, 3);
				expect(cost!.perMinute! * gains.timeToTargetMin!).toBeCloseTo(1800, 3);
			} else if (id !== "flow") expect(cost, id).toBeUndefined();
		}
		expect((await answered(quick)).currency).toBeUndefined();
	});

	it("names what cannot be made, with the reason", async () => {
		const measured = {
			...quick,
			receiver: { kind: "efficiencyLine", opticalEfficiency: 0.7, lossCoefficientWPerK: 4 },
		};
		const codes = Object.fromEntries(
			(await answered(measured)).notApplicable.map(({ id, code }) => [id, code]),
		);
		expect(codes).toMatchObject({
			reflectance: "measuredWhole",
			selectiveCoating: "measuredWhole",
			glazing: "measuredWhole",
			pumpLagging: "alreadySo",
		});
		const cavity = (await answered({ ...quick, dish: { ...quick.dish, cleanliness: 1 } })).notApplicable;
		expect(cavity).toContainEqual(expect.objectContaining({ id: "glazing", code: "notOnThisReceiver" }));
		expect(cavity).toContainEqual(expect.objectContaining({ id: "cleaning", code: "alreadySo" }));
	});

	it("a bare pump gains by lagging, wet lagging by drying", async () => {
		const wet = { ...quick.loop.supply, insulation: { ...quick.loop.supply.insulation, moistFraction: 0.1 } };
		const { improvements } = await answered({
			...quick,
			loop: { ...quick.loop, supply: wet, pump: { ...quick.loop.pump, insulated: false } },
		});
		const of = (id: string) => improvements.find((one) => one.id === id)!;
		expect(of("pumpLagging").gains.toWaterKwh).toBeGreaterThan(0);
		expect(of("dryLagging")).toMatchObject({
			how: "made",
			changes: [{ pointer: "/loop/supply/insulation/moistFraction", from: 0.1, to: 0 }],
		});
		expect(of("dryLagging").gains.endTemperatureK).toBeGreaterThan(0);
	});

	it("says to rank by minutes where a limit turned the dish away, and only there", async () => {
		const small = { ...quick, tank: { volumeL: 60 }, targetTemperatureC: 50 };
		const full = await answered({ ...small, rankedBy: "litres" });
		expect(full.base).toMatchObject({ outcome: "reached" });
		expect(full.base.turnedAwayTimeMin).toBeGreaterThan(10);
		const { turnedAwayTimeMin } = full.base;
		expect(full.advice).toMatchObject({
			code: "rankByMinutes",
			parameters: { turnedAwayTimeMin, rankedBy: "litres" },
		});
		expect(full.advice!.message).toMatch(/^A temperature limit turned the dish away for \d+ min/);
		expect((await answered({ ...small, rankedBy: "minutes" })).advice).toBeUndefined();
		const large = await answered({ ...quick, tank: { volumeL: 400 }, rankedBy: "litres" });
		expect(large.base.turnedAwayTimeMin).toBe(0);
		expect(large.advice).toBeUndefined();
	});

	it("what brings the target within reach comes first by minutes", async () => {
		const { endTemperatureC } = (await answered(quick)).base;
		const { base, reason, improvements } = await answered({
			...quick,
			targetTemperatureC: endTemperatureC + 3,
			rankedBy: "minutes",
		});
		expect(base.outcome).toBe("notReached");
		expect(reason?.code).toBe("tooLittleHeat");
		expect(improvements[0]).toMatchObject({ id: "aperture", reaches: "onlyWith" });
		expect(improvements[0]!.gains.timeToTargetMin).toBeUndefined();
		expect(improvements.at(-1)!.reaches).toBe("neither");
	});

	it("names an improved plant that the models refuse, with what was tried, and ranks the rest", async () => {
		const { refused, improvements, notApplicable } = await answered({
			...narrowed,
			steps: { receiverAperture: 0.9 },
		});
		expect(refused).toEqual([
			{
				id: "receiverAperture",
				code: "out_of_range",
				message: expect.stringContaining("diameter ratio of the helix"),
				changes: [
					expect.objectContaining({ pointer: "/receiver/apertureDiameterM", from: 0.17 }),
					expect.objectContaining({ pointer: "/receiver/tube/lengthM" }),
				],
			},
		]);
		expect([...improvements, ...notApplicable]).toHaveLength(IMPROVEMENTS.length - 1);
		expect(improvements.map(({ ranks }) => ranks.litres)).toEqual(improvements.map((_, i) => i + 1));
	});

	it("ranks a gain's range on the same draws as the plant's own, and says which places are certain", async () => {
		const { range, improvements, days, base, assumed, methods } = await answered(ranges);
		expect(range!.endTemperatureC.central).toBe(base.endTemperatureC);
		expect(assumed.map(({ pointer }) => pointer)).toContain("/spreads/linkeTurbidity");
		expect(methods.map(({ name }) => name).join()).toMatch(/propagation/);
		expect(days).toBeGreaterThan(12 * improvements.length);
		expect(days).toBeLessThanOrEqual(40 + 40 * improvements.length);
		for (const { id, gains, range: of, reaches, rangeRefused } of improvements) {
			expect(rangeRefused, id).toBeUndefined();
			expect(reaches, id).toBe("both");
			expect(of!.reached, id).toBeUndefined();
			for (const field of [
				"timeToTargetMin",
				"endTemperatureK",
				"usableLitresAt40C",
				"toWaterKwh",
			] as const) {
				const { low, central, high } = of![field]!;
				expect(central, `${id} ${field}`).toBe(gains[field]);
				expect(low, `${id} ${field}`).toBeLessThanOrEqual(gains[field]!);
				expect(high, `${id} ${field}`).toBeGreaterThanOrEqual(gains[field]!);
			}
		}
		const of = (id: string) => improvements.find((one) => one.id === id)!;
		expect(of("aperture").range!.timeToTargetMin!.low).toBeGreaterThan(0);
		expect(of("cleaning").range!.renewed).toBe("cleanliness");
		expect(of("shorterPipes").range!.renewed).toBeUndefined();
		const width = ({ low, high }: { low?: number | undefined; high?: number | undefined }) => high! - low!;
		expect(width(of("shorterPipes").range!.endTemperatureK)).toBeLessThan(
			0.1 * width(range!.endTemperatureC),
		);
		const orders = improvements.map(({ aheadOfNext }) => aheadOfNext?.order);
		expect(new Set(orders)).toEqual(new Set(["certain", "uncertain", undefined]));
		expect(orders.at(-1)).toBeUndefined();
	});

	it("tells how often the target is reached with an improvement and without, where that is not sure", async () => {
		const { endTemperatureC } = (await answered(quick)).base;
		const { improvements, methods } = await answered({
			...quick,
			targetTemperatureC: endTemperatureC - 0.2,
			withRange: true,
			rankedBy: "minutes",
		});
		expect(methods.map(({ name }) => name)).toContain(
			"Seeded Latin hypercube of all uncertain inputs at once",
		);
		const { reached, timeToTargetMin } = improvements.find(({ id }) => id === "aperture")!.range!;
		expect(reached!.both + reached!.onlyWith + reached!.onlyWithout + reached!.neither).toBeCloseTo(1, 6);
		expect(reached!.onlyWith).toBeGreaterThan(0.05);
		expect(timeToTargetMin!.high).toBeUndefined();
		expect(timeToTargetMin!.method).toBe("sample");
	});

	it("names the gain whose range no model answers for, ranks it all the same, and ranges the others", async () => {
		const { improvements, refused } = await answered({
			...scorched(4.5),
			endTime: "11:15",
			steps: { aperture: 0.5 },
			withRange: true,
		});
		expect(refused).toEqual([]);
		const [first, ...rest] = improvements;
		expect(first).toMatchObject({
			id: "aperture",
			rangeRefused: {
				code: "out_of_range",
				message: expect.stringContaining("temperature of the absorber"),
			},
		});
		expect(first!.gains.toWaterKwh).toBeGreaterThan(0);
		expect([first!.range, first!.aheadOfNext]).toEqual([undefined, undefined]);
		for (const { id, range, rangeRefused } of rest) {
			expect(range, id).toBeDefined();
			expect(rangeRefused, id).toBeUndefined();
		}
	});

	it("has no ranges where none are asked for", async () => {
		const { improvements } = await answered(quick);
		for (const { range, aheadOfNext } of improvements)
			expect([range, aheadOfNext]).toEqual([undefined, undefined]);
	});

	it("a polar night is an answer in which nothing helps", async () => {
		const { base, reason, improvements, notApplicable } = await answered({
			...quick,
			site: { latitude: 78.2, longitude: 15.6, elevationM: 10 },
			date: "2025-12-21",
			draw: {},
		});
		expect(base.outcome).toBe("notReached");
		expect(reason?.code).toBe("noSun");
		expect(notApplicable).toContainEqual(expect.objectContaining({ id: "receiverAperture", code: "noSun" }));
		const useless = improvements.filter(({ id }) => id !== "tankLagging");
		for (const { id, gains } of useless) expect(Math.abs(gains.endTemperatureK), id).toBeLessThan(0.01);
	});

	it("lists what was left out, steps included, and what the numbers rest on", async () => {
		const { assumed, methods, cautions } = await answered(quick);
		const pointers = assumed.map(({ pointer }) => pointer);
		for (const pointer of ["/steps/aperture", "/steps/tankLaggingMm", "/rankedBy", "/withRange"])
			expect(pointers).toContain(pointer);
		expect(pointers.some((pointer) => pointer.startsWith("/spreads"))).toBe(false);
		expect(methods.length).toBeGreaterThan(5);
		expect(cautions.map(({ code }) => code)).toContain("concentratedLight");
	});
});

describe("400", () => {
	it.each([
		["no dish", { dish: undefined }, "/dish"],
		["an improvement that nobody knows", { steps: { magic: 1 } }, "/steps/magic"],
		["a step of nothing", { steps: { aperture: 0 } }, "/steps/aperture"],
		["a currency that is none", { prices: { currency: "money" } }, "/prices/currency"],
		["a price below zero", { prices: { currency: "EUR", flow: -1 } }, "/prices/flow"],
		["a range that is neither yes nor no", { withRange: "yes" }, "/withRange"],
		["a spread below nothing", { withRange: true, spreads: { wind: -1 } }, "/spreads/wind"],
		["a series, which it has not", { seriesStepMin: 15 }, "/seriesStepMin"],
	])("%s", async (_name, changes, pointer) => {
		const response = await send("/v1/sensitivity", { ...quick, ...changes });
		expect(response.status).toBe(400);
		expect((await problemIn(response)).errors?.map((fault) => fault.pointer)).toContain(pointer);
	});
});

describe("422", () => {
	it("says at once that a range would take too long, and where the plain answer is to be had", async () => {
		const response = await send("/v1/sensitivity", { ...limited, withRange: true });
		const problem = await problemIn(response);
		expect([problem.type, problem.status]).toEqual(["urn:raykettle:problem:too-large", 422]);
		expect(problem.errors?.map(({ pointer }) => pointer)).toEqual(["/withRange"]);
		expect(problem.detail).toMatch(/Omit withRange/);
		expect((await answered(limited)).improvements.length).toBeGreaterThan(5);
	});

	it.each([
		["spreads without a range", { spreads: {} }, "/spreads"],
		["an end before the start", { startTime: "12:00", endTime: "11:00" }, "/endTime"],
		["a coil that does not fit", { coil: { lengthM: 400 } }, "/coil/lengthM"],
		["a plant that the models refuse as it stands", scorched(7), "/receiver"],
		["a range over plants that the models refuse", { ...scorched(5.6), withRange: true }, "/withRange"],
	])("%s", async (_name, changes, pointer) => {
		const response = await send("/v1/sensitivity", { ...quick, ...changes });
		expect(response.status).toBe(422);
		expect((await problemIn(response)).errors?.map((fault) => fault.pointer)).toContain(pointer);
		expect(failures).toEqual([]);
	});

	it.each([
		["more light than its spiral bears", scorched(7)],
		["the same in a cavity", { ...scorched(12), receiver: hollow }],
		["a tube that no so small a spiral can be wound of", { ...quick, receiver: tight }],
		[
			"a coil wound too tight",
			{ ...quick, coil: { coilDiameterM: 0.06, innerDiameterMm: 48, outerDiameterMm: 50 } },
		],
		["water that boils at the start", { ...quick, tank: { volumeL: 150, startTemperatureC: 99 } }],
	])("of %s says the same as the warm-up, and where", async (_name, body) => {
		const [ofDay, ofGains] = await Promise.all(
			["/v1/tank/warm-up", "/v1/sensitivity"].map(async (path) => {
				const response = await send(path, body);
				expect(response.status, path).toBe(422);
				return (await problemIn(response)).errors!;
			}),
		);
		expect(ofGains).toEqual(ofDay);
		for (const { pointer } of ofGains!) expect(pointer).toMatch(/^\/(receiver|coil|tank)/);
	});
});
