import { describe, expect, it } from "vitest";
import { hostel } from "../../api/demo/hostel.ts";
import { type Answer, type Body, RaykettleProblem } from "../../sdk/index.ts";
import { app, failures, parsed, problemIn, raykettle } from "./service.ts";

type Request = Body<"warmUpTank">;
type Day = Answer<"warmUpTank">;

const least: Request = {
	site: { latitude: 31.2, longitude: -7.9, elevationM: 2350 },
	date: "2026-01-15",
	dish: { diameterM: 2 },
	tank: { volumeL: 150 },
};

/** The answer to a request, held against its schema and against what every day must obey. */
async function day(request: Request): Promise<Day> {
	const answer = await raykettle.warmUpTank(request);
	parsed("warmUpTank", answer);
	const { energyBalance: e } = answer;
	expect(e.residualKwh).toBeLessThanOrEqual(1e-9 * Math.max(e.beamOnApertureKwh, e.storedInTankKwh, 0.001));
	expect(answer.topTemperatureC).toBeLessThanOrEqual(answer.boilingPointC);
	expect(answer.outcome === "reached").toBe(answer.targetTime !== undefined);
	expect(answer.outcome === "notReached").toBe(answer.reason !== undefined);
	expect(answer.timeToTargetMin === undefined).toBe(answer.targetTime === undefined);
	expect(JSON.stringify(answer)).not.toMatch(/null|NaN/);
	return answer;
}

/** The problem that a request is refused with. */
async function refused(request: unknown): Promise<RaykettleProblem> {
	const error = await raykettle.warmUpTank(request as Request).catch((caught: unknown) => caught);
	if (!(error instanceof RaykettleProblem)) throw new Error("the request was answered");
	expect(error.requestId).toMatch(/./);
	for (const fault of error.errors) expect(fault.detail.length).toBeGreaterThan(10);
	return error;
}

const pointers = (problem: RaykettleProblem) => problem.errors.map(({ pointer }) => pointer);

const raw = (body: BodyInit | undefined, headers: Record<string, string> = {}) =>
	app.request("/v1/tank/warm-up", {
		method: "POST",
		headers: {
			"Content-Type": "application/json",
			...(typeof body === "string" && { "Content-Length": String(Buffer.byteLength(body)) }),
			...headers,
		},
		...(body !== undefined && { body }),
	});

