import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { water } from "../../../src/fluids/water.ts";
import { drawDuration, drawMass, tapDemand } from "../../../src/tap/demand.ts";
import type { Draw } from "../../../src/tap/draw.ts";

const MAINS = 283.15;
const shower: Draw = {
	time: 1000,
	demand: { kind: "volume", volume: 0.05 },
	temperature: 313.15,
	flow: 1e-4,
};
const sink: Draw = {
	time: 1200,
	demand: { kind: "energy", energy: 3.6e6 },
	temperature: 313.15,
	flow: 1e-4,
};

describe("tapDemand", () => {
	it("lasts as long as the volume takes at its flow", () => {
		expect(drawDuration(shower, MAINS)).toBeCloseTo(500, 9);
	});

	it("asks as much mass as carries the heat above the mains", () => {
		const rise = water.enthalpy(313.15) - water.enthalpy(MAINS);
		expect(drawMass(sink, MAINS) * rise).toBeCloseTo(3.6e6, 4);
		expect(drawMass(sink, MAINS)).toBeCloseTo(3.6e6 / (4183 * 30), 1);
	});

	it("gives the part that falls within the time", () => {
		const [part] = tapDemand([shower], 900, 1250, MAINS);
		expect(part!.mass).toBeCloseTo(drawMass(shower, MAINS) / 2, 9);
		expect(tapDemand([shower], 0, 1000, MAINS)).toEqual([]);
		expect(tapDemand([shower], 1500.001, 3000, MAINS)).toEqual([]);
	});

	it("lets draws run at the same time", () => {
		expect(tapDemand([shower, sink], 1200, 1260, MAINS)).toHaveLength(2);
	});

	it("adds up to the whole over any cut of time", () => {
		fc.assert(
			fc.property(fc.array(fc.double({ min: 900, max: 2200, noNaN: true }), { maxLength: 40 }), (cuts) => {
				const times = [0, ...cuts.sort((a, b) => a - b), 10_000];
				let mass = 0;
				for (let i = 1; i < times.length; i++)
					for (const part of tapDemand([shower, sink], times[i - 1]!, times[i]!, MAINS)) mass += part.mass;
				expect(mass / (drawMass(shower, MAINS) + drawMass(sink, MAINS))).toBeCloseTo(1, 12);
			}),
		);
	});

	it("refuses heat at a temperature the mains has, no flow, and what is not a number", () => {
		expect(() => tapDemand([sink], 0, 9999, 313.15)).toThrow("not colder");
		expect(() => tapDemand([{ ...shower, flow: 0 }], 0, 9999, MAINS)).toThrow("flow at the tap");
		const nan: Draw = { ...shower, demand: { kind: "volume", volume: Number.NaN } };
		expect(() => tapDemand([nan], 0, 9999, MAINS)).toThrow("volume drawn");
	});

	it("asks nothing for an empty draw", () => {
		const none: Draw = { ...shower, demand: { kind: "volume", volume: 0 } };
		expect(tapDemand([none], 0, 9999, MAINS)).toEqual([]);
	});
});
