import { describe, expect, it } from "vitest";
import { type Answer, type Body, RaykettleProblem } from "../../sdk/index.ts";
import { parsed, raykettle } from "./service.ts";

type Request = Body<"getReceiverLosses">;
type Losses = Answer<"getReceiverLosses">;

const dish = { diameterM: 1.8, focalLengthM: 0.675 };
const kinds = ["cavity", "openCoil", "glazedCoil"] as const;

/** The answer to a request, held against its schema and against what every receiver must obey. */
async function losses(request: Request): Promise<Losses> {
	const answer = await raykettle.receiverLosses(request);
	parsed("getReceiverLosses", answer);
	const { table, light, stagnation } = answer;
	expect(Math.abs(answer.worstResidualW)).toBeLessThan(1e-8);
	expect(new Set(Object.values(table).map((column) => column.length)).size).toBe(1);
	table.usefulW.forEach((useful, i) => {
		const paths = table.radiatedW[i]! + table.convectedW[i]! + table.conductedW[i]! + table.unresolvedW[i]!;
		expect(Math.abs(light.absorbedW - useful - paths)).toBeLessThan(1e-6 * light.absorbedW);
		expect(table.lossW[i]!).toBeCloseTo(paths, 3);
		expect(table.efficiency[i]!).toBeLessThanOrEqual(1);
	});
	if (light.enteringW !== undefined)
		expect(light.reflectedW! + light.absorbedW).toBeCloseTo(light.enteringW, 3);
	const leaving =
		stagnation.radiatedW + stagnation.convectedW + stagnation.conductedW + stagnation.unresolvedW;
	if (stagnation.wallTemperatureC < 5726) expect(leaving / stagnation.absorbedW).toBeCloseTo(1, 6);
	expect(JSON.stringify(answer)).not.toMatch(/null|NaN/);
	return answer;
}

async function refused(request: unknown): Promise<RaykettleProblem> {
	const error = await raykettle.receiverLosses(request as Request).catch((caught: unknown) => caught);
	if (!(error instanceof RaykettleProblem)) throw new Error("the request was answered");
	return error;
}

