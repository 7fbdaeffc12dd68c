import { describe, expect, it } from "vitest";
import { tankModel } from "../../../src/tank/model.ts";
import { usableVolume } from "../../../src/tap/usable.ts";
import { aTank, graded } from "../tank/a-tank.ts";

const usable = (layers: Float64Array, changes: object, mains: number) =>
	usableVolume(tankModel(aTank({ ...changes, startTemperatures: layers })), layers, 313.15, mains);

describe("usableVolume", () => {
	it("is the tank itself at the wanted temperature, and nothing below it", () => {
		expect(usable(new Float64Array(10).fill(313.15), {}, 283.15)).toBeCloseTo(0.15, 9);
		expect(usable(new Float64Array(10).fill(313.1), {}, 283.15)).toBe(0);
	});

	it("grows with the tank's heat and with warmer mains", () => {
		const base = usable(graded(10, 340, 300), {}, 283.15);
		expect(usable(graded(10, 345, 305), {}, 283.15)).toBeGreaterThan(base);
		expect(usable(graded(10, 340, 300), {}, 288.15)).toBeGreaterThan(base);
	});

	it("leaves out what stands above the outlet", () => {
		const layers = new Float64Array(10).fill(330);
		const half = usable(layers, { outletHeight: 0.45 }, 283.15);
		expect(half / usable(layers, {}, 283.15)).toBeCloseTo(0.5, 12);
	});

	it("refuses a mains as warm as the wanted", () => {
		expect(() => usable(graded(10, 340, 320), {}, 313.15)).toThrow("not colder");
	});
});
