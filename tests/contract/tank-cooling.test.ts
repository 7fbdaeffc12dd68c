import { describe, expect, it } from "vitest";
import { type Answer, type Body, RaykettleProblem } from "../../sdk/index.ts";
import { parsed, raykettle } from "./service.ts";

type Request = Body<"getTankCooling">;
type Cooling = Answer<"getTankCooling">;

/** The answer to a request, held against its schema and against what every tank must obey. */
async function cooled(request: Request): Promise<Cooling> {
	const answer = await raykettle.tankCooling(request);
	parsed("getTankCooling", answer);
	const { stepMin, ...columns } = answer.series;
	expect(stepMin).toBe(request.seriesStepMin ?? 30);
	expect(new Set(Object.values(columns).map((column) => column.length)).size).toBe(1);
	const { elapsedMin, tankLossW, tankMeanC } = answer.series;
	const lost = elapsedMin
		.slice(1)
		.reduce((sum, end, i) => sum + (tankLossW[i + 1]! * (end - elapsedMin[i]!)) / 60, 0);
	expect(lost / 1000).toBeCloseTo(answer.lossKwh, 6);
	expect(answer.endTemperatureC).toBe(tankMeanC.at(-1));
	const mean = answer.layerTemperaturesC.reduce((sum, t) => sum + t, 0) / answer.layerTemperaturesC.length;
	expect(mean).toBeCloseTo(answer.endTemperatureC, 5);
	expect(JSON.stringify(answer)).not.toMatch(/null|NaN/);
	return answer;
}

async function refused(request: unknown): Promise<RaykettleProblem> {
	const error = await raykettle.tankCooling(request as Request).catch((caught: unknown) => caught);
	if (!(error instanceof RaykettleProblem)) throw new Error("the request was answered");
	return error;
}

const cellar = { volumeL: 150, surroundingsC: 20, startTemperatureC: 60 };