describe("200", () => {
	it.each(kinds)(
		"closes the balance of a %s, which loses more when hotter and in more wind",
		async (kind) => {
			const { table } = await losses({
				dish,
				receiver: { kind },
				oilTemperatureC: [30, 70, 120, 180],
				windMPerS: [0, 1, 3, 8],
				tiltDeg: [10, 60],
			});
			expect(table.lossW).toHaveLength(32);
			table.lossW.forEach((loss, i) => {
				if (i % 4 > 0) expect(loss).toBeGreaterThan(table.lossW[i - 1]!);
				if (i >= 8) expect(loss).toBeGreaterThan(table.lossW[i - 8]!);
			});
		},
	);

	it("gives back the straight line of a dish that was measured", async () => {
		// Mawire & Taole, Energy for Sustainable Development 19 (2014) 162–169: about 0.52 and 4.6 W/K; diameter 1.4 m from memory.
		// At 900 W/m² and 100 K over the air that is 260 W, and it stagnates 157 K over the air.
		const answer = await losses({
			dish: { diameterM: 1.4 },
			receiver: { kind: "efficiencyLine", opticalEfficiency: 0.52, lossCoefficientWPerK: 4.6 },
			beamIrradianceWPerM2: 900,
			ambientC: 25,
			oilTemperatureC: [60, 90, 125],
			stagnation: { beamIrradianceWPerM2: 900 },
		});
		expect(answer.table.usefulW[2]! / 260).toBeCloseTo(1, 1);
		expect((answer.stagnation.wallTemperatureC - 25) / 157).toBeCloseTo(1, 1);
		const [line] = answer.efficiencyLines;
		expect(line!.zeroLossEfficiency).toBeCloseTo(0.52, 9);
		expect(line!.lossCoefficientWPerK).toBeCloseTo(4.6, 7);
		expect(line!.worstDeviation).toBeLessThan(1e-12);
	});

	it("meets published measurements given as an efficiency line per area", async () => {
		// Chahoud, GSTF Journal of Engineering Technology 2013: aluminium strips 0.59 and 2.9 W/m²K. At 800 W/m² and 40 K: 0.445
		const { table, efficiencyLines } = await losses({
			dish: { apertureM2: 2 },
			receiver: { kind: "efficiencyLine", opticalEfficiency: 0.59, lossCoefficientWPerK: 5.8 },
			oilTemperatureC: [40, 60],
		});
		expect(table.efficiency[1]!).toBeCloseTo(0.445, 6);
		expect(table.reducedDifferenceM2KPerW[1]!).toBeCloseTo(0.05, 9);
		expect(efficiencyLines[0]!.lossCoefficientWPerM2K).toBeCloseTo(2.9, 6);
	});

	it("fits a line to each wind and tilt that passes near its rows", async () => {
		const answer = await losses({
			dish,
			receiver: { kind: "openCoil", apertureDiameterM: 0.2 },
			windMPerS: [0, 5],
			tiltDeg: [20, 50, 80],
		});
		expect(answer.efficiencyLines.map(({ windMPerS, tiltDeg }) => [windMPerS, Math.round(tiltDeg)])).toEqual([
			[0, 20],
			[0, 50],
			[0, 80],
			[5, 20],
			[5, 50],
			[5, 80],
		]);
		answer.efficiencyLines.forEach((line, block) => {
			const rows = Array.from({ length: 6 }, (_, i) => block * 6 + i);
			const off = rows.map((row) =>
				Math.abs(
					answer.table.efficiency[row]! -
						line.zeroLossEfficiency +
						line.lossCoefficientWPerM2K! * answer.table.reducedDifferenceM2KPerW[row]!,
				),
			);
			expect(Math.max(...off)).toBeCloseTo(line.worstDeviation, 6);
			expect(line.worstDeviation).toBeLessThan(0.02);
		});
		const single = await losses({ dish, oilTemperatureC: [80] });
		expect(single.efficiencyLines).toEqual([]);
	});

	it("shows how far two models of a cavity's convection differ, and for no other receiver", async () => {
		const { convectionRange, table } = await losses({ dish, windMPerS: [0], tiltDeg: [0, 45] });
		expect(convectionRange!.byStineMcDonaldW).toEqual(table.convectedW);
		expect(convectionRange!.byKoenigMarvinW).toHaveLength(12);
		expect(convectionRange!.greatestDifferenceW).toBeGreaterThan(1);
		expect(convectionRange!.greatestShareOfLoss).toBeGreaterThan(0.05);
		expect((await losses({ dish, receiver: { kind: "openCoil" } })).convectionRange).toBeUndefined();
	});

	it("takes the light as given, as from a dish that sends as much", async () => {
		const receiver = { kind: "cavity", apertureDiameterM: 0.12 } as const;
		const lit = await losses({ dish, receiver });
		const given = await losses({
			absorbedPowerW: lit.light.absorbedW,
			receiver: {
				...receiver,
				...(lit.size && {
					innerDiameterM: lit.size.innerDiameterM!,
					depthM: lit.size.depthM!,
					tube: { lengthM: lit.size.tubeLengthM },
				}),
			},
		});
		expect(given.efficiencyBasis).toBe("absorbed");
		expect(given.light.beamOnApertureW).toBeUndefined();
		given.table.usefulW.forEach((useful, i) => {
			expect(useful / lit.table.usefulW[i]!).toBeCloseTo(1, 6);
		});
		expect(given.stagnation.wallTemperatureC).toBeCloseTo(lit.stagnation.wallTemperatureC, 3);
	});

	it("keeps wall and film between the fluid and where they end without flow", async () => {
		for (const kind of kinds) {
			const { table, stagnation } = await losses({ dish, receiver: { kind }, beamIrradianceWPerM2: 1000 });
			table.wallTemperatureC.forEach((wall, i) => {
				expect(wall).toBeGreaterThan(table.oilTemperatureC[i]!);
				expect(wall).toBeLessThan(stagnation.wallTemperatureC);
				expect(table.filmTemperatureC[i]!).toBeGreaterThan(table.oilTemperatureC[i]!);
				expect(table.leavingTemperatureC[i]!).toBeGreaterThan(table.oilTemperatureC[i]!);
			});
		}
	});

	it("names the limits that stagnation passes, and warns of it", async () => {
		const { stagnation, cautions, fluidLimits } = await losses({ dish });
		expect(stagnation.passes).toEqual(["bulkLimit", "filmLimit", "flashPoint"]);
		expect(stagnation.wallTemperatureC).toBeGreaterThan(fluidLimits.filmLimit.temperatureC);
		expect(cautions.filter(({ severity }) => severity === "danger").map(({ code }) => code)).toEqual(
			expect.arrayContaining(["concentratedLight", "pumpStops", "fluidAboveFlashPoint"]),
		);
		const water = await losses({ dish, fluid: "water", oilTemperatureC: [40, 60] });
		expect(water.fluidLimits.flashPoint).toBeUndefined();
		expect(water.stagnation.passes).not.toContain("flashPoint");
	});

	it("stagnates in the stagnation's own sun, on its own warm day", async () => {
		const { light, stagnation } = await losses({ dish, beamIrradianceWPerM2: 500 });
		expect(stagnation.absorbedW / light.absorbedW).toBeCloseTo(2, 6); // 1000 against 500 W/m²
		const cool = await losses({ dish, stagnation: { ambientC: 0, windMPerS: 8, tiltDeg: 10 } });
		expect(cool.stagnation.wallTemperatureC).toBeLessThan(stagnation.wallTemperatureC - 25);
	});

	it("stagnates no hotter than the sun where nothing is lost", async () => {
		const { stagnation } = await losses({
			dish,
			receiver: { kind: "efficiencyLine", opticalEfficiency: 0.6, lossCoefficientWPerK: 0 },
		});
		expect(stagnation.wallTemperatureC).toBeCloseTo(6000 - 273.15, 6);
	});

	it("owns up to each correlation that a row or the standstill stretches", async () => {
		const outside = async (request: Request) =>
			(await losses(request)).methods.filter(({ outsideRange }) => outsideRange).map(({ name }) => name);
		const mild = await outside({ dish });
		expect(mild).toContain("Receiver: free convection from the cavity");
		expect(mild).toContain("Receiver: free convection from the cavity, second model");
		expect(mild).not.toContain("Receiver: wind at the cavity");
		expect(await outside({ dish, windMPerS: [2, 12] })).toContain("Receiver: wind at the cavity");
		expect(await outside({ dish, oilTemperatureC: [-15, 60], flowLPerMin: 0.2 })).toContain(
			"Film inside the receiver's tube",
		);
	});

	it("loses less to thin air", async () => {
		const at = async (elevationM: number) =>
			(await losses({ dish, windMPerS: [0], elevationM })).table.convectedW[3]!;
		expect(await at(3000)).toBeLessThan(await at(0));
	});
});

