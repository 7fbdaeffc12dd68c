import { describe, expect, it } from "vitest";
import { warmUpDay } from "../../../src/plant/day.ts";
import type { DayOutcome } from "../../../src/plant/outcome.ts";
import type { Plant, Task } from "../../../src/plant/plant.ts";
import { expectLaws } from "./laws.ts";
import { cavity, clearDay, glazedCoil, measuredDish, openCoil, pipe, plant, site, task } from "./plants.ts";

const outcomeOf = (of: Plant, day: Task, wind = 2): DayOutcome =>
	warmUpDay(of, clearDay(of.site, day, wind), day);

const ONE_STEP = task.step;
const receivers = [cavity, openCoil, glazedCoil, measuredDish];
const bigTank: Plant = { ...plant, tank: { ...plant.tank, fill: 0.3, height: 2.2 } }; // that neither boils nor meets a limit

describe.each(receivers.map((receiver) => [receiver.kind, { ...plant, receiver }] as const))(
	"a clear day with receiver %s",
	(_kind, base) => {
		it("moves the time to target by less than 0.5 % when the step is halved", () => {
			for (const step of [120, 60]) {
				const coarse = outcomeOf(base, { ...task, step });
				const fine = outcomeOf(base, { ...task, step: step / 2 });
				const minutes = (o: DayOutcome) => o.targetTime - task.start;
				expect(coarse.reached && fine.reached).toBe(true);
				expect(Math.abs(minutes(coarse) / minutes(fine) - 1)).toBeLessThan(0.005);
			}
		});

		it("closes its balance to 1e-9 of the beam", () => {
			const { balance } = outcomeOf(base, task);
			expect(balance.beam).toBeGreaterThan(5e7);
			expect(balance.residual).toBeLessThan(1e-9 * balance.beam);
		});

		it("is never slower with more mirror", () => {
			if (base.dish.kind !== "twoAxis") throw new Error("this plant has a two-axis dish");
			const larger = { ...base, dish: { ...base.dish, diameter: 2.3, focalLength: 0.9 * 1.15 } };
			expect(outcomeOf(larger, task).targetTime).toBeLessThan(outcomeOf(base, task).targetTime);
		});

		it("is never slower with less wind", () => {
			for (const wind of [1, 3, 6])
				expect(outcomeOf(base, task, wind - 1).targetTime).toBeLessThanOrEqual(
					outcomeOf(base, task, wind).targetTime + ONE_STEP,
				);
		});

		it("is never slower with thicker lagging than the critical radius", () => {
			const lagged = (thickness: number): Plant => ({
				...base,
				loop: { ...base.loop, supply: pipe(4, thickness), return: pipe(4, thickness) },
			});
			const times = [0, 0.01, 0.02, 0.04, 0.08].map((t) => outcomeOf(lagged(t), task).targetTime);
			for (let i = 1; i < times.length; i++) expect(times[i]!).toBeLessThanOrEqual(times[i - 1]! + ONE_STEP);
			expect(times.at(-1)!).toBeLessThan(times[0]!);
		});
	},
);

describe("a hundred random plants", () => {
	it("close their balances, stay below boiling and keep to the second law", () => {
		for (let seed = 1; seed <= 100; seed++) expectLaws(seed);
	});
});

