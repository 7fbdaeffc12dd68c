import { describe, expect, it } from "vitest";
import { InstantResponse } from "../../api/operations/instant-heater/response.ts";
import { instant } from "../../api/operations/instant-heater/route.ts";
import { app, failures, problemIn } from "./service.ts";

const post = (body: unknown) =>
	app.request("/v1/instant/feasibility", {
		method: "POST",
		headers: { "content-type": "application/json" },
		body: JSON.stringify(body),
	});

const site = { latitude: 31.2, longitude: -7.9, elevationM: 2350 };
const least = { site, dish: { diameterM: 2 } };
const day = { ...least, date: "2025-01-15", wantedTemperatureC: 38 };

async function answered(body: unknown): Promise<InstantResponse> {
	const response = await post(body);
	const json = await response.json();
	expect(response.status, JSON.stringify(json)).toBe(200);
	expect(failures).toEqual([]);
	return InstantResponse.parse(json);
}

async function refused(body: unknown, status: number) {
	const response = await post(body);
	expect(response.status).toBe(status);
	return problemIn(response);
}

describe("200", () => {
	it.each(Object.entries(instant.examples))("answers its example %s", async (_name, { value }) => {
		await answered(value);
	});

	it("answers the least, and lists what it took", async () => {
		const answer = await answered(least);
		expect(answer.outcome).toBe("feasible");
		expect(answer.levels.map(({ beamIrradianceWPerM2 }) => beamIrradianceWPerM2)).toEqual([
			400, 600, 800, 1000,
		]);
		const assumed = answer.assumed.map(({ pointer }) => pointer);
		for (const pointer of [
			"/arrangement",
			"/mainsTemperatureC",
			"/wantedTemperatureC",
			"/linePressureKpa",
			"/beamIrradianceWPerM2",
			"/levelAir/windMPerS",
			"/dish/reflectance",
		])
			expect(assumed).toContain(pointer);
		expect(assumed.some((pointer) => pointer.startsWith("/sky") || pointer.startsWith("/vessel"))).toBe(
			false,
		);
		expect(answer.hours).toBeUndefined();
		expect(answer.vessel).toBeUndefined();
	});

	it("power, flow and rise agree to 0.1 %", async () => {
		const { levels, wanted } = await answered(least);
		expect(wanted.riseK).toBeCloseTo(30, 9);
		for (const { powerW, flowLPerMin, electricEquivalentKw, efficiency, beamIrradianceWPerM2 } of levels) {
			// water of 10 °C: 0.9997 kg/L; its mean heat capacity from 10 to 40 °C is 4183.3 J/kgK (IAPWS R7-97)
			const expected = (flowLPerMin / 60) * 0.9997 * 4183.3 * wanted.riseK;
			expect(Math.abs(powerW / expected - 1)).toBeLessThan(1e-3);
			expect(electricEquivalentKw).toBeCloseTo(powerW / 1000, 6);
			expect(efficiency).toBeCloseTo(powerW / (beamIrradianceWPerM2 * Math.PI), 6);
		}
	});

	it("is plain that a dish of 3 m² serves no shower, and says what would", async () => {
		const answer = await answered({ ...day, wantedFlowLPerMin: 6 });
		expect(answer.outcome).toBe("infeasible");
		expect(answer.reasons[0]?.code).toBe("tooLittleHeat");
		expect(answer.wanted.electricEquivalentKw).toBeGreaterThan(11);
		expect(answer.electricEquivalentKw).toBeLessThan(3);
		const shower = answer.uses.find(({ use }) => use === "shower")!;
		expect(shower.modest.electricEquivalentKw).toBeGreaterThan(11);
		expect(shower.lavish.electricEquivalentKw).toBeLessThan(20.5);
		expect(shower.givenShare).toBeLessThan(0.25);
		const larger = await answered({
			...day,
			dish: { diameterM: answer.diameterNeededM },
			wantedFlowLPerMin: 6,
		});
		expect(larger.outcome).not.toBe("infeasible");
		expect(Math.abs(larger.weakest.flowLPerMin / 6 - 1)).toBeLessThan(0.03); // its receiver is chosen anew
	});

	it("speaks of a bare pipe to the tap that takes much of the heat, and of none that takes little", async () => {
		const windy = { ...least, levelAir: { ambientC: 5, windMPerS: 6 }, wantedFlowLPerMin: 3 };
		const bare = await answered({ ...windy, outletPipe: { lengthM: 8, insulation: { thicknessMm: 0 } } });
		const { code, parameters, message } = bare.reasons[0]!;
		expect(code).toBe("tooLittleHeat");
		expect(parameters.pipeLossW).toBe(bare.best.pipeLossW);
		expect(message).toMatch(/The pipe to the tap loses another 0\.\d+ kW: insulate or shorten it\.$/);
		const lagged = await answered({ ...windy, outletPipe: { lengthM: 8 } });
		expect(lagged.reasons[0]!.code).toBe("tooLittleHeat");
		expect(lagged.reasons[0]!.parameters).not.toHaveProperty("pipeLossW");
		expect(lagged.reasons[0]!.message).toMatch(/3 L\/min is wanted\.$/);
	});

	it("says when in the day it holds", async () => {
		const { hours, outcome } = await answered({ ...day, wantedFlowLPerMin: 0.8, stepMin: 30 });
		expect(outcome).toBe("feasible");
		const { series, held, window } = hours!;
		const { stepMin, ...columns } = series;
		expect(stepMin).toBe(30);
		expect(new Set(Object.values(columns).map((column) => column.length)).size).toBe(1);
		expect(held).toHaveLength(1);
		expect(Date.parse(held[0]!.from)).toBeLessThan(Date.parse(window.from));
		expect(Date.parse(held[0]!.to)).toBeGreaterThan(Date.parse(window.to));
		expect(hours!.heldInWindowMin).toBeCloseTo(240, 6);
	});

	it("takes measured rows and a window of one's own", async () => {
		const sky = {
			kind: "measured",
			time: ["2025-01-15T10:00:00+01:00", "2025-01-15T12:00:00+01:00", "2025-01-15T14:00:00+01:00"],
			beamIrradianceWPerM2: [0, 900, 0],
			ambientC: 8,
		};
		const answer = await answered({
			...day,
			site: { ...site, timeZone: "Africa/Casablanca" },
			sky,
			startTime: "10:30",
			endTime: "13:30",
			wantedFlowLPerMin: 0.5,
		});
		expect(answer.outcome).toBe("feasibleForPart");
		expect(answer.reasons.map(({ code }) => code)).toContain("weakSunForPart");
		expect(answer.hours!.series.time.at(-1)).toBe("2025-01-15T13:50:00+01:00");
	});

	it("a polar night and wanted water at its boil are answers", async () => {
		const night = await answered({
			...day,
			site: { latitude: 78.2, longitude: 15.6, elevationM: 10 },
			date: "2025-12-21",
		});
		expect(night.reasons.map(({ code }) => code)).toEqual(["noSun"]);
		const boiling = await answered({ ...least, wantedTemperatureC: 94, linePressureKpa: 0 });
		expect(boiling.reasons.map(({ code }) => code)).toEqual(["limitedByBoiling"]);
		expect(boiling.boilingPointC).toBeLessThan(93);
	});

	it("boiling starts earlier higher up, and the wall's superheat is told", async () => {
		const at = async (elevationM: number) =>
			(await answered({ ...least, site: { ...site, elevationM }, linePressureKpa: 0 })).best;
		const [low, high] = [await at(0), await at(4000)];
		expect(high.leastFlowLPerMin!).toBeGreaterThan(low.leastFlowLPerMin!);
		expect(low.wallSuperheatK).toBeLessThan(0);
		expect(high.wallSuperheatK!).toBeGreaterThan(low.wallSuperheatK!);
	});

	it("tells of a vessel how it charges, what it gives and for how long", async () => {
		const answer = await answered({
			...least,
			arrangement: "vessel",
			wantedFlowLPerMin: 3,
			wantedTemperatureC: 36,
			beamIrradianceWPerM2: [800],
		});
		expect(answer.vessel!.warmUpMin).toBeGreaterThan(20);
		expect(answer.vessel!.oilLimitC).toBe(160);
		expect(answer.vessel!.fromCharge?.outcome).toBe("lasts");
		expect(answer.best.oilTemperatureC).toBeGreaterThan(36);
		expect(answer.uses.every(({ fromCharge }) => fromCharge !== undefined)).toBe(true);
		expect(answer.cautions.map(({ code }) => code)).toContain("steamInCoil");
		expect(answer.assumed.map(({ pointer }) => pointer)).toContain("/vessel/coil/lengthM");
	});

	const bare = (lengthM: number) => ({ ...least, outletPipe: { lengthM, insulation: { thicknessMm: 0 } } });

	it("assumes three metres of lagged pipe to the tap, and says what it takes", async () => {
		const answer = await answered(least);
		const assumed = answer.assumed.map(({ pointer }) => pointer);
		expect(assumed).toContain("/outletPipe/lengthM");
		expect(assumed).toContain("/outletPipe/insulation/thicknessMm");
		for (const { leavingTemperatureC, pipeLossW, powerW } of answer.levels) {
			expect(leavingTemperatureC!).toBeGreaterThan(40);
			expect(leavingTemperatureC!).toBeLessThan(42);
			expect(pipeLossW!).toBeGreaterThan(0.3 * 20); // 3 m of 25 mm of wool, 20 K over the air
			expect(pipeLossW!).toBeLessThan(0.03 * powerW);
		}
		// 3 m of 13 mm bore hold 0.398 L; its copper holds 27 % as much heat as that water (8933 · 385 J/m³K)
		expect(answer.outletPipe!.contentL).toBeCloseTo(0.398, 3);
		expect(answer.outletPipe!.untilHotL).toBeCloseTo(0.398 * 1.275, 2);
		expect(answer.outletPipe!.untilHotMin! * answer.best.flowLPerMin).toBeCloseTo(
			answer.outletPipe!.untilHotL,
			6,
		);
	});

	it("gives less the longer and barer its pipe, and at the focus most of all", async () => {
		const [focus, lagged, short, long] = await Promise.all(
			[bare(0), least, bare(3), bare(8)].map((body) => answered(body)),
		);
		focus!.levels.forEach((level, i) => {
			expect(level.leavingTemperatureC).toBe(40);
			expect(level.pipeLossW).toBe(0);
			const rows = [level, lagged!.levels[i]!, short!.levels[i]!, long!.levels[i]!];
			for (let at = 1; at < rows.length; at++) {
				expect(rows[at]!.flowLPerMin).toBeLessThan(rows[at - 1]!.flowLPerMin);
				expect(rows[at]!.powerW).toBeLessThan(rows[at - 1]!.powerW);
				expect(rows[at]!.pipeLossW!).toBeGreaterThan(rows[at - 1]!.pipeLossW!);
			}
		});
		expect(focus!.outletPipe).toEqual({ contentL: 0, untilHotL: 0, untilHotMin: 0 });
		expect(short!.levels[0]!.pipeLossW! / (3 * 21)).toBeGreaterThan(1.3); // some 2 W/K a metre in this wind
		expect(short!.levels[0]!.pipeLossW! / (3 * 21)).toBeLessThan(2.3);
	});

	it("says of a wanted flow where it leaves and where it comes to the tap", async () => {
		const { levels } = await answered({ ...bare(8), wantedFlowLPerMin: 1 });
		for (const { outletTemperatureC, tapTemperatureC, serves } of levels) {
			expect(tapTemperatureC!).toBeLessThan(outletTemperatureC!);
			expect(serves).toBe(tapTemperatureC! > 39.9);
		}
	});

	it("names the pipe where all is lost in it", async () => {
		const answer = await answered({ ...bare(200), dish: { diameterM: 0.8 } });
		expect(answer.outcome).toBe("infeasible");
		expect(answer.reasons.map(({ code }) => code)).toEqual(["lostInPipe"]);
		expect(answer.reasons[0]!.parameters.lengthM).toBe(200);
		expect(answer.best.flowLPerMin).toBe(0);
		expect(answer.outletPipe!.untilHotMin).toBeUndefined();
	});

	it("warns of a bare pipe that burns, and of lagging that steam destroys", async () => {
		const hot = { ...bare(3), wantedTemperatureC: 85, levelAir: { windMPerS: 0 } };
		const codes = async (body: unknown) => (await answered(body)).cautions.map(({ code }) => code);
		expect(await codes(hot)).toContain("hotSurface");
		expect(await codes({ ...hot, outletPipe: {} })).not.toContain("hotSurface");
		const foam = { ...least, outletPipe: { insulation: { material: "polyethyleneFoam" } } };
		expect(await codes(foam)).toContain("laggingTooHot");
		expect(await codes(least)).not.toContain("laggingTooHot");
	});

	it("warns of what stands, scalds and freezes", async () => {
		const answer = await answered({ ...day, sky: { kind: "clear", ambientMinC: -6, ambientMaxC: 4 } });
		const codes = answer.cautions.map(({ code }) => code);
		for (const code of [
			"concentratedLight",
			"standingWaterBoils",
			"closedLine",
			"tapRunsHot",
			"receiverFreezes",
		])
			expect(codes).toContain(code);
	});

	it("the same request gives the same bytes", async () => {
		const [first, second] = [await post(day), await post(day)];
		expect(await first.text()).toBe(await second.text());
	});
});

