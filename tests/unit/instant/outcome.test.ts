import { describe, expect, it } from "vitest";
import { scaledHeater } from "../../../src/instant/heater.ts";
import { instantOutcome } from "../../../src/instant/outcome.ts";
import { flowOf } from "../../../src/instant/steady.ts";
import type { InstantTask } from "../../../src/instant/task.ts";
import { clearWeather } from "../../../src/sky/clear-weather.ts";
import { site } from "../plant/plants.ts";
import { duty, dutyAt, heater, sun, task, vessel } from "./heaters.ts";

const SUNRISE = Date.UTC(2026, 0, 15, 7, 30) / 1000;
const NOON = Date.UTC(2026, 0, 15, 12, 41) / 1000;
const times = Float64Array.from({ length: 45 }, (_, i) => SUNRISE + i * 900);
const sky = { turbidity: 3, ambientMinimum: 273.15, ambientMaximum: 288.15, wind: 2 };
const day = { weather: clearWeather(site, sky, times), from: NOON - 7200, to: NOON + 7200 };
const asked = (changes: Partial<InstantTask>) => instantOutcome(heater, { ...task, ...changes });

describe("verdict by beam levels", () => {
	it("is feasible where any flow will do", () => {
		const outcome = asked({});
		expect(outcome.verdict).toBe("feasible");
		expect(outcome.reasons).toEqual([]);
		expect(outcome.needed).toBeUndefined();
	});

	it("is for part where only the strong suns do", () => {
		const outcome = asked({ wantedFlow: 0.9 / 60 });
		expect(outcome.verdict).toBe("feasibleForPart");
		expect(outcome.reasons).toEqual(["weakSunForPart"]);
		expect(outcome.servedShare).toBeCloseTo(1 / 3, 9);
	});

	it("a dish of 3 m² serves no shower, and says what would", () => {
		const outcome = asked({ wantedFlow: 6 / 60 });
		expect(outcome.verdict).toBe("infeasible");
		expect(outcome.reasons).toEqual(["tooLittleHeat"]);
		if (outcome.needed?.kind !== "found") throw new Error("no dish found");
		const larger = scaledHeater(heater, outcome.needed.area / heater.apertureArea);
		expect(instantOutcome(larger, { ...task, wantedFlow: 6 / 60 }).verdict).toBe("feasible");
	});

	it("names the bound where no dish within it does", () => {
		const outcome = asked({ wantedFlow: 6 / 60, largestAperture: 5 });
		expect(outcome.reasons).toEqual(["tooLittleHeat", "noDishWithinBound"]);
	});

	it("names boiling, darkness and a sun too low", () => {
		const high = { ...dutyAt(4000, 0), wanted: 362 };
		expect(asked({ duty: high }).reasons).toEqual(["limitedByBoiling"]);
		expect(asked({ levels: [sun(0)] }).reasons).toEqual(["noSun"]);
		expect(asked({ levels: [{ ...sun(500), altitude: 0.02 }] }).reasons).toEqual(["sunBelowDish"]);
	});

	it("a trickle in an open line boils in the receiver", () => {
		const outcome = asked({ duty: dutyAt(2350, 0), wantedFlow: 0.15 / 60, levels: [sun(1000)] });
		expect(outcome.verdict).toBe("infeasible");
		expect(outcome.reasons).toEqual(["boilsInReceiver"]);
	});
});