describe("200", () => {
	it("tells of a loop that takes more out of the water than it brings", async () => {
		const answer = await day({
			...least,
			dish: { diameterM: 1.3 },
			tank: { volumeL: 600, surroundingsC: 18 },
			sky: { ambientMinC: -15, ambientMaxC: -1, windMPerS: 7 },
			loop: { supply: { lengthM: 22, insulation: { thicknessMm: 0 } }, return: { lengthM: 2 } },
		});
		const { toWaterKwh, takenBackKwh } = answer.energyBalance;
		expect(takenBackKwh).toBeGreaterThan(0.1 * (toWaterKwh + takenBackKwh));
		expect(answer.reason).toMatchObject({ code: "tooLittleHeat", parameters: { takenBackKwh } });
		expect(answer.reason!.message).toMatch(/took [\d.]+ kWh back.*Insulate and shorten the pipes/);
		const lagged = await day({ ...least, tank: { volumeL: 600 } });
		expect(lagged.reason?.code).toBe("tooLittleHeat");
		expect(lagged.reason?.message).not.toMatch(/out again/);
	});

	it("answers the least that must be said, and lists what it took instead of the rest", async () => {
		const answer = await day(least);
		expect(answer.outcome).toBe("reached");
		const assumed = answer.assumed.map(({ pointer }) => pointer);
		for (const pointer of [
			"/sky/linkeTurbidity",
			"/dish/reflectance",
			"/startTime",
			"/draw/mainsTemperatureC",
			"/site/timeZone",
		])
			expect(assumed).toContain(pointer);
		expect(new Set(assumed).size).toBe(assumed.length);
		for (const given of ["/site/elevationM", "/date", "/dish/diameterM", "/tank/volumeL"])
			expect(assumed).not.toContain(given);
	});

	it("answers the hostel's day with a balance that adds up term by term", async () => {
		const { energyBalance: e, series, cautions } = await day(hostel.request);
		const sum = (group: Readonly<Record<string, number>>) => Object.values(group).reduce((a, b) => a + b, 0);
		expect(e.beamOnApertureKwh + e.pumpHeatToOilKwh).toBeCloseTo(
			e.turnedAwayKwh + sum(e.optical) + sum(e.receiver) + sum(e.loop) + e.storedInLoopKwh + e.toWaterKwh,
			5,
		); // eight digits on the way out
		expect(e.toWaterKwh).toBeCloseTo(
			e.storedInTankKwh + e.drawnAboveMainsKwh + e.tankLossKwh + e.ventedKwh,
			5,
		);
		for (const column of Object.values(series))
			if (Array.isArray(column)) expect(column).toHaveLength(series.time.length);
		for (const code of ["concentratedLight", "scald", "pumpStops"])
			expect(cautions.map((caution) => caution.code)).toContain(code);
	});

	it("gives the same bytes for the same request", async () => {
		const body = JSON.stringify(hostel.request);
		expect(await (await raw(body)).text()).toBe(await (await raw(body)).text());
	});

	it("heats about 50 L to about 55 °C in three hours with a dish a little under a metre (common practice, no source)", async () => {
		const ends: number[] = [];
		for (const linkeTurbidity of [2, 3, 4])
			for (const fill of [20, 25, 30]) {
				const { endTemperatureC, overallEfficiency, boilingPointC } = await day({
					site: { latitude: 30, longitude: 0, elevationM: 2992, timeZone: "UTC" },
					date: "2026-06-21",
					startTime: "10:32", // solar noon is at 12:02
					endTime: "13:32",
					targetTemperatureC: 90,
					sky: { kind: "clear", linkeTurbidity, ambientMinC: 26, ambientMaxC: 28 },
					dish: { diameterM: 0.95 },
					tank: { volumeL: 50, startTemperatureC: fill },
				});
				expect(boilingPointC).toBeCloseTo(90, 2);
				expect(overallEfficiency).toBeGreaterThan(0.4);
				expect(overallEfficiency).toBeLessThan(0.7);
				ends.push(endTemperatureC);
			}
		expect(Math.min(...ends)).toBeLessThan(55);
		expect(Math.max(...ends)).toBeGreaterThan(55 - 6);
	});

	it.each(["cavity", "openCoil", "glazedCoil"] as const)("heats by a %s", async (kind) => {
		const answer = await day({ ...least, receiver: { kind } });
		expect(answer.outcome).toBe("reached");
		expect(answer.energyBalance.optical.unresolvedKwh).toBe(0);
	});

	it("heats by a measured dish, its losses unresolved", async () => {
		const receiver = { kind: "efficiencyLine", opticalEfficiency: 0.65, lossCoefficientWPerK: 5 } as const;
		const { energyBalance: e } = await day({ ...least, receiver });
		expect(e.optical.unresolvedKwh).toBeCloseTo(0.35 * (e.beamOnApertureKwh - e.turnedAwayKwh), 5);
		expect(e.receiver.unresolvedKwh).toBeGreaterThan(0);
		expect(e.receiver.radiatedKwh).toBe(0);
	});

	it("gives an off-axis dish on a polar axis more aperture in winter than in summer", async () => {
		const dish = { kind: "offsetPolar", mirrorAreaM2: 8 } as const;
		const winter = await day({ ...least, dish, tank: { volumeL: 500 } });
		const summer = await day({ ...least, dish, tank: { volumeL: 500 }, date: "2026-06-21" });
		// Munir, Hensel & Scheffler 2010 (formula from memory): 8·cos(43.23° ∓ 23.4°/2)
		expect(winter.design.dish.apertureM2).toBeGreaterThan(6.6);
		expect(summer.design.dish.apertureM2).toBeCloseTo(4.59, 1);
	});

	it("takes a measured sky, by beam alone or by global irradiance", async () => {
		const time = Array.from({ length: 13 }, (_, i) => `2026-01-15T${String(6 + i).padStart(2, "0")}:00:00Z`);
		const beam = [0, 0, 300, 700, 850, 900, 900, 880, 800, 650, 300, 100, 0];
		const global = [0, 0, 60, 250, 420, 560, 640, 650, 560, 400, 200, 40, 0];
		const sky = { kind: "measured", time, ambientC: 12, windMPerS: 2 } as const;
		const measured = { ...least, startTime: "09:00", endTime: "18:00" };
		const byBeam = await day({ ...measured, sky: { ...sky, beamIrradianceWPerM2: beam } });
		const byGlobal = await day({ ...measured, sky: { ...sky, globalIrradianceWPerM2: global } });
		expect(byBeam.energyBalance.beamOnApertureKwh).toBeGreaterThan(10);
		expect(byGlobal.energyBalance.beamOnApertureKwh).toBeGreaterThan(5);
		expect(byGlobal.methods.some(({ source }) => source?.includes("Erbs"))).toBe(true);
	});

	it("serves draws by litres, by heat and by a published profile", async () => {
		const big = { ...least, tank: { volumeL: 300, startTemperatureC: 60 } };
		const litres = await day({ ...big, draw: { draws: [{ time: "12:00", litres: 60 }] } });
		const heat = await day({ ...big, draw: { draws: [{ time: "12:00", energyKwh: 2 }] } });
		const profile = await day({ ...big, startTime: "00:00", endTime: "23:59", draw: { profile: "M" } });
		// 60 L at 40 °C from mains of 10 °C carry 60·0.992·4.18·30/3600 kWh
		expect(litres.deliveredKwh).toBeCloseTo(2.07, 1);
		expect(heat.deliveredKwh).toBeCloseTo(2, 3);
		expect(profile.deliveredKwh + profile.unmetKwh).toBeCloseTo(5.845, 2); // Q_ref of M, EU 814/2013
	});

	it("answers a polar night with its reason", async () => {
		const answer = await day({
			...least,
			site: { latitude: 78.2, longitude: 15.6, elevationM: 20 },
			date: "2026-12-21",
		});
		expect(answer.reason?.code).toBe("noSun");
		expect(answer.energyBalance.beamOnApertureKwh).toBe(0);
		expect(answer.overallEfficiency).toBe(0);
	});

	it("answers a sun that stays below the dish's reach", async () => {
		const answer = await day({ ...least, dish: { diameterM: 2, lowestSunAltitudeDeg: 60 } });
		expect(answer.reason?.code).toBe("sunBelowDish");
		expect(answer.energyBalance.turnedAwayKwh).toBeCloseTo(answer.energyBalance.beamOnApertureKwh, 5);
	});

	it("answers a target above boiling with boiling as its reason", async () => {
		const answer = await day({ ...least, targetTemperatureC: 95 });
		expect(answer.outcome).toBe("notReached");
		expect(answer.reason?.code).toBe("limitedByBoiling");
		expect(answer.boilingPointC).toBeCloseTo(92.146, 2); // ISO 2533 at 2350 m (76.1 kPa) and IAPWS-IF97
	});

	it("answers a target that is met already", async () => {
		const answer = await day({
			...least,
			targetTemperatureC: 40,
			tank: { volumeL: 150, startTemperatureC: 45 },
		});
		expect(answer).toMatchObject({ outcome: "reached", timeToTargetMin: 0 });
		expect(answer.targetTime).toBe(answer.startTime);
	});

	it.each([
		["forward", "2026-03-29", 22.98],
		["back", "2026-10-25", 24.98],
	])("spans a day on which the clock goes %s", async (_way, date, hours) => {
		const site = { latitude: 46.5, longitude: 9.8, elevationM: 1800, timeZone: "Europe/Zurich" };
		const answer = await day({ ...least, site, date, startTime: "00:00", endTime: "23:59" });
		const span = Date.parse(answer.endTime) - Date.parse(answer.startTime);
		expect(span / 3_600_000).toBeCloseTo(hours, 2);
		const times = answer.series.time.map((time) => Date.parse(time));
		expect(times.every((time, i) => i === 0 || time > times[i - 1]!)).toBe(true);
	});

	it("heats in a dead calm, and slower in a storm", async () => {
		const calm = await day({ ...least, sky: { kind: "clear", windMPerS: 0 } });
		const storm = await day({ ...least, sky: { kind: "clear", windMPerS: 15 } });
		expect(calm.timeToTargetMin!).toBeLessThan(storm.timeToTargetMin!);
	});

	it("loses more through pipes without lagging", async () => {
		const bare = { insulation: { material: "mineralWool", thicknessMm: 0 } } as const;
		const lost = ({ energyBalance: { loop } }: Day) => loop.supplyPipeKwh + loop.returnPipeKwh;
		const unlagged = await day({ ...least, loop: { supply: bare, return: bare } });
		expect(lost(unlagged)).toBeGreaterThan(2 * lost(await day(least)));
	});

	it("starts from water and oil at 0 °C", async () => {
		const answer = await day({
			...least,
			sky: { kind: "clear", ambientMinC: 0, ambientMaxC: 5 },
			tank: { volumeL: 150, startTemperatureC: 0 },
			draw: { mainsTemperatureC: 0 },
		});
		expect(answer.series.oilHotC[0]).toBeCloseTo(0.5, 0);
		expect(answer.starvedTimeMin).toBeGreaterThan(0);
	});

	it("keeps a pressurised tank below the boiling point of its relief pressure", async () => {
		const closed = { volumeL: 60, vented: false, reliefPressureKpa: 300 } as const;
		const answer = await day({ ...least, tank: closed, targetTemperatureC: 95 });
		expect(answer.boilingPointC).toBeGreaterThan(130);
		expect(answer.cautions.map(({ code }) => code)).toContain("closedTank");
	});
});