describe("400", () => {
	it("names every field at fault", async () => {
		const problem = await refused({
			dish,
			oilTemperatureC: [],
			windMPerS: [-1],
			stagnation: { beam: 1000 },
			tiltDeg: 45,
		});
		expect(problem.status).toBe(400);
		expect(problem.errors.map(({ pointer, code }) => `${pointer} ${code}`).toSorted()).toEqual([
			"/oilTemperatureC wrong_length",
			"/stagnation/beam unknown",
			"/tiltDeg wrong_type",
			"/windMPerS/0 out_of_bounds",
		]);
	});
});

describe("light given outright", () => {
	const coil = { kind: "openCoil", apertureDiameterM: 0.25 } as const;
	const asked = { absorbedPowerW: 900, receiver: coil };

	it("comes as from a rim angle of 45° unless one is given, and says so", async () => {
		const silent = await losses(asked);
		const taken = silent.assumed.find(({ pointer }) => pointer === "/rimAngleDeg")!;
		expect(taken.value).toBe(45);
		const said = await losses({ ...asked, rimAngleDeg: 45 });
		expect(said.light).toEqual(silent.light);
		expect(said.assumed.map(({ pointer }) => pointer)).not.toContain("/rimAngleDeg");
	});

	it("is thrown back the more the more it slants, by a flat coil most, by a cavity less; a dish has its own", async () => {
		const back = async (rimAngleDeg: number) => (await losses({ ...asked, rimAngleDeg })).light.reflectedW!;
		expect(await back(60)).toBeGreaterThan(await back(30));
		expect(await back(90)).toBeGreaterThan(1.8 * (await back(60)));
		const cavity = { absorbedPowerW: 900, receiver: { kind: "cavity", apertureDiameterM: 0.12 } } as const;
		const fromHollow = async (rimAngleDeg: number) =>
			(await losses({ ...cavity, rimAngleDeg })).light.reflectedW!;
		expect(await fromHollow(75)).toBeGreaterThan(1.2 * (await fromHollow(45)));
		expect(await fromHollow(75)).toBeLessThan((await back(75)) / 2);
		const share = async (rimAngleDeg: number) => {
			const { light } = await losses({ dish: { diameterM: 1.8, rimAngleDeg }, receiver: coil });
			return light.reflectedW! / light.enteringW!;
		};
		expect((await share(75)) / (await share(45))).toBeGreaterThan(1.3);
	});
});

