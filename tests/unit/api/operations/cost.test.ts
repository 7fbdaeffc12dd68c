import { describe, expect, it } from "vitest";
import { costWithin, estimatedCost, rangeWithin } from "../../../../api/operations/cost.ts";
import { sensitivity } from "../../../../api/operations/sensitivity/route.ts";
import { testRun } from "../../../../api/operations/test-run/route.ts";
import { warmUp } from "../../../../api/operations/warm-up/route.ts";

const USUAL_DAY = 600; // steps of a day of ten hours by 120 s, half of them divided once

describe("a range that would outlast its time", () => {
	it.each([40, 430])("is none for a usual day, %d times, in the usual time", (days) => {
		expect(() => rangeWithin(20, days, USUAL_DAY)).not.toThrow();
		expect(() => rangeWithin(20, days, 100 * USUAL_DAY)).toThrow("Omit withRange");
	});

	it("may take twice as many steps where it may take twice as long", () => {
		let most = 1;
		while (most < 1e6 && isLet(20, most + 1)) most++;
		expect(isLet(40, 2 * most)).toBe(true);
		expect(isLet(40, 2 * most + 2)).toBe(false);
	});
});

function isLet(time: number, steps: number): boolean {
	try {
		rangeWithin(time, 430, steps);
		return true;
	} catch {
		return false;
	}
}

describe("the estimated cost of a day", () => {
	const day = {
		site: { latitude: 28.6, longitude: 77.2, elevationM: 216 },
		...{ date: "2025-02-15", dish: { diameterM: 1.4 } },
	};
	const cost = (more: object) => estimatedCost(warmUp, { ...day, tank: { volumeL: 100 }, ...more });
	const usual = cost({});
	const draws = (count: number, litres: number) => ({
		draws: Array.from({ length: count }, () => ({ time: "08:00", litres })),
	});

	it("rises with layers, steps, rows, hours, households and litres drawn, and with a smaller tank", () => {
		const dearer: readonly (readonly [object, object])[] = [
			[{}, { tank: { volumeL: 100, nodes: 50 } }],
			[{}, { stepS: 60 }],
			[{}, { seriesStepMin: 1 }],
			[
				{ startTime: "08:00", endTime: "18:00" },
				{ startTime: "00:00", endTime: "23:59" },
			],
			[{}, { draw: { profile: "M" } }],
			[{ draw: { profile: "M" } }, { draw: { profile: "4XL" } }],
			[{ draw: { profile: "M" } }, { draw: { profile: "M", scale: 10 } }],
			[{ draw: draws(20, 10) }, { draw: draws(20, 40) }],
			[{ draw: draws(20, 10) }, { draw: draws(80, 10) }],
			[{ draw: draws(20, 40) }, { draw: draws(20, 40), tank: { volumeL: 20 } }],
			[{ draw: draws(20, 40) }, { draw: draws(20, 40), tank: { volumeL: 100, nodes: 40 } }],
		];
		for (const [less, more] of dearer) expect(cost(more), JSON.stringify(more)).toBeGreaterThan(cost(less));
	});

	it("is several days' where draws empty a small tank of many layers all day, and bounded however much they ask", () => {
		const tank = { volumeL: 5, nodes: 50 };
		const much = cost({ tank, draw: draws(200, 300) });
		expect(much).toBeGreaterThan(3 * usual);
		expect(cost({ tank, draw: draws(200, 20_000) })).toBeLessThan(60 * usual); // what is empty gives no more
	});

	it("names what makes a request too dear", () => {
		const tank = { volumeL: 100, nodes: 50 };
		const refused = (body: object) => {
			try {
				return costWithin(3000, sensitivity, { ...day, tank, ...body });
			} catch (error) {
				return (error as { errors: readonly { pointer: string }[] }).errors[0]!.pointer;
			}
		};
		const slow = Array.from({ length: 200 }, () => ({ time: "08:00", litres: 300, flowLPerMin: 0.5 }));
		expect(refused({ draw: { draws: slow } })).toBe("/draw/draws");
		expect(refused({ draw: { profile: "4XL", scale: 100 }, tank: { ...tank, volumeL: 20 }, stepS: 15 })).toBe(
			"/draw/scale",
		);
		expect(refused({ withRange: true })).toBe("/withRange");
		expect(refused({ tank: { volumeL: 20 } })).toBeLessThan(300);
	});

	it("takes whatever a body holds before it is checked", () => {
		const hostile: readonly unknown[] = [
			null,
			"x",
			[],
			[null],
			-1,
			Number.NaN,
			{},
			{ draws: [null, 3] },
			1e308,
		];
		for (const value of hostile)
			for (const name of ["draw", "tank", "stepS", "seriesStepMin", "startTime", "run"])
				for (const operation of [warmUp, sensitivity, testRun])
					expect(estimatedCost(operation, { ...day, [name]: value })).toBeGreaterThanOrEqual(0);
	});

	it("is no more for what its check refuses than for the dearest that it lets pass", () => {
		const tank = { volumeL: 100, nodes: 50 };
		expect(cost({ tank: { ...tank, nodes: 1e9 } })).toBe(cost({ tank }));
		expect(cost({ stepS: 1e-9 })).toBe(cost({ stepS: 15 }));
		expect(cost({ draw: draws(5000, 1) })).toBe(cost({ draw: draws(200, 1) }));
	});

	it("leaves a test run of a day by the minute within the usual budget", () => {
		const rows = (length: number) => estimatedCost(testRun, { run: { time: Array(length).fill("") } });
		expect(rows(1500)).toBeLessThan(3000);
		expect(rows(1500)).toBeGreaterThan(rows(61));
		expect(rows(2)).toBeLessThan(rows(61));
	});
});
