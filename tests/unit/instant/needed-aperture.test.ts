import { describe, expect, it } from "vitest";
import { scaledHeater } from "../../../src/instant/heater.ts";
import { neededAperture } from "../../../src/instant/needed-aperture.ts";
import { flowOf } from "../../../src/instant/steady.ts";
import { type Arrangement, steadyFlow } from "../../../src/instant/task.ts";
import { atFocus, duty, heater, heaterWith, ideal, receivers, sun, vessel } from "./heaters.ts";

const arrangements: readonly Arrangement[] = [atFocus, { kind: "vessel", vessel, start: 293.15 }];
const cases = receivers.flatMap((receiver) =>
	arrangements.map((arrangement) => [receiver.kind, arrangement.kind, receiver, arrangement] as const),
);

describe.each(cases)("%s, %s", (_receiver, _arrangement, receiver, arrangement) => {
	it("the heater of the aperture found gives the flow wanted, a smaller one less", () => {
		const own = heaterWith(receiver);
		const wanted = 2.5 / 60;
		const needed = neededAperture(arrangement, own, duty, wanted, 113, sun(800));
		if (needed.kind !== "found") throw new Error(needed.kind);
		const given = (area: number) =>
			flowOf(steadyFlow(arrangement, scaledHeater(own, area / own.apertureArea), duty, sun(800)));
		expect(Math.abs(given(needed.area) / wanted - 1)).toBeLessThan(1e-3);
		expect(given(needed.area * 0.97)).toBeLessThan(wanted);
	});
});

it("finds the area of an ideal heater by arithmetic", () => {
	const wanted = 6 / 60; // 6 kg/min through 30 K is 12.55 kW, or 15.7 m² at 800 W/m²
	const needed = neededAperture(atFocus, ideal, duty, wanted, 113, sun(800));
	expect(needed.kind === "found" && needed.area).toBeCloseTo((wanted * 4183.5 * 30) / 800, 1);
});

it("says that no dish up to the bound does it", () => {
	const direct = arrangements[0]!;
	expect(neededAperture(direct, heater, duty, 6 / 60, 5, sun(800)).kind).toBe("beyondBound");
	expect(neededAperture(direct, heater, duty, 6 / 60, 113, sun(0)).kind).toBe("beyondBound");
	const boiling = { ...duty, wanted: 363.15, boiling: 362 };
	expect(neededAperture(direct, heater, boiling, 0.01, 113, sun(800)).kind).toBe("beyondBound");
});

it("says that the coil can't pass it, however large the dish", () => {
	expect(neededAperture(arrangements[1]!, heater, duty, 40 / 60, 1e4, sun(800)).kind).toBe("coilTooSmall");
});

it("needs no dish where the air around a bare vessel is warm enough", () => {
	const bare = { ...vessel, insulation: { ...vessel.insulation, thickness: 0 } };
	const tepid = { ...duty, wanted: 300 };
	const hot = { ...sun(0), ambient: 320 };
	const arrangement: Arrangement = { kind: "vessel", vessel: bare, start: 293.15 };
	expect(neededAperture(arrangement, heater, tepid, 1e-4, 113, hot)).toEqual({ kind: "found", area: 0 });
});

it("a size beyond what the models cover is no answer, and no error", () => {
	expect(neededAperture(arrangements[0]!, heater, duty, 1e4, 1e7, sun(800)).kind).toBe("beyondBound");
});

it("scaling keeps flow over area, but for the film and the lagging", () => {
	const one = flowOf(steadyFlow(arrangements[0]!, heater, duty, sun(800)));
	const four = flowOf(steadyFlow(arrangements[0]!, scaledHeater(heater, 4), duty, sun(800)));
	expect(Math.abs(four / (4 * one) - 1)).toBeLessThan(0.01);
});
