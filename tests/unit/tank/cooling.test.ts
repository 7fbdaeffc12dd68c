import { describe, expect, it } from "vitest";
import { standingLoss, tankCooling } from "../../../src/tank/cooling.ts";
import { energyClass, standingLossLimit } from "../../../src/tank/energy-class.ts";
import { tankModel, tankState } from "../../../src/tank/model.ts";
import { aTank, graded, sum } from "./a-tank.ts";

const air = { ambient: 283.15, wind: 3, pressure: 101_325 };
const night = { duration: 43_200, rowStep: 3600, limits: [331.15], limitAt: "mean" } as const;

describe("tankCooling", () => {
	it("accounts for every joule it lost", () => {
		const tank = aTank({ startTemperatures: graded(10, 345, 310), surroundings: { kind: "outdoors" } });
		const model = tankModel(tank);
		const cooled = tankCooling(tank, air, night);
		const before = sum(tankState(model, tank.startTemperatures).energies);
		const after = sum(tankState(model, cooled.endTemperatures).energies);
		expect((before - after) / cooled.loss).toBeCloseTo(1, 9);
	});

	it("has a row at the start, at each step and at the end", () => {
		const { curve } = tankCooling(aTank({}), air, { ...night, duration: 9000 });
		expect(curve.time).toEqual([0, 3600, 7200, 9000]);
		expect(curve.mean).toHaveLength(4);
	});

	it("falls under the limit when its curve does, and never under the air's temperature", () => {
		const { belowAfter, curve } = tankCooling(aTank({}), air, night);
		const after = curve.mean.findIndex((t) => t < night.limits[0]);
		expect(belowAfter[0]).toBeGreaterThan(curve.time[after - 1]!);
		expect(belowAfter[0]).toBeLessThanOrEqual(curve.time[after]!);
		const years = tankCooling(aTank({}), air, { ...night, duration: 4e7, rowStep: 1e6, limits: [290] });
		expect(years.belowAfter[0]).toBeUndefined();
		expect(years.curve.mean.at(-1)).toBeCloseTo(293.15, 3);
	});

	it("times each limit on its own, in the mean or at the top, the colder the later", () => {
		const tank = aTank({ startTemperatures: graded(10, 343.15, 323.15) });
		const limits = [332.15, 331.15, 329.15];
		const { belowAfter } = tankCooling(tank, air, { ...night, limits });
		const times = belowAfter.map((time) => time!);
		expect(times).toEqual([...times].sort((a, b) => a - b));
		limits.forEach((limit, i) => {
			const alone = tankCooling(tank, air, { ...night, limits: [limit] }).belowAfter[0]!;
			expect(alone).toBe(times[i]);
		});
		const top = tankCooling(tank, air, { ...night, limits: [343], limitAt: "top" });
		expect(top.belowAfter[0]).toBeGreaterThan(0);
		expect(tankCooling(tank, air, { ...night, limits: [343] }).belowAfter[0]).toBe(0);
	});

	it("shows as power what it counts as loss", () => {
		const tank = aTank({ startTemperatures: graded(10, 343.15, 323.15) });
		const { curve, loss, lossCoefficient } = tankCooling(tank, air, night);
		const lost = curve.power.slice(1).reduce((total, power) => total + power * night.rowStep, 0);
		expect(lost / loss).toBeCloseTo(1, 12);
		expect(Math.abs(curve.power[0]! / curve.power[1]! - 1)).toBeLessThan(0.03);
		expect(curve.power[0]).toBeLessThan(lossCoefficient * (343.15 - 293.15));
	});

	it("loses first at the rate of its own heat capacity", () => {
		const { curve, heatCapacity } = tankCooling(aTank({}), air, { ...night, duration: 600, rowStep: 60 });
		const rate = (curve.mean[0]! - curve.mean[1]!) / 60;
		expect(Math.abs((rate * heatCapacity) / curve.power[1]! - 1)).toBeLessThan(1e-3);
	});

	it("is under the limit at once if it starts so", () => {
		expect(tankCooling(aTank({}), air, { ...night, limits: [350] }).belowAfter).toEqual([0]);
	});

	it("cools faster outdoors in the wind than indoors", () => {
		const out = tankCooling(aTank({ surroundings: { kind: "outdoors" } }), air, night);
		expect(out.loss).toBeGreaterThan(tankCooling(aTank({}), air, night).loss);
	});

	it("does not hang on its rows", () => {
		const coarse = tankCooling(aTank({}), air, { ...night, rowStep: 43_200 }).curve.mean.at(-1)!;
		const fine = tankCooling(aTank({}), air, { ...night, rowStep: 60 }).curve.mean.at(-1)!;
		expect(coarse).toBeCloseTo(fine, 2);
	});

	it("rates the tank at 65 °C in a room of 20 °C, wherever it stands and however warm it is", () => {
		const elsewhere = aTank({ surroundings: { kind: "outdoors" }, startTemperatures: graded(4, 320, 300) });
		expect(standingLoss(elsewhere)).toEqual(standingLoss(aTank({})));
	});

	it("rates the vessel, however much water stands in it", () => {
		const half = standingLoss(aTank({ fill: 0.075 }));
		expect(half.volume).toBeCloseTo(Math.PI * 0.04 * 1.2, 12);
		expect(half.energyClass).toBe(standingLoss(aTank({})).energyClass);
		expect(half.power / half.coefficient).toBeCloseTo(45, 12);
	});

	it("refuses no time and rows without number", () => {
		expect(() => tankCooling(aTank({}), air, { ...night, duration: 0 })).toThrow("cooling time");
		expect(() => tankCooling(aTank({}), air, { ...night, rowStep: 1e-3 })).toThrow(
			"step of the cooling curve",
		);
		expect(() => tankCooling(aTank({}), air, { ...night, rowStep: Number.NaN })).toThrow("step");
	});
});

describe("energyClass", () => {
	it("gives the best class whose limit the loss is under", () => {
		expect(energyClass(25, 0.1)).toBe("A+");
		expect(energyClass(50, 0.1)).toBe("C");
		expect(energyClass(69, 0.1)).toBe("C");
		expect(energyClass(70, 0.1)).toBe("D");
		expect(energyClass(200, 0.1)).toBe("G");
	});

	it("counts a loss at the limit to the next class", () => {
		expect(energyClass(standingLossLimit("B", 0.2), 0.2)).toBe("C");
	});

	it("refuses a loss that is not a number", () => {
		expect(() => energyClass(Number.NaN, 0.1)).toThrow("standing loss");
	});
});
