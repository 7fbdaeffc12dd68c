import { expect } from "vitest";
import { warmUpDay } from "../../../src/plant/day.ts";
import { clearDay } from "./plants.ts";
import { randomDay } from "./random-plants.ts";

/** Holds a random plant's day to the laws that no plant can break. */
export function expectLaws(seed: number): void {
	const { plant, task: day, wind } = randomDay(seed);
	const outcome = warmUpDay(plant, clearDay(plant.site, day, wind), day);
	const { balance, series } = outcome;
	const start = plant.tank.startTemperatures[0]!;
	const said = `seed ${seed}`;
	expect(balance.residual, said).toBeLessThan(1e-9 * Math.max(balance.beam, 1e6));
	for (const t of outcome.endTemperatures) expect(t, said).toBeLessThanOrEqual(outcome.boilingPoint + 1e-9);
	const hottestTank = series.tankTop.reduce((most, t) => Math.max(most, t), 0);
	expect(hottestTank, said).toBeLessThanOrEqual(Math.max(outcome.maximumOil, start) + 1e-6);
	expect(outcome.maximumOil, said).toBeLessThanOrEqual(outcome.maximumFilm + 1e-9);
	const warmest = Math.max(outcome.stagnation, start, 300);
	expect(outcome.maximumFilm, said).toBeLessThanOrEqual(warmest + 25); // reference sky is 25 °C, the start may be warm
	expect(outcome.overallEfficiency, said).toBeLessThan(1);
	expect(Number.isFinite(outcome.usableVolume), said).toBe(true);
	expect(outcome.reached, said).toBe(outcome.shortfall === undefined);
	if (!outcome.reached) return;
	expect(outcome.targetTime, said).toBeGreaterThanOrEqual(day.start);
	expect(outcome.targetTime, said).toBeLessThanOrEqual(day.end);
}