describe("through a day", () => {
	it("is for the window, and holds longest for the least flow", () => {
		const held = [0.4, 0.7, 1].map((perMinute) => {
			const { hours } = asked({ wantedFlow: perMinute / 60, day });
			return hours!.held.reduce((sum, { from, to }) => sum + to - from, 0);
		});
		expect(held[0]!).toBeGreaterThan(held[1]!);
		expect(held[1]!).toBeGreaterThan(held[2]!);
		expect(asked({ wantedFlow: 0.7 / 60, day }).verdict).toBe("feasible");
	});

	it("one stretch about noon on a clear day, its ends where the flow crosses what is wanted", () => {
		const wanted = 0.9 / 60;
		const { hours } = asked({ wantedFlow: wanted, day });
		expect(hours!.held).toHaveLength(1);
		const [{ from, to }] = hours!.held as [{ from: number; to: number }];
		expect(Math.abs((from + to) / 2 - NOON)).toBeLessThan(900);
		const after = hours!.times.findIndex((time) => time > from);
		expect(flowOf(hours!.rows[after - 1]!.steady)).toBeLessThan(wanted);
		expect(flowOf(hours!.rows[after]!.steady)).toBeGreaterThan(wanted);
	});

	it("the aperture it names makes it feasible throughout", () => {
		const wantedFlow = 3 / 60;
		const { needed, verdict } = asked({ wantedFlow, day });
		expect(verdict).toBe("infeasible");
		if (needed?.kind !== "found") throw new Error("no dish found");
		const larger = scaledHeater(heater, needed.area / heater.apertureArea);
		expect(instantOutcome(larger, { ...task, wantedFlow, day }).verdict).toBe("feasible");
	});

	it("finer rows move the time held by less than two minutes", () => {
		const fine = Float64Array.from({ length: 133 }, (_, i) => SUNRISE + i * 300);
		const finer = { ...day, weather: clearWeather(site, sky, fine) };
		const held = (of: typeof day) => {
			const { hours } = asked({ wantedFlow: 0.9 / 60, day: of });
			return hours!.held.reduce((sum, { from, to }) => sum + to - from, 0);
		};
		expect(Math.abs(held(finer) - held(day))).toBeLessThan(120);
	});
});

describe("what taps ask for", () => {
	it("a shower takes 11 to 20 kW; a dish of 3 m² gives under 3", () => {
		const shower = asked({}).uses.find(({ use }) => use.id === "shower")!;
		expect(shower.modestPower).toBeGreaterThan(11_000);
		expect(shower.lavishPower).toBeGreaterThan(19_000);
		expect(shower.lavishPower).toBeLessThan(20_500);
		expect(shower.steady.kind === "flows" && shower.steady.power).toBeLessThan(3000);
		expect(shower.steady.kind === "flows" && shower.steady.massFlow).toBeLessThan(shower.modestFlow / 4);
		expect(shower.fromCharge).toBeUndefined();
	});

	it("a charged vessel serves for minutes what its dish can't serve steadily", () => {
		const arrangement = { kind: "vessel" as const, vessel, start: 293.15 };
		const outcome = asked({ arrangement, wantedFlow: 3 / 60 });
		expect(outcome.reasons).toEqual(["tooLittleHeat"]);
		expect(outcome.vessel?.draw?.kind).toBe("lasts");
		expect(outcome.uses.every(({ fromCharge }) => fromCharge !== undefined)).toBe(true);
	});

	it("a vessel under a weak sun does not reach its charge, and a short coil passes too little", () => {
		const coil = { ...vessel.coil, length: 1 };
		const weak = asked({
			arrangement: { kind: "vessel", vessel: { ...vessel, coil }, start: 293.15 },
			wantedFlow: 3 / 60,
			levels: [sun(25)],
		});
		expect(weak.reasons).toContain("chargeNotReached");
		expect(weak.reasons).toContain("coilTooSmall");
	});
});

it("every number it flags outside its range is named with a source", () => {
	for (const { name, source } of asked({ day }).methods) {
		expect(name.length).toBeGreaterThan(5);
		expect(source?.length).toBeGreaterThan(5);
	}
});

it("water wanted hotter than it boils flows nowhere", () => {
	const outcome = asked({ duty: { ...duty, wanted: 412, boiling: 404 }, wantedFlow: 0.01 });
	expect(outcome.levels.every(({ steady }) => steady.kind === "none")).toBe(true);
});