describe("422", () => {
	const many = (count: number) => Array.from({ length: count }, (_, i) => 20 + i);
	it.each([
		["no light", {}, "", "contradictory"],
		["a rim angle beside a dish", { dish, rimAngleDeg: 60 }, "/rimAngleDeg", "contradictory"],
		["light twice", { dish, absorbedPowerW: 900 }, "/absorbedPowerW", "contradictory"],
		[
			"an aperture that nothing sizes",
			{ absorbedPowerW: 900 },
			"/receiver/apertureDiameterM",
			"contradictory",
		],
		["a dish without size", { dish: {} }, "/dish", "contradictory"],
		[
			"an off-axis dish on a polar axis on no hemisphere",
			{ dish: { kind: "offsetPolar", mirrorAreaM2: 8 } },
			"/latitude",
			"contradictory",
		],
		[
			"a receiver as large as the dish",
			{ dish, receiver: { kind: "openCoil", apertureDiameterM: 1.8 } },
			"/receiver/apertureDiameterM",
			"impossible",
		],
		[
			"a hollow narrower than its opening",
			{ dish, receiver: { kind: "cavity", apertureDiameterM: 0.2, innerDiameterM: 0.1 } },
			"/receiver/innerDiameterM",
			"contradictory",
		],
		[
			"more rows than one request may ask",
			{ dish, oilTemperatureC: many(21), windMPerS: many(10), tiltDeg: [45] },
			"/windMPerS",
			"too_large",
		],
	])("refuses %s", async (_name, request, pointer, code) => {
		const problem = await refused(request);
		expect(problem.status).toBe(422);
		expect(problem.errors).toContainEqual(expect.objectContaining({ pointer, code }));
	});

	it("answers as many rows as one request may ask", async () => {
		const { table } = await losses({
			dish,
			oilTemperatureC: many(20),
			windMPerS: [0, 1, 2, 3, 4, 5, 6, 7, 8, 9],
		});
		expect(table.usefulW).toHaveLength(200);
	});
});
