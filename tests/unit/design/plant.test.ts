import { describe, expect, it } from "vitest";
import { designPlant } from "../../../src/design/plant.ts";
import { warmUpDay } from "../../../src/plant/day.ts";
import { stepTimes } from "../../../src/plant/times.ts";
import { clearWeather } from "../../../src/sky/clear-weather.ts";
import { cavity, celsius, coil, dish, loop, sparse, tank } from "./sparse-plant.ts";

/** Every number in plain data, by its path. */
function numbersIn(value: unknown, path = ""): readonly (readonly [path: string, number: number])[] {
	if (typeof value === "number") return [[path, value]];
	if (typeof value !== "object" || value === null) return [];
	return Object.entries(value).flatMap(([key, inside]) => numbersIn(inside, `${path}.${key}`));
}

describe("a plant of a dish's and a tank's size", () => {
	const { design, assumed } = designPlant(sparse);

	it("is complete: every size is a finite number", () => {
		const { fluid: _fluid, ...rest } = design.loop;
		const numbers = numbersIn({ ...design, loop: rest });
		expect(numbers.length).toBeGreaterThan(60);
		for (const [path, number] of numbers) expect(Number.isFinite(number), path).toBe(true);
	});

	it("says each thing that it assumed once, with its value and a reason to read alone", () => {
		expect(assumed.map(({ subject }) => subject)).toEqual([
			"dish.rimAngle",
			"receiver.innerDiameter",
			"receiver.depth",
			"receiver.tube.length",
			"loop.pump.casingLossCoefficient",
			"loop.control.highLimit",
			"loop.control.oilLimit",
			"loop.expansionVolume",
			"coil.coilDiameter",
			"coil.length",
			"tank.diameter",
			"tank.height",
			"tank.fill",
			"tank.startTemperature",
			"tank.layers",
		]);
		const values = Object.fromEntries(assumed.map(({ subject, value }) => [subject, value]));
		expect(values["tank.height"]).toBe(design.tank.height);
		expect(values["coil.length"]).toBe(design.coil.length);
		expect(values["loop.control.oilLimit"]).toBe(design.loop.control.oilLimit);
		for (const { subject, grounds } of assumed) {
			expect(grounds.reason.length, subject).toBeGreaterThan(8);
			expect(grounds.reason, subject).not.toMatch(/from memory|no source/);
			const published = ["standard", "handbook", "measured"].includes(grounds.basis);
			expect(grounds.source !== undefined, subject).toBe(published);
		}
	});

	it("warms its water on a clear day", () => {
		const noon = Date.UTC(2025, 0, 15, 12) / 1000;
		const task = {
			...{ start: noon - 7200, end: noon + 7200, step: 120, seriesStep: 900, draws: [] },
			target: { temperature: celsius(60), at: "mean" as const },
			mains: sparse.mains,
		};
		const sky = { turbidity: 3, ambientMinimum: celsius(5), ambientMaximum: celsius(15), wind: 2 };
		const day = warmUpDay(design, clearWeather(design.site, sky, stepTimes(task)), task);
		expect(day.endMean).toBeGreaterThan(sparse.mains + 5);
		expect(day.maximumOil).toBeLessThan(design.loop.control.oilLimit + 20);
	});
});

it("a plant whose sizes are stated keeps them, and assumes nothing", () => {
	const { design, assumed } = designPlant({
		...sparse,
		dish: { ...dish, focalLength: 1.1 },
		receiver: {
			...cavity,
			apertureDiameter: 0.14,
			innerDiameter: 0.25,
			depth: 0.3,
			tube: { ...cavity.tube, length: 18 },
		},
		loop: {
			...loop,
			pump: { ...loop.pump, casingLossCoefficient: 0.4 },
			control: { ...loop.control, highLimit: celsius(80), oilLimit: celsius(150) },
			expansionVolume: 0.002,
		},
		coil: { ...coil, length: 11, coilDiameter: 0.3 },
		tank: { ...tank, fill: 0.14, height: 1, diameter: 0.437, startTemperature: [310, 300, 290] },
	});
	expect(assumed).toEqual([]);
	expect(design).toMatchObject({
		dish: { diameter: 2, focalLength: 1.1 },
		receiver: { apertureDiameter: 0.14, innerDiameter: 0.25, depth: 0.3, tube: { length: 18 } },
		loop: {
			pump: { casingLossCoefficient: 0.4 },
			control: { highLimit: celsius(80), oilLimit: celsius(150) },
			expansionVolume: 0.002,
		},
		coil: { length: 11, coilDiameter: 0.3 },
		tank: { fill: 0.14, height: 1, diameter: 0.437, startTemperatures: Float64Array.of(310, 300, 290) },
	});
});