describe("400", () => {
	it("names an unknown key, and what it may have been meant to be", async () => {
		const problem = await refused({ ...least, dish: { diametreM: 2 } });
		expect(problem.status).toBe(400);
		expect(pointers(problem)).toContain("/dish/diametreM");
		expect(problem.errors.map(({ detail }) => detail).join()).toContain("diameterM");
	});

	it.each([
		["a dish of 300 m", { dish: { diameterM: 300 } }, "/dish/diameterM"],
		["latitude 91", { site: { ...least.site, latitude: 91 } }, "/site/latitude"],
		["a date in no calendar", { date: "2026-02-30" }, "/date"],
		["a time of no clock", { startTime: "25:10" }, "/startTime"],
		["text for a number", { tank: { volumeL: "150" } }, "/tank/volumeL"],
		["a missing elevation", { site: { latitude: 31, longitude: 8 } }, "/site/elevationM"],
		["null for a number", { tank: { volumeL: null } }, "/tank/volumeL"],
		["an unknown fluid", { loop: { fluid: "mercury" } }, "/loop/fluid"],
		["a zone of no map", { site: { ...least.site, timeZone: "Mars/Olympus" } }, "/site/timeZone"],
	])("refuses %s and points at it", async (_name, part, pointer) => {
		const problem = await refused({ ...least, ...part });
		expect(problem.status).toBe(400);
		expect(pointers(problem)).toEqual([pointer]);
	});

	it("names every fault at once", async () => {
		const problem = await refused({
			site: { latitude: 91, longitude: 0 },
			date: "soon",
			dish: {},
			tank: { volumeL: -1 },
			colour: 1,
		});
		for (const pointer of ["/site/latitude", "/site/elevationM", "/date", "/tank/volumeL", "/colour"])
			expect(pointers(problem)).toContain(pointer);
	});

	it.each([
		["an empty body", ""],
		["malformed JSON", '{"site": '],
		["NaN", JSON.stringify(least).replace("150", "NaN")],
		["an array", "[]"],
		["a bare number", "7"],
	])("refuses %s", async (_name, body) => {
		expect((await problemIn(await raw(body))).status).toBe(400);
	});
});