describe("200", () => {
	it("cools 200 L at 2 W/K from 60 °C in 20 °C to 52.45 °C in a day", async () => {
		// T_air + ΔT·exp(−UA·t/C) with C of 200 L of water at 50 °C (IAPWS R7-97: 988.05 kg/m³, 4.1799 kJ/kgK): the stand-by test of EN 12977-3, annex A.
		// The shell's coefficient falls as it cools, so the fittings' factor puts its mean over the day at 2 W/K.
		const tank = {
			volumeL: 201.5,
			fillL: 200.99, // 197.61 kg at the 983.2 kg/m³ of 60 °C
			nodes: 1,
			wallMaterial: "polyethylene" as const,
			wallThicknessMm: 0.3,
			insulation: { material: "mineralWool" as const, thicknessMm: 60 },
			surroundingsC: 20,
		};
		const at = async (startTemperatureC: number, fittingsFactor: number) =>
			cooled({ tank: { ...tank, startTemperatureC, fittingsFactor }, durationH: 24 });
		const bare = ((await at(60, 1)).lossCoefficientWPerK + (await at(52.45, 1)).lossCoefficientWPerK) / 2;
		const day = await at(60, 2 / bare);
		expect(Math.abs(day.lossCoefficientWPerK - 2)).toBeLessThan(0.03);
		expect(Math.abs(day.endTemperatureC - 52.45)).toBeLessThan(0.03);
		expect(day.timeConstantH).toBeCloseTo(day.heatCapacityKjPerK / day.lossCoefficientWPerK / 3.6, 3);
	});

	// Regulation (EU) 812/2013, Annex II, table 2: A+ 5.5 + 3.16 V^0.4 to F 31 + 16.66 V^0.4
	it.each([
		[50, 20.6, 28.8, 40.4, 56.5, 70.4, 91.3, 110.7],
		[100, 25.4, 35.3, 49.4, 69.2, 86.2, 112.2, 136.1],
		[150, 28.9, 40.0, 56.0, 78.5, 97.7, 127.4, 154.6],
		[200, 31.8, 43.9, 61.4, 86.0, 107.0, 139.7, 169.7],
		[300, 36.4, 50.1, 70.1, 98.2, 122.1, 159.8, 194.1],
		[500, 43.5, 59.5, 83.2, 116.7, 145.1, 190.1, 231.1],
	])("parts the classes of %i L as the regulation does", async (volumeL, ...published) => {
		const { standing } = await cooled({ tank: { volumeL } });
		standing.classLimits.forEach(({ belowW }, i) => {
			expect(Math.abs(belowW - published[i]!)).toBeLessThan(0.051);
		});
		expect(standing.ecodesignLimitW).toBe(standing.classLimits[3]!.belowW);
		const own = standing.classLimits.find(({ belowW }) => standing.standingLossW < belowW);
		expect(standing.energyClass).toBe(own?.energyClass ?? "G");
		expect(standing.standingLossW / standing.lossCoefficientWPerK).toBeCloseTo(45, 5);
		expect(standing.standingLossKwhPerDay).toBeCloseTo(standing.standingLossW * 0.024, 6);
	});

	it("walks down the classes as the lagging thins, and past what may be sold", async () => {
		const classes = await Promise.all(
			[200, 120, 80, 50, 30, 20, 5, 0].map(
				async (thicknessMm) => (await cooled({ tank: { ...cellar, insulation: { thicknessMm } } })).standing,
			),
		);
		const letters = classes.map(({ energyClass }) => energyClass);
		const order = ["A+", "A", "B", "C", "D", "E", "F", "G"];
		const ranks = letters.map((letter) => order.indexOf(letter));
		expect(ranks).toEqual(ranks.toSorted((a, b) => a - b));
		expect(letters[0]).toBe("A+");
		expect(letters.at(-1)).toBe("G");
		for (const { energyClass, withinEcodesignLimit } of classes)
			expect(withinEcodesignLimit).toBe(order.indexOf(energyClass) <= 3);
	});

	it("rates a tank alike wherever it stands and however hot it is", async () => {
		const indoors = await cooled({ tank: cellar });
		const roof = await cooled({ tank: { volumeL: 150 }, ambientC: -10, windMPerS: 8, elevationM: 3000 });
		expect(roof.standing).toEqual(indoors.standing);
		expect(roof.lossKwh).toBeGreaterThan(indoors.lossKwh);
	});

	it("times one limit or many, in the order asked, and says which come later or never", async () => {
		const many = await cooled({ tank: cellar, untilC: [55, 62, 58, 30, 15], durationH: 48 });
		expect(many.hoursUntilC.map(({ temperatureC, outcome }) => [temperatureC, outcome])).toEqual([
			[55, "reached"],
			[62, "reached"],
			[58, "reached"],
			[30, "later"],
			[15, "never"],
		]);
		const [at55, at62, at58, ...rest] = many.hoursUntilC;
		expect(at62!.hours).toBe(0);
		expect(at58!.hours).toBeGreaterThan(0);
		expect(at55!.hours).toBeGreaterThan(at58!.hours!);
		for (const row of rest) expect(row).not.toHaveProperty("hours");
		const one = await cooled({ tank: cellar, untilC: 55, durationH: 48 });
		expect(one.hoursUntilC).toEqual([at55]);
		const row = many.series.tankMeanC.findIndex((t) => t < 55);
		expect(at55!.hours! * 60).toBeLessThanOrEqual(many.series.elapsedMin[row]!);
		expect(at55!.hours! * 60).toBeGreaterThan(many.series.elapsedMin[row - 1]!);
	});

	it("keeps layers apart for hours, and counts the top where asked", async () => {
		const layered = { ...cellar, startTemperatureC: [68, 66, 60, 50, 40, 30] };
		const mean = await cooled({ tank: layered, untilC: 55 });
		const top = await cooled({ tank: layered, untilC: 65, untilAt: "top" });
		expect(mean.hoursUntilC[0]).toEqual({ temperatureC: 55, outcome: "reached", hours: 0 });
		expect(top.hoursUntilC[0]!.hours).toBeGreaterThan(1);
		const { tankTopC, tankBottomC, tankMeanC } = mean.series;
		expect([tankTopC[0], tankBottomC[0]]).toEqual([68, 30]);
		tankTopC.forEach((warm, i) => {
			expect(warm).toBeGreaterThanOrEqual(tankMeanC[i]!);
			expect(tankMeanC[i]).toBeGreaterThanOrEqual(tankBottomC[i]!);
		});
		expect(mean.layerTemperaturesC).toHaveLength(6);
	});

	it("warms a cold tank towards its surroundings, never past them", async () => {
		const { series, lossKwh, hoursUntilC } = await cooled({
			tank: { ...cellar, startTemperatureC: 5 },
			durationH: 168,
			seriesStepMin: 720,
			untilC: 4,
		});
		expect(lossKwh).toBeLessThan(0);
		expect(series.tankMeanC.at(-1)).toBeGreaterThan(5);
		expect(series.tankMeanC.at(-1)).toBeLessThan(20);
		expect(hoursUntilC[0]!.outcome).toBe("never");
	});

	it("gives its last row at the end, nearer where the steps do not come out", async () => {
		const { series } = await cooled({ tank: cellar, durationH: 1, seriesStepMin: 25 });
		expect(series.elapsedMin).toEqual([0, 25, 50, 60]);
	});

	it("starts hot unless told, and says so", async () => {
		const { assumed, series } = await cooled({ tank: { volumeL: 150 } });
		expect(series.tankMeanC[0]).toBe(60);
		expect(assumed).toContainEqual(
			expect.objectContaining({ pointer: "/tank/startTemperatureC", value: 60 }),
		);
	});

	it("warns of scalding, bacteria, frost, fibres, hot skin, wet lagging and pressure", async () => {
		const { cautions } = await cooled({
			tank: {
				volumeL: 150,
				startTemperatureC: 95,
				vented: false,
				insulation: { material: "mineralWool", thicknessMm: 1, moistFraction: 0.1, weatherproof: false },
			},
			ambientC: -5,
			windMPerS: 0,
		});
		const codes = cautions.map(({ code }) => code);
		for (const code of [
			"scald",
			"closedTank",
			"legionella",
			"tankFreezes",
			"fibreDust",
			"hotSurface",
			"wetInsulation",
		])
			expect(codes).toContain(code);
		const cool = await cooled({
			tank: { ...cellar, startTemperatureC: 40, insulation: { weatherproof: false } },
		});
		const few = cool.cautions.map(({ code }) => code);
		for (const code of ["scald", "tankFreezes", "fibreDust", "hotSurface", "wetInsulation", "closedTank"])
			expect(few).not.toContain(code);
	});

	it("flags a class beyond the label's volumes, and foam beyond its heat", async () => {
		const flagged = async (tank: Request["tank"]) =>
			(await cooled({ tank })).methods.filter(({ outsideRange }) => outsideRange).map(({ name }) => name);
		expect(await flagged({ volumeL: 500 })).toEqual([]);
		expect(await flagged({ volumeL: 800 })).toEqual(["Energy class of a hot water storage tank"]);
		expect(
			await flagged({
				volumeL: 200,
				vented: false,
				startTemperatureC: 130,
				insulation: { moistFraction: 0.02 },
			}),
		).toEqual([expect.stringContaining("Tank insulation"), "Conductivity of damp insulation"]);
	});
});

