import { describe, expect, it } from "vitest";
import { type Answer, type Body, RaykettleProblem } from "../../sdk/index.ts";
import { parsed, raykettle } from "./service.ts";

type Request = Body<"getDishOptics">;
type Optics = Answer<"getDishOptics">;

/** The answer to a request, held against its schema and against what every dish must obey. */
async function optics(request: Request): Promise<Optics> {
	const answer = await raykettle.dishOptics(request);
	parsed("getDishOptics", answer);
	const { shares, curve, bestAperture } = answer;
	expect(Object.values(shares).reduce((sum, share) => sum + share, 0)).toBeCloseTo(1, 6);
	expect(answer.absorbedW).toBeCloseTo(answer.beamOnApertureW * answer.opticalEfficiency, 3);
	expect(answer.powerAtFocusW).toBeLessThanOrEqual(answer.beamOnApertureW);
	expect(answer.geometricConcentration).toBeLessThan(answer.concentrationLimits.thermodynamic);
	curve.netPowerW.forEach((net, i) => {
		const searched = curve.apertureDiameterM[i]! >= 0.01 * answer.focalLengthM; // the lower end of the search
		if (searched) expect(net).toBeLessThanOrEqual(bestAperture.netPowerW + 0.5); // best to a millimetre
		expect(net).toBeCloseTo(curve.absorbedW[i]! - curve.lossW[i]!, 3);
	});
	expect(JSON.stringify(answer)).not.toMatch(/null|NaN/);
	return answer;
}

async function refused(request: unknown): Promise<RaykettleProblem> {
	const error = await raykettle.dishOptics(request as Request).catch((caught: unknown) => caught);
	if (!(error instanceof RaykettleProblem)) throw new Error("the request was answered");
	return error;
}

const cooker: Request = { dish: { diameterM: 1.8, focalLengthM: 0.675 } };

