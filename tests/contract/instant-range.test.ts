import { afterAll, describe, expect, it } from "vitest";
import { type Answer, type Body, RaykettleProblem } from "../../sdk/index.ts";
import { failures, parsed, raykettle } from "./service.ts";

type Request = Body<"assessInstantHeater">;
type Instant = Answer<"assessInstantHeater">;

afterAll(() => expect(failures).toEqual([]));

const levels: Request = {
	site: { latitude: 31.2, longitude: -7.9, elevationM: 2350 },
	dish: { diameterM: 2 },
	wantedTemperatureC: 38,
	wantedFlowLPerMin: 1,
	beamIrradianceWPerM2: [600, 900],
	withRange: true,
};
const day: Request = { ...levels, date: "2025-01-15" };
const vessel: Request = {
	...levels,
	arrangement: "vessel",
	vessel: { volumeL: 20, chargeTemperatureC: 140 },
};

async function ranged(request: Request): Promise<Instant & { range: NonNullable<Instant["range"]> }> {
	const answer = await raykettle.assessInstantHeater(request);
	parsed("assessInstantHeater", answer);
	expect(JSON.stringify(answer)).not.toMatch(/null|NaN/);
	if (!answer.range) throw new Error("no range");
	return { ...answer, range: answer.range };
}

async function refused(request: unknown): Promise<RaykettleProblem> {
	const error = await raykettle.assessInstantHeater(request as Request).catch((caught: unknown) => caught);
	if (!(error instanceof RaykettleProblem)) throw new Error("the request was answered");
	return error;
}

const names = ({ range }: { readonly range: NonNullable<Instant["range"]> }) =>
	range.inputs.map(({ name }) => name);

describe("200", () => {
	it.each([
		["beam levels", levels],
		["a day", day],
		["a vessel", vessel],
	])("sets the answer between low and high: %s", async (_name, request) => {
		const { range, best, weakest } = await ranged(request);
		expect(range.coverage).toBe(0.9);
		expect(range.states).toBeLessThanOrEqual(80);
		expect(range.flowLPerMin.central).toBeCloseTo(best.flowLPerMin, 6);
		expect(range.powerW.central).toBeCloseTo(best.powerW, 3);
		expect(range.apertureNeededM2?.central).toBe(weakest.apertureNeededM2);
		for (const answer of [range.flowLPerMin, range.powerW, range.apertureNeededM2!]) {
			expect(answer.low!).toBeLessThan(answer.central!);
			expect(answer.high!).toBeGreaterThan(answer.central!);
		}
		for (const { name, spread, reason, effect } of range.inputs) {
			expect(spread, name).toBeGreaterThan(0);
			expect(reason.length, name).toBeGreaterThan(10);
			if (["reflectance", "cleanliness", "absorptance"].includes(name)) {
				expect(effect.flowLPerMin, name).toBeGreaterThan(0);
				expect(effect.apertureNeededM2!, name).toBeLessThan(0);
			}
		}
	});

	it("errs by what its pipe loses only where it has one, and more the barer it is", async () => {
		const effect = async (outletPipe: NonNullable<Request["outletPipe"]>) => {
			const { range } = await ranged({ ...levels, outletPipe });
			return range.inputs.find(({ name }) => name === "laggingLoss")?.effect.powerW;
		};
		expect(await effect({ lengthM: 0 })).toBeUndefined();
		const lagged = (await effect({ lengthM: 3 }))!;
		expect(lagged).toBeLessThan(0);
		expect((await effect({ lengthM: 3, insulation: { thicknessMm: 0 } }))!).toBeLessThan(4 * lagged);
	});

	it("takes a stated beam as it is said, and a day's by its haze", async () => {
		expect(names(await ranged(levels))).not.toContain("linkeTurbidity");
		expect(names(await ranged(day))).toContain("linkeTurbidity");
		expect(names(await ranged(levels))).not.toContain("coilTransfer");
		expect(names(await ranged(vessel))).toContain("coilTransfer");
	});

	it("takes the caller's spreads, and lists those that nobody gave", async () => {
		const known = { reflectance: 0, cleanliness: 0, slopeError: 0, absorptance: 0 };
		const own = await ranged({ ...levels, spreads: known });
		const all = await ranged(levels);
		const width = ({ range: { flowLPerMin } }: typeof own) => flowLPerMin.high! - flowLPerMin.low!;
		expect(width(own)).toBeLessThan(0.8 * width(all));
		expect(names(own)).not.toContain("reflectance");
		const assumed = (answer: Instant) => answer.assumed.map(({ pointer }) => pointer);
		expect(assumed(all)).toContain("/spreads/reflectance");
		expect(assumed(all)).not.toContain("/spreads/linkeTurbidity");
		expect(assumed(own)).not.toContain("/spreads/reflectance");
		expect(assumed(own)).toContain("/spreads/wind");
		expect(new Set(assumed(own)).size).toBe(assumed(own).length);
		expect(all.methods.some(({ source }) => source?.includes("98-3"))).toBe(true);
	});

	it("has no range unless it is asked for, and no aperture unless a flow is wanted", async () => {
		const { withRange: _with, ...plain } = levels;
		expect((await raykettle.assessInstantHeater(plain)).range).toBeUndefined();
		const { wantedFlowLPerMin: _flow, ...anyFlow } = levels;
		expect((await ranged(anyFlow)).range.apertureNeededM2).toBeUndefined();
	});

	it("stays an answer where nothing flows", async () => {
		const { range } = await ranged({
			...levels,
			beamIrradianceWPerM2: [1],
			levelAir: { ambientC: -30, windMPerS: 20 },
		});
		expect(range.flowLPerMin).toMatchObject({ low: 0, central: 0, high: 0 });
	});
});

describe("400 and 422", () => {
	it("refuses an unknown or impossible spread", async () => {
		const problem = await refused({ ...levels, spreads: { reflectance: -1, coilFilm: 0.3 } });
		expect(problem.status).toBe(400);
		expect(problem.errors.map(({ pointer }) => pointer)).toEqual(
			expect.arrayContaining(["/spreads/reflectance", "/spreads/coilFilm"]),
		);
	});

	it("refuses spreads without a range", async () => {
		const problem = await refused({ ...levels, withRange: false, spreads: {} });
		expect(problem.status).toBe(422);
		expect(problem.errors.map(({ pointer }) => pointer)).toEqual(["/spreads"]);
	});
});
