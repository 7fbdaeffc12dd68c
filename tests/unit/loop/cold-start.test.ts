import { describe, expect, it } from "vitest";
import { coldStart } from "../../../src/loop/cold-start.ts";
import { loopLosses } from "../../../src/loop/losses.ts";
import { loopMethods } from "../../../src/loop/methods.ts";
import { aLoop, aPipe, celsius } from "./a-loop.ts";

const coil = { length: 12, innerDiameter: 0.01, roughness: 1.5e-6, helixDiameter: 0.3 };

describe("a cold start", () => {
	it("gives the flow whose laminar pressure the pump's power can raise", () => {
		// p = 128 µ L q/(π d⁴) and p q = P η give q = √(P η π d⁴/(128 µ L)); fittings left out
		const loop = aLoop({ fittingsLossFactor: 0, pump: { maximumPressure: 1e9 } });
		const { duty, kinematicViscosity } = coldStart(loop, [], celsius(5));
		const dynamic = kinematicViscosity * loop.fluid.density(celsius(5));
		const q = Math.sqrt((10 * Math.PI * 0.013 ** 4) / (128 * dynamic * 20));
		expect(duty.flow / q).toBeCloseTo(1, 4);
	});
	it("gives the flow that the head allows, where that binds", () => {
		const loop = aLoop({ fittingsLossFactor: 0, pump: { maximumPressure: 50_000 } });
		const { duty, kinematicViscosity } = coldStart(loop, [], celsius(-10));
		const dynamic = kinematicViscosity * loop.fluid.density(celsius(-10));
		expect(duty.flow / ((50_000 * Math.PI * 0.013 ** 4) / (128 * dynamic * 20))).toBeCloseTo(1, 4);
		expect(duty.pressure).toBeCloseTo(50_000, -1);
	});
	it("flows better the warmer, down to nothing lost", () => {
		const flows = [-15, 0, 15, 30, 60, 90].map((t) => coldStart(aLoop({}), [coil], celsius(t)).duty.flow);
		for (const [i, flow] of flows.slice(1).entries()) expect(flow).toBeGreaterThanOrEqual(flows[i]!);
		expect(flows.at(-1)).toBe(4 / 60_000);
	});
	it("counts a coil, wound more than straight", () => {
		const at = (further: readonly (typeof coil)[]) =>
			coldStart(aLoop({}), further, celsius(80)).duty.pressure;
		expect(at([coil])).toBeGreaterThan(at([]));
		expect(at([coil])).toBeGreaterThan(at([{ ...coil, helixDiameter: 0 }]));
	});
});

describe("methods of a loop", () => {
	const conditions = {
		supplyTemperature: celsius(130),
		returnTemperature: celsius(110),
		ambient: celsius(10),
		wind: 2,
		pressure: 101_325,
		others: [],
	};
	const asked = { addedThicknesses: [0.01], moisture: 0.05, coverEmittance: 0.3 };
	const flagged = (changes: Partial<typeof conditions>, loop = aLoop({}), starts = [40], wet = false) => {
		const asIs = { ...conditions, ...changes };
		const losses = loopLosses(loop, asIs, asked);
		const cold = starts.map((t) => coldStart(loop, [], celsius(t)));
		return loopMethods(loop, asIs, losses, cold, wet)
			.filter(({ outsideRange }) => outsideRange)
			.map(({ name }) => name);
	};
	it("are all in range on an ordinary loop", () => expect(flagged({})).toEqual([]));
	it("flag insulation above its limit", () => {
		const foam = { material: "polyethyleneFoam", thickness: 0.03, moisture: 0, surfaceEmittance: 0.9 };
		expect(flagged({}, aLoop({ supply: aPipe({ insulation: foam }) }))).toEqual([
			expect.stringContaining("Supply pipe insulation"),
		]);
	});
	it("flag wet insulation above 60 °C", () => {
		expect(flagged({}, aLoop({}), [40], true)).toEqual(["Conductivity of damp insulation"]);
		const cool = { supplyTemperature: celsius(50), returnTemperature: celsius(45) };
		expect(flagged(cool, aLoop({}), [40], true)).toEqual([]);
	});
	it("flag oil colder or hotter than it was measured", () => {
		expect(flagged({}, aLoop({}), [-10])).toEqual(["Heat capacity and conductivity of petroleum oils"]);
		expect(flagged({ supplyTemperature: celsius(240) })).toContain(
			"Heat capacity and conductivity of petroleum oils",
		);
	});
	it("flag flow between laminar and turbulent", () => {
		const fast = aLoop({ pump: { flow: 8 / 60_000 } });
		expect(flagged({}, fast)).toContain("Friction in tubes of any regime");
	});
});