describe("200", () => {
	it("has the published geometry of a built cooker", async () => {
		// Journal of Renewable Energy 2021, art. 8944722: 1.8 m, depth 0.30 m, aperture 2.54 m², surface 2.81 m², rim angle 67.38°
		const dish = await optics(cooker);
		expect(Math.abs(dish.rimAngleDeg! - 67.38)).toBeLessThan(0.01);
		expect(Math.abs(dish.depthM! - 0.3)).toBeLessThan(0.005);
		expect(Math.abs(dish.apertureAreaM2 - 2.54)).toBeLessThan(0.01);
		expect(Math.abs(dish.mirrorAreaM2 - 2.81)).toBeLessThan(0.005);
		const fromRim = await optics({ dish: { apertureM2: 2.5447, rimAngleDeg: 67.38 } });
		expect(Math.abs(fromRim.focalLengthM / 0.67 - 1)).toBeLessThan(0.01); // printed 0.67
		expect(fromRim.apertureDiameterM).toBeCloseTo(1.8, 4);
	});

	it("has the published depth of another", async () => {
		// Ibrahim Ladan Mohammed, Int. J. Eng. Res. Appl. 3(4) (2013) 1179: 1.8 m, focal length 0.698 m, depth 0.290 m
		const dish = await optics({ dish: { diameterM: 1.8, focalLengthM: 0.698 } });
		expect(Math.abs(dish.depthM! - 0.29)).toBeLessThan(0.001);
	});

	it("has the published seasons of an off-axis mirror, turned about south of the equator", async () => {
		// Munir, Hensel & Scheffler, Solar Energy 84 (2010) 1490 (from memory): 8 m² show 5.83 m² at equinox, 4.59 in summer, 6.82 in winter
		const at = async (latitude: number, date: string) =>
			optics({ dish: { kind: "offsetPolar", mirrorAreaM2: 8 }, latitude, date });
		for (const [latitude, summer, winter] of [
			[23.5, "2025-06-21", "2025-12-21"],
			[-23.5, "2025-12-21", "2025-06-21"],
		] as const) {
			expect(Math.abs((await at(latitude, summer)).apertureAreaM2 / 4.59 - 1)).toBeLessThan(0.01);
			expect(Math.abs((await at(latitude, winter)).apertureAreaM2 / 6.82 - 1)).toBeLessThan(0.01);
			const equinox = await at(latitude, "2025-03-20");
			expect(Math.abs(equinox.apertureAreaM2 / 5.83 - 1)).toBeLessThan(0.01);
			const seasons = equinox.seasons!;
			expect(seasons.date).toHaveLength(73);
			expect(seasons.leastApertureAreaM2).toBeCloseTo(4.59, 1);
			expect(seasons.greatestApertureAreaM2).toBeCloseTo(6.82, 1);
			const widest = seasons.date[seasons.apertureAreaM2.indexOf(seasons.greatestApertureAreaM2)]!;
			expect(Math.abs(Date.parse(widest) - Date.parse(winter))).toBeLessThan(6 * 86_400_000);
		}
		expect((await optics(cooker)).seasons).toBeUndefined();
	});

	it("has the share of an isotropic spread that rings give", async () => {
		// 1.4 m, f 0.5 m, one spread of 10 mrad in all: 0.9675 within 30 mm, independent integration over rings
		const spread = Math.sqrt(100 - 2.73 ** 2);
		const { interceptFactor } = await optics({
			dish: {
				diameterM: 1.4,
				focalLengthM: 0.5,
				slopeErrorMrad: 0,
				trackingErrorMrad: 0,
				specularityMrad: spread,
			},
			receiver: { apertureDiameterM: 0.06 },
		});
		expect(Math.abs(interceptFactor - 0.9675)).toBeLessThan(0.001);
	});

	it("sizes `auto` as the best at the duty it assumes", async () => {
		const { receiverApertureDiameterM, bestAperture } = await optics(cooker);
		expect(receiverApertureDiameterM).toBeCloseTo(bestAperture.apertureDiameterM, 6);
	});

	it("catches on the curve what it catches at the receiver", async () => {
		const receiver = { kind: "openCoil", apertureDiameterM: 0.09 } as const;
		const { interceptFactor, absorbedW, curve } = await optics({
			...cooker,
			receiver,
			curveApertureDiameterM: [0.09],
		});
		expect(curve.interceptFactor[0]!).toBeCloseTo(interceptFactor, 7);
		expect(curve.absorbedW[0]!).toBeCloseTo(absorbedW, 3);
	});

	it("weighs spill against loss: hotter oil and wind want a narrower aperture, a rough mirror a wider one", async () => {
		const best = async (change: object) =>
			(await optics({ ...cooker, ...change })).bestAperture.apertureDiameterM;
		const base = await best({});
		expect(await best({ oilTemperatureC: 250 })).toBeLessThan(base);
		expect(await best({ windMPerS: 12 })).toBeLessThan(base);
		expect(await best({ dish: { ...cooker.dish, slopeErrorMrad: 12 } })).toBeGreaterThan(base);
	});

	it("draws the curve where it is asked to, and otherwise evenly to beyond the best", async () => {
		const asked = [0.3, 0.05, 0.1];
		expect((await optics({ ...cooker, curveApertureDiameterM: asked })).curve.apertureDiameterM).toEqual(
			asked,
		);
		const { curve, bestAperture } = await optics(cooker);
		expect(curve.apertureDiameterM).toHaveLength(40);
		expect(curve.apertureDiameterM.at(-1)!).toBeCloseTo(
			Math.min(2.5 * bestAperture.apertureDiameterM, 0.27),
			6,
		);
		for (let i = 1; i < 40; i++) {
			expect(curve.interceptFactor[i]!).toBeGreaterThanOrEqual(curve.interceptFactor[i - 1]!);
			expect(curve.lossW[i]!).toBeGreaterThan(curve.lossW[i - 1]!);
		}
	});

	it("shrinks the spot of a better mirror, whose light is brighter at its middle", async () => {
		const [rough, fine] = await Promise.all(
			[8, 2].map((slopeErrorMrad) => optics({ dish: { ...cooker.dish, slopeErrorMrad } })),
		);
		for (let i = 0; i < 4; i++)
			expect(fine!.focalSpot.diameterM[i]!).toBeLessThan(rough!.focalSpot.diameterM[i]!);
		expect(fine!.focalSpot.peakIrradianceWPerM2).toBeGreaterThan(rough!.focalSpot.peakIrradianceWPerM2);
		expect(fine!.focalSpot.meanIrradianceWPerM2).toBeLessThan(fine!.focalSpot.peakIrradianceWPerM2);
	});

	it("says that a dish beyond a rim angle of 90° is beyond the method, and tells no limit for it", async () => {
		const { methods, concentrationLimits, focalSpot } = await optics({
			dish: { diameterM: 1.8, rimAngleDeg: 115 },
		});
		expect(methods.find(({ name }) => name.startsWith("Intercept"))!.outsideRange).toBe(true);
		expect(concentrationLimits).toEqual({ thermodynamic: expect.any(Number) });
		expect(focalSpot.share).not.toContain(0.9);
		const within = await optics(cooker);
		expect(within.methods.find(({ name }) => name.startsWith("Intercept"))!.outsideRange).toBe(false);
	});

	it("answers that nothing is gained where oil is too hot for the sun there is", async () => {
		const { bestAperture } = await optics({
			...cooker,
			beamIrradianceWPerM2: 1,
			oilTemperatureC: 300,
			windMPerS: 20,
		});
		expect(bestAperture.netPowerW).toBeLessThan(0);
		expect(bestAperture.withinSearch).toBe(false);
	});

	it("warns of the light, and lists what it assumed with the reason", async () => {
		const { cautions, assumed } = await optics(cooker);
		expect(cautions[0]).toMatchObject({ code: "concentratedLight", severity: "danger" });
		expect(assumed.map(({ pointer }) => pointer)).toEqual(
			expect.arrayContaining(["/beamIrradianceWPerM2", "/date", "/elevationM", "/dish/reflectance"]),
		);
		expect(assumed.every(({ reason }) => reason.length > 5)).toBe(true);
	});
});

