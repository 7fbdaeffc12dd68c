import { describe, expect, it } from "vitest";
import { insulationConductivity, insulationMaterial } from "../../../src/heat/insulation.ts";
import { convergedShellLoss, shellLossCoefficient } from "../../../src/tank/shell.ts";
import type { Tank } from "../../../src/tank/tank.ts";
import { aTank } from "./a-tank.ts";

const lagged = (thickness: number): Partial<Tank> => ({
	insulation: { material: "polyurethane", thickness, moisture: 0, surfaceEmittance: 0.9 },
});
const converged = (changes: Partial<Tank>) => convergedShellLoss(aTank(changes), 338.15, 293.15, 0, 101_325);

describe("shellLossCoefficient", () => {
	it("comes to the lagging's own conductance in a gale", () => {
		const tall: Partial<Tank> = {
			...lagged(0.05),
			height: 100,
			fill: 10,
			surroundings: { kind: "outdoors" },
		};
		const { coefficient } = convergedShellLoss(aTank(tall), 338.15, 293.15, 1000, 101_325);
		const k = insulationConductivity(insulationMaterial("polyurethane"), 315.65, 0);
		const cylinder = (2 * Math.PI * k * 100) / Math.log(0.252 / 0.202);
		expect(coefficient / cylinder).toBeGreaterThan(0.99);
		expect(coefficient / cylinder).toBeLessThan(1.01);
	});

	it("loses as a bare still-air surface without lagging: 7–13 W/m²K, its skin as warm as the water", () => {
		const { coefficient, surfaceTemperature } = converged(lagged(0));
		const area = Math.PI * 0.404 * 1.204 + (Math.PI * 0.404 ** 2) / 2;
		expect(coefficient / area).toBeGreaterThan(7);
		expect(coefficient / area).toBeLessThan(13);
		expect(surfaceTemperature).toBeCloseTo(338.15, 1);
	});

	it("falls with lagging, and less with each further centimetre", () => {
		const [a, b, c, d] = [0, 0.02, 0.04, 0.06].map((t) => converged(lagged(t)).coefficient);
		expect(a! - b!).toBeGreaterThan(b! - c!);
		expect(b! - c!).toBeGreaterThan(c! - d!);
		expect(c! - d!).toBeGreaterThan(0);
	});

	it("does not jump where the lagging gets thin to nothing", () => {
		expect(converged(lagged(1e-7)).coefficient / converged(lagged(0)).coefficient).toBeCloseTo(1, 3);
	});

	it("multiplies by the fittings, grows with wind and damp", () => {
		expect(converged({ fittingsFactor: 1.3 }).coefficient).toBeCloseTo(1.3 * converged({}).coefficient, 12);
		const outdoors = aTank({ surroundings: { kind: "outdoors" } });
		const calm = convergedShellLoss(outdoors, 338.15, 293.15, 0, 101_325).coefficient;
		expect(convergedShellLoss(outdoors, 338.15, 293.15, 5, 101_325).coefficient).toBeGreaterThan(calm);
		const damp = converged({
			insulation: { material: "mineralWool", thickness: 0.05, moisture: 0.05, surfaceEmittance: 0.9 },
		});
		const dry = converged({
			insulation: { material: "mineralWool", thickness: 0.05, moisture: 0, surfaceEmittance: 0.9 },
		});
		expect(damp.coefficient).toBeGreaterThan(1.1 * dry.coefficient);
	});

	it("knows no wind indoors", () => {
		const breeze = shellLossCoefficient(aTank({}), 338.15, 293.15, 8, 101_325, 296);
		expect(breeze).toEqual(shellLossCoefficient(aTank({}), 338.15, 293.15, 0, 101_325, 296));
	});

	it("repeats itself at its fixed point, and is within 1 % of it from a skin 2 K off", () => {
		const { coefficient, surfaceTemperature } = converged({});
		const again = shellLossCoefficient(aTank({}), 338.15, 293.15, 0, 101_325, surfaceTemperature);
		expect(again.surfaceTemperature).toBeCloseTo(surfaceTemperature, 5);
		const off = shellLossCoefficient(aTank({}), 338.15, 293.15, 0, 101_325, surfaceTemperature + 2);
		expect(Math.abs(off.coefficient / coefficient - 1)).toBeLessThan(0.01);
	});

	it("has a loss coefficient when water and air are of one temperature", () => {
		const { coefficient, surfaceTemperature } = convergedShellLoss(aTank({}), 293.15, 293.15, 0, 101_325);
		expect(coefficient).toBeGreaterThan(0.5);
		expect(surfaceTemperature).toBeCloseTo(293.15, 9);
	});
});