describe("400", () => {
	const broken: readonly (readonly [string, unknown, string])[] = [
		["no dish", { site }, "/dish"],
		["no elevation", { ...least, site: { latitude: 1, longitude: 1 } }, "/site/elevationM"],
		["an unknown key", { ...least, wantedFlowLPM: 3 }, "/wantedFlowLPM"],
		["a flow of zero", { ...least, wantedFlowLPerMin: 0 }, "/wantedFlowLPerMin"],
		["no beam level", { ...least, beamIrradianceWPerM2: [] }, "/beamIrradianceWPerM2"],
		["a date in no calendar", { ...least, date: "2025-02-30" }, "/date"],
		["a pipe of negative length", { ...least, outletPipe: { lengthM: -1 } }, "/outletPipe/lengthM"],
		["a key that pipes do not have", { ...least, outletPipe: { bare: true } }, "/outletPipe/bare"],
		["water in the vessel", { ...least, arrangement: "vessel", vessel: { fluid: "water" } }, "/vessel/fluid"],
	];
	it.each(broken)("%s", async (_name, body, pointer) => {
		const { errors } = await refused(body, 400);
		expect(errors?.map((fault) => fault.pointer)).toContain(pointer);
	});
});

describe("422", () => {
	const unsound: readonly (readonly [string, unknown, string])[] = [
		["water wanted colder than the mains", { ...least, wantedTemperatureC: 9 }, "/wantedTemperatureC"],
		["a window without a date", { ...least, startTime: "10:00" }, "/startTime"],
		["a sky without a date", { ...least, sky: { kind: "clear" } }, "/sky"],
		["a window that ends first", { ...day, startTime: "12:00", endTime: "11:00" }, "/endTime"],
		["a vessel of water straight through", { ...least, vessel: {} }, "/vessel"],
		[
			"a pipe behind a vessel",
			{ ...least, arrangement: "vessel", outletPipe: { lengthM: 3 } },
			"/outletPipe",
		],
		[
			"a pipe with no room for its bore",
			{ ...least, outletPipe: { innerDiameterMm: 15 } },
			"/outletPipe/outerDiameterMm",
		],
		["two sizes of the dish", { ...least, dish: { diameterM: 2, apertureM2: 3 } }, "/dish/apertureM2"],
		[
			"a receiver as large as the dish",
			{ ...least, receiver: { apertureDiameterM: 2 } },
			"/receiver/apertureDiameterM",
		],
		[
			"a charge above the oil's limit",
			{ ...least, arrangement: "vessel", vessel: { chargeTemperatureC: 170 } },
			"/vessel/chargeTemperatureC",
		],
		[
			"a limit beyond what is known of the oil",
			{ ...least, arrangement: "vessel", vessel: { oilLimitC: 320 } },
			"/vessel/oilLimitC",
		],
		[
			"a coil that does not fit",
			{ ...least, arrangement: "vessel", vessel: { coil: { lengthM: 400 } } },
			"/vessel/coil/lengthM",
		],
		[
			"dawn warmer than the afternoon",
			{ ...day, sky: { kind: "clear", ambientMinC: 20, ambientMaxC: 10 } },
			"/sky/ambientMinC",
		],
		[
			"rows that do not cover the window",
			{
				...day,
				sky: {
					kind: "measured",
					time: ["2025-01-15T12:00:00Z", "2025-01-15T12:30:00Z"],
					beamIrradianceWPerM2: [800, 800],
				},
			},
			"/sky/time",
		],
	];
	it.each(unsound)("%s", async (_name, body, pointer) => {
		const { errors } = await refused(body, 422);
		expect(errors?.map((fault) => fault.pointer)).toContain(pointer);
		expect(failures).toEqual([]);
	});
});