describe("400", () => {
	it("names every field at fault", async () => {
		const problem = await refused({
			dish: { diameterM: 1.8, colour: "red" },
			beamIrradianceWPerM2: 2000,
			date: "2025-02-30",
			curveApertureDiameterM: [],
		});
		expect(problem.status).toBe(400);
		expect(problem.errors.map(({ pointer, code }) => `${pointer} ${code}`).toSorted()).toEqual([
			"/beamIrradianceWPerM2 out_of_bounds",
			"/curveApertureDiameterM wrong_length",
			"/date wrong_format",
			"/dish/colour unknown",
		]);
	});

	it("wants a dish", async () => {
		expect((await refused({})).errors[0]).toMatchObject({ pointer: "/dish", code: "missing" });
	});
});

describe("422", () => {
	it.each([
		["a dish without size", { dish: {} }, "/dish", "contradictory"],
		["a dish with two", { dish: { diameterM: 2, apertureM2: 3 } }, "/dish/diameterM", "contradictory"],
		[
			"focal length and rim angle",
			{ dish: { diameterM: 2, focalLengthM: 1, rimAngleDeg: 45 } },
			"/dish/focalLengthM",
			"contradictory",
		],
		[
			"a receiver as large as the dish",
			{ dish: { diameterM: 1 }, receiver: { apertureDiameterM: 1 } },
			"/receiver/apertureDiameterM",
			"impossible",
		],
		[
			"a curve that reaches the dish",
			{ dish: { diameterM: 1 }, curveApertureDiameterM: [0.1, 1] },
			"/curveApertureDiameterM/1",
			"impossible",
		],
		[
			"an efficiency line",
			{
				dish: { diameterM: 1 },
				receiver: { kind: "efficiencyLine", opticalEfficiency: 0.6, lossCoefficientWPerK: 5 },
			},
			"/receiver/kind",
			"contradictory",
		],
		[
			"an off-axis dish on a polar axis on no hemisphere",
			{ dish: { kind: "offsetPolar", mirrorAreaM2: 8 } },
			"/latitude",
			"contradictory",
		],
		[
			"a tube without a wall",
			{ ...cooker, receiver: { tube: { innerDiameterMm: 12, outerDiameterMm: 12 } } },
			"/receiver/tube/outerDiameterMm",
			"contradictory",
		],
	])("refuses %s", async (_name, request, pointer, code) => {
		const problem = await refused(request);
		expect(problem.status).toBe(422);
		expect(problem.errors).toContainEqual(expect.objectContaining({ pointer, code }));
	});
});