describe("413, 415 and 405", () => {
	it("refuses two megabytes", async () => {
		expect((await problemIn(await raw(`"${"x".repeat(2_000_000)}"`))).status).toBe(413);
	});

	it("refuses two megabytes of unstated length", async () => {
		const chunk = new TextEncoder().encode("x".repeat(100_000));
		let left = 20;
		const stream = new ReadableStream({
			pull: (controller) => (left-- > 0 ? controller.enqueue(chunk) : controller.close()),
		});
		const request = new Request("http://service.test/v1/tank/warm-up", {
			method: "POST",
			headers: { "Content-Type": "application/json" },
			body: stream,
			duplex: "half",
		} as RequestInit);
		expect((await problemIn(await app.fetch(request))).status).toBe(413);
	});

	it("refuses another content type, and a compressed body", async () => {
		expect((await problemIn(await raw("{}", { "Content-Type": "text/plain" }))).status).toBe(415);
		expect((await problemIn(await raw("{}", { "Content-Encoding": "gzip" }))).status).toBe(415);
	});

	it("refuses a GET", async () => {
		const response = await app.request("/v1/tank/warm-up");
		expect(response.headers.get("allow")).toContain("POST");
		expect((await problemIn(response)).status).toBe(405);
	});
});

describe("422", () => {
	it.each([
		["an end before the start", { startTime: "15:00", endTime: "09:00" }, "/endTime"],
		["a coil longer than fits", { coil: { lengthM: 400 } }, "/coil/lengthM"],
		[
			"an oil limit below the start",
			{ loop: { control: { oilLimitC: 40 } }, tank: { volumeL: 150, startTemperatureC: 50 } },
			"/loop/control/oilLimitC",
		],
		[
			"a receiver as large as the dish",
			{ receiver: { kind: "cavity", apertureDiameterM: 2 } },
			"/receiver/apertureDiameterM",
		],
		[
			"a tube thicker inside than outside",
			{ coil: { innerDiameterMm: 15, outerDiameterMm: 12 } },
			"/coil/outerDiameterMm",
		],
	])("refuses %s and points at it", async (_name, part, pointer) => {
		const problem = await refused({ ...least, ...part });
		expect(problem.status).toBe(422);
		expect(pointers(problem)).toContain(pointer);
	});

	it("names every contradiction at once", async () => {
		const problem = await refused({
			...least,
			startTime: "15:00",
			endTime: "09:00",
			receiver: { kind: "cavity", apertureDiameterM: 2 },
			coil: { lengthM: 400 },
		});
		for (const pointer of ["/endTime", "/receiver/apertureDiameterM", "/coil/lengthM"])
			expect(pointers(problem)).toContain(pointer);
	});
});

it("never failed itself", () => expect(failures).toEqual([]));