describe("limits and edges", () => {
	it("answers the same twice", () => {
		expect(outcomeOf(plant, task)).toEqual(outcomeOf(plant, task));
	});

	it("meets a target that is met already at the start", () => {
		const day: Task = { ...task, target: { temperature: 280, at: "mean" } };
		const outcome = outcomeOf(plant, day);
		expect(outcome.reached).toBe(true);
		expect(outcome.targetTime).toBe(day.start);
	});

	it("names boiling as the limit of a target above it, and never exceeds the boiling point", () => {
		const outcome = outcomeOf(plant, { ...task, target: { temperature: 372, at: "mean" } });
		expect(outcome.shortfall).toBe("limitedByBoiling");
		expect(outcome.boils).toBe(true);
		expect(outcome.endTop).toBeLessThanOrEqual(outcome.boilingPoint);
		expect(outcome.balance.vented).toBeGreaterThan(0);
	});

	it("turns the dish away at the tank's high limit and counts what it left", () => {
		const limited: Plant = {
			...plant,
			loop: { ...plant.loop, control: { ...plant.loop.control, highLimit: 333.15 } },
		};
		const outcome = outcomeOf(limited, { ...task, target: { temperature: 340, at: "mean" } });
		expect(outcome.shortfall).toBe("limitedByHighLimit");
		expect(outcome.endTop).toBeLessThan(340);
		expect(outcome.balance.turnedAway).toBeGreaterThan(0.1 * outcome.balance.beam);
	});

	it("keeps the oil near its limit when the pump is too weak for the dish", () => {
		const weak: Plant = {
			...plant,
			loop: {
				...plant.loop,
				pump: { ...plant.loop.pump, flow: 0.3 / 60_000 },
				control: { ...plant.loop.control, oilLimit: 373.15 },
			},
		};
		const outcome = outcomeOf(weak, task);
		expect(outcome.turnedAwayTime).toBeGreaterThan(0);
	});

	it("has no sun to work with at night", () => {
		const night: Task = { ...task, start: task.start - 6 * 3600, end: task.start - 2 * 3600 };
		const outcome = outcomeOf(plant, night);
		expect(outcome.shortfall).toBe("noSun");
		expect(outcome.balance.beam).toBe(0);
		expect(outcome.overallEfficiency).toBe(0);
		expect(outcome.endMean).toBeLessThan(plant.tank.startTemperatures[0]!);
	});

	it("waits for the sun to rise above what the dish can reach", () => {
		const low: Plant = { ...plant, dish: { ...plant.dish, lowestAltitude: 1.4 } };
		const outcome = outcomeOf(low, task);
		expect(outcome.shortfall).toBe("sunBelowDish");
		expect(outcome.balance.turnedAway).toBeCloseTo(outcome.balance.beam, 6);
	});

	it("gives the same heat by draws in one go or in ten parts", () => {
		const draw = (time: number, volume: number) => ({
			time,
			demand: { kind: "volume", volume } as const,
			temperature: 313.15,
			flow: 6 / 60_000,
		});
		const noon = task.start + 5 * 3600;
		const whole = outcomeOf(bigTank, { ...task, draws: [draw(noon, 0.06)] });
		const parts = outcomeOf(bigTank, {
			...task,
			draws: Array.from({ length: 10 }, (_, i) => draw(noon + 60 * i, 0.006)),
		});
		expect(whole.deliveredHeat + whole.unmetHeat).toBeCloseTo(parts.deliveredHeat + parts.unmetHeat, 0);
		expect(Math.abs(whole.endMean - parts.endMean)).toBeLessThan(0.05);
	});

	it("keeps more hot water when cold enters below than when it enters on top", () => {
		const shower = {
			time: task.start + 6 * 3600,
			demand: { kind: "volume", volume: 0.08 } as const,
			temperature: 313.15,
			flow: 8 / 60_000,
		};
		const day: Task = { ...task, draws: [shower], end: task.start + 6.5 * 3600 };
		const upsideDown: Plant = { ...bigTank, tank: { ...bigTank.tank, inletHeight: 1, outletHeight: 0 } };
		expect(outcomeOf(bigTank, day).endTop).toBeGreaterThan(outcomeOf(upsideDown, day).endTop);
	});

	it("starts from 0 °C water and oil in frost without wind", () => {
		const frozen: Plant = {
			...plant,
			tank: { ...plant.tank, startTemperatures: new Float64Array(10).fill(273.15) },
		};
		const outcome = outcomeOf(frozen, { ...task, mains: 273.15 }, 0);
		expect(outcome.reached).toBe(true);
		expect(outcome.starvedTime).toBeGreaterThan(0); // VG 32 is thick at 0 °C
	});

	it("loses more without lagging at a site that is otherwise the same", () => {
		const bare: Plant = { ...plant, loop: { ...plant.loop, supply: pipe(4, 0), return: pipe(4, 0) } };
		const lost = (o: DayOutcome) => o.balance.loop.supplyPipe + o.balance.loop.returnPipe;
		expect(lost(outcomeOf(bare, task))).toBeGreaterThan(2 * lost(outcomeOf(plant, task)));
	});

	it("boils sooner higher up", () => {
		const at = (elevation: number): Plant => ({ ...plant, site: { ...site, elevation } });
		expect(outcomeOf(at(4000), task).boilTime).toBeLessThan(outcomeOf(at(2000), task).boilTime);
	});

	it("reaches the target at the same time by any step where the fluid's limit turns the dish away", () => {
		const dish = { ...plant.dish, kind: "twoAxis", diameter: 4, focalLength: 1.8 } as const;
		const weak: Plant = {
			...plant,
			dish,
			loop: {
				...plant.loop,
				pump: { ...plant.loop.pump, flow: 0.5 / 60_000 },
				control: { ...plant.loop.control, oilLimit: 433.15 },
			},
		};
		const [fine, coarse] = [30, 240].map((step) => outcomeOf(weak, { ...task, step }));
		expect(fine!.turnedAwayTime).toBeGreaterThan(3600);
		expect((coarse!.targetTime - task.start) / (fine!.targetTime - task.start)).toBeCloseTo(1, 2);
		// 16 kW on a receiver of a few kJ/K: it rises by several kelvin within the shortest step
		for (const day of [fine!, coarse!]) expect(day.maximumOil).toBeLessThan(433.15 + 20);
	});

	it("lets a small tank end at its high limit by any step", () => {
		const small: Plant = {
			...plant,
			tank: {
				...plant.tank,
				fill: 0.005,
				height: 0.16,
				diameter: 0.2,
				startTemperatures: new Float64Array(3).fill(283.15),
			},
			coil: { ...plant.coil, coilDiameter: 0.15, length: 1.5 },
			loop: { ...plant.loop, control: { ...plant.loop.control, highLimit: 360 } },
		};
		const hottest = [30, 240].map((step) => Math.max(...outcomeOf(small, { ...task, step }).series.tankTop));
		expect(Math.abs(hottest[0]! - hottest[1]!)).toBeLessThan(1.5);
		for (const top of hottest) expect(top).toBeLessThan(360 + 8); // what the hot loop still gives after the dish has turned away
	});

	it("loses more from the receiver of a dish on a polar axis, which looks sideways near the equator, than from one facing down at noon", () => {
		const atEquator = { ...site, latitude: 0.05 };
		const fixed: Plant = {
			...plant,
			site: atEquator,
			dish: { ...plant.dish, kind: "offsetPolar", mirrorArea: 4, focalLength: 2 },
		};
		const convected = (of: Plant) => outcomeOf(of, task, 0).balance.receiver.convected;
		expect(convected(fixed)).toBeGreaterThan(1.5 * convected({ ...plant, site: atEquator }));
	});

	it("takes no heat from a hot tank to warm a coil that stands in it", () => {
		const hot: Plant = {
			...plant,
			tank: { ...plant.tank, startTemperatures: new Float64Array(10).fill(343.15) },
		};
		const dark: Task = { ...task, start: task.start - 5 * 3600, end: task.start - 4 * 3600 };
		expect(Math.abs(outcomeOf(hot, dark).balance.toWater)).toBeLessThan(0.01 * 3.6e6);
	});

	it("counts what a loop of bare pipes in frost takes out of the water again, as its series shows it", () => {
		const bare: Plant = {
			...bigTank,
			loop: { ...plant.loop, supply: pipe(22, 0), return: pipe(2, 0) },
			dish: { ...plant.dish, kind: "twoAxis", diameter: 1.3, focalLength: 0.6 },
		};
		const rows: Task = { ...task, seriesStep: task.step };
		const weather = clearDay(site, rows, 6);
		const frost = { ...weather, ambient: weather.ambient.map((t) => t - 20) };
		const { balance, series } = warmUpDay(bare, frost, rows);
		const given = series.powerToWater
			.slice(1)
			.map((power, i) => power * (series.time[i + 1]! - series.time[i]!));
		const below = given.reduce((sum, heat) => sum - Math.min(0, heat), 0);
		expect(below).toBeGreaterThan(0.1 * 3.6e6);
		expect(balance.takenBack / below).toBeCloseTo(1, 2);
		expect(balance.toWater).toBeCloseTo(
			given.reduce((sum, heat) => sum + heat, 0),
			-3,
		);
	});

	it("takes nothing back until noon through pipes that are short and lagged", () => {
		const { balance } = outcomeOf(bigTank, { ...task, end: task.start + 4 * 3600 });
		expect(balance.toWater).toBeGreaterThan(3.6e6);
		expect(balance.takenBack).toBeLessThan(0.005 * balance.toWater);
	});

	it("blames no limit while no sun shines", () => {
		const hot: Plant = {
			...plant,
			tank: { ...plant.tank, startTemperatures: new Float64Array(10).fill(366) },
		};
		const limited: Plant = {
			...hot,
			loop: { ...hot.loop, control: { ...hot.loop.control, highLimit: 360 } },
		};
		const night: Task = {
			...task,
			start: task.start - 6 * 3600,
			end: task.start - 2 * 3600,
			target: { temperature: 370, at: "mean" },
		};
		const outcome = outcomeOf({ ...limited, site: { ...site, elevation: 0 } }, night);
		expect(outcome.turnedAwayTime).toBe(0);
		expect(outcome.shortfall).toBe("noSun");
	});
});