describe("400", () => {
	it("names every fault at once", async () => {
		const { status, errors } = await refused({
			tank: { volumeL: 1, colour: "red" },
			durationH: 1000,
			untilC: [],
			untilAt: "bottom",
		});
		expect(status).toBe(400);
		expect(errors.map(({ pointer, code }) => `${pointer} ${code}`).toSorted()).toEqual([
			"/durationH out_of_bounds",
			"/tank/colour unknown",
			"/tank/volumeL out_of_bounds",
			"/untilAt not_a_choice",
			"/untilC wrong_length",
		]);
	});

	it("wants a tank", async () => {
		expect((await refused({})).errors[0]).toMatchObject({ pointer: "/tank", code: "missing" });
	});
});

describe("422", () => {
	it.each([
		[
			"water that boils",
			{ tank: { ...cellar, startTemperatureC: 95 }, elevationM: 3000 },
			"/tank/startTemperatureC",
			"impossible",
		],
		["more water than the tank holds", { tank: { ...cellar, fillL: 200 } }, "/tank/fillL", "contradictory"],
		[
			"dimensions that do not hold it",
			{ tank: { ...cellar, heightM: 1, diameterM: 1 } },
			"/tank/volumeL",
			"contradictory",
		],
		[
			"relief on a vented tank",
			{ tank: { ...cellar, reliefPressureKpa: 300 } },
			"/tank/reliefPressureKpa",
			"contradictory",
		],
		[
			"a profile of other layers",
			{ tank: { ...cellar, nodes: 5, startTemperatureC: [60, 50] } },
			"/tank/startTemperatureC",
			"contradictory",
		],
		[
			"rows longer than the time",
			{ tank: cellar, durationH: 1, seriesStepMin: 90 },
			"/seriesStepMin",
			"contradictory",
		],
		["a week by minutes", { tank: cellar, durationH: 168, seriesStepMin: 5 }, "/seriesStepMin", "too_large"],
		[
			"sodden foam",
			{ tank: { ...cellar, insulation: { material: "polyethyleneFoam", moistFraction: 0.12 } } },
			"/tank/insulation/moistFraction",
			"out_of_range",
		],
	])("refuses %s", async (_name, request, pointer, code) => {
		const problem = await refused(request);
		expect(problem.status).toBe(422);
		expect(problem.errors).toContainEqual(expect.objectContaining({ pointer, code }));
	});
});
