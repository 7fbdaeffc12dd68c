import { describe, expect, it } from "vitest";
import { water } from "../../../src/fluids/water.ts";
import { absorbedLight } from "../../../src/instant/conditions.ts";
import { directFlow } from "../../../src/instant/direct.ts";
import { heatedStream } from "../../../src/instant/heated-stream.ts";
import { scaledHeater } from "../../../src/instant/heater.ts";
import { neededAperture } from "../../../src/instant/needed-aperture.ts";
import { instantOutcome } from "../../../src/instant/outcome.ts";
import { massUntilHot } from "../../../src/instant/outlet-pipe.ts";
import { receiverFlow } from "../../../src/instant/receiver-flow.ts";
import { flowOf, type Steady } from "../../../src/instant/steady.ts";
import type { Pipe } from "../../../src/loop/loop.ts";
import { pipeRun } from "../../../src/loop/pipe-run.ts";
import { receiverBalance } from "../../../src/receiver/balance.ts";
import { totalReceiverLoss } from "../../../src/receiver/loss-paths.ts";
import { duty, heater, heaterWith, noPipe, outletPipe, receivers, sun, task } from "./heaters.ts";

const PIPES: readonly (readonly [string, Pipe])[] = [
	["3 m lagged", outletPipe(3, 0.025)],
	["3 m bare", outletPipe(3, 0)],
	["12 m bare", outletPipe(12, 0)],
];

function flowing(steady: Steady) {
	if (steady.kind !== "flows" || !steady.outlet) throw new Error("nothing flows");
	return { ...steady, outlet: steady.outlet };
}

/** Where a flow that leaves the receiver at a temperature comes to the tap, by the loop's own pipe. */
function runFrom(pipe: Pipe, leaving: number, massFlow: number, air: ReturnType<typeof sun>) {
	const { ambient, wind, pressure } = air;
	const flow = massFlow / water.density(leaving);
	return pipeRun(pipe, water, { inletTemperature: leaving, flow, ambient, wind, pressure });
}

describe.each(receivers.map((receiver) => [receiver.kind, receiver] as const))("%s", (_kind, receiver) => {
	const own = heaterWith(receiver);

	it("without length it is the flow at the focus", () => {
		const steady = flowing(directFlow(own, noPipe, duty, sun(800)));
		const { massFlow, power } = receiverFlow(own, duty, sun(800))!;
		expect(steady.massFlow).toBe(massFlow);
		expect(Math.abs(steady.power / power - 1)).toBeLessThan(1e-12);
		expect(steady.outlet.leaving).toBe(duty.wanted);
		expect(Math.abs(steady.outlet.loss)).toBeLessThan(1e-9);
	});

	it.each(PIPES)(
		"%s: the loop's pipe, run apart, brings that flow to the tap as hot as wanted",
		(_, pipe) => {
			const { massFlow, outlet } = flowing(directFlow(own, pipe, duty, sun(800)));
			const run = runFrom(pipe, outlet.leaving, massFlow, sun(800));
			expect(Math.abs(run.outletTemperature - duty.wanted)).toBeLessThan(0.003 * run.temperatureDrop);
			expect(Math.abs(run.heatLoss / outlet.loss - 1)).toBeLessThan(0.005);
		},
	);

	it.each(PIPES)("%s: the receiver, heating that flow, lets it out at the temperature named", (_, pipe) => {
		const { massFlow, outlet } = flowing(directFlow(own, pipe, duty, sun(800)));
		const stream = heatedStream(own, { fluid: water, inlet: duty.cold, massFlow }, sun(800));
		expect(stream.kind === "heated" && stream.outlet).toBeCloseTo(outlet.leaving, 2);
	});

	it.each(PIPES)("%s: light = receiver's losses + the pipe's + heat at the tap, to 0.1 %%", (_, pipe) => {
		const { massFlow, outlet, power } = flowing(directFlow(own, pipe, duty, sun(800)));
		const isLine = receiver.kind === "efficiencyLine";
		const mean = (duty.cold + outlet.leaving) / 2;
		const absorbed = absorbedLight(own, sun(800));
		const { losses } = receiverBalance(receiver, {
			...sun(800),
			fluid: water,
			fluidTemperature: isLine ? outlet.leaving : mean,
			flow: massFlow / water.density(mean),
			absorbed,
		});
		const pipeLoss = runFrom(pipe, outlet.leaving, massFlow, sun(800)).heatLoss;
		const tap = massFlow * (water.enthalpy(duty.wanted) - water.enthalpy(duty.cold));
		expect(Math.abs((totalReceiverLoss(losses) + pipeLoss + tap) / absorbed - 1)).toBeLessThan(1e-3);
		expect(power).toBeCloseTo(tap, 6);
	});
});

describe("a pipe to the tap", () => {
	const bare = (length: number) => outletPipe(length, 0);
	const flow = (pipe: Pipe, air = sun(800)) => flowOf(directFlow(heater, pipe, duty, air));
	const loss = (pipe: Pipe, air = sun(800)) => flowing(directFlow(heater, pipe, duty, air)).outlet.loss;

	it("a metre of bare 15 mm pipe in a wind of 2 m/s loses 1.4 to 2.2 W for each kelvin over the air", () => {
		// Churchill & Bernstein by hand: Re 1900, Nu 22.5, h 38 + 5.5 for radiation; 0.047 m² a metre; water's film inside a fifth
		const perKelvin = loss(bare(1)) / (duty.wanted - sun(800).ambient);
		expect(perKelvin).toBeGreaterThan(1.4);
		expect(perKelvin).toBeLessThan(2.2);
	});

	it("longer, barer, colder and windier take from the flow", () => {
		expect(flow(bare(6))).toBeLessThan(flow(bare(3)));
		expect(flow(bare(3))).toBeLessThan(flow(outletPipe(3, 0.01)));
		expect(flow(outletPipe(3, 0.01))).toBeLessThan(flow(outletPipe(3, 0.05)));
		expect(flow(outletPipe(3, 0.05))).toBeLessThan(flow(noPipe));
		expect(loss(bare(3), { ...sun(800), ambient: 273.15 })).toBeGreaterThan(loss(bare(3)));
		expect(loss(bare(3), { ...sun(800), wind: 6 })).toBeGreaterThan(loss(bare(3)));
	});

	it("the flow falls with length up to where all is lost, and never comes back beyond", () => {
		let before = flow(noPipe);
		let lost = false;
		for (let length = 0.5; length <= 120; length += 0.5) {
			const steady = directFlow(heater, bare(length), duty, sun(500));
			if (steady.kind !== "flows") {
				expect(steady.kind).toBe("lostInPipe");
				lost = true;
				continue;
			}
			expect(lost, `${length} m`).toBe(false);
			expect(steady.massFlow).toBeLessThan(before);
			expect(steady.outlet!.leaving).toBeLessThan(duty.boiling);
			before = steady.massFlow;
		}
		expect(lost).toBe(true);
	});

	it.each([3, 10, 20])(
		"of two flows that suit %f m it names the larger: no cooler water would do",
		(length) => {
			const { outlet } = flowing(directFlow(heater, bare(length), duty, sun(800)));
			for (let share = 0.02; share < 0.97; share += 0.05) {
				const leaving = duty.wanted + share * (outlet.leaving - duty.wanted);
				const { massFlow } = receiverFlow(heater, { ...duty, wanted: leaving }, sun(800))!;
				expect(runFrom(bare(length), leaving, massFlow, sun(800)).outletTemperature).toBeLessThan(
					duty.wanted,
				);
			}
		},
	);

	it("air warmer than the water is wanted heats it on the way", () => {
		const warm = { ...sun(300), ambient: 323.15 };
		const mild = { ...duty, wanted: 298.15 };
		const { outlet, massFlow } = flowing(directFlow(heater, bare(5), mild, warm));
		expect(outlet.loss).toBeLessThan(0);
		expect(outlet.leaving).toBeLessThan(mild.wanted);
		expect(massFlow).toBeGreaterThan(flowOf(directFlow(heater, noPipe, mild, warm)));
		expect(runFrom(bare(5), outlet.leaving, massFlow, warm).outletTemperature).toBeCloseTo(mild.wanted, 2);
	});

	it("gives nothing in the dark, whatever the pipe", () => {
		for (const [, pipe] of PIPES) expect(directFlow(heater, pipe, duty, sun(0)).kind).toBe("none");
	});

	it.each([...PIPES, ["60 m lagged", outletPipe(60, 0.025)] as const])(
		"%s: a dish of the aperture it names gives the wanted flow",
		(_, outlet) => {
			for (const perMinute of [0.5, 3]) {
				const needed = neededAperture(
					{ kind: "direct", outlet },
					heater,
					duty,
					perMinute / 60,
					113,
					sun(800),
				);
				if (needed.kind !== "found") throw new Error("no dish found");
				const larger = scaledHeater(heater, needed.area / heater.apertureArea);
				expect(flowOf(directFlow(larger, outlet, duty, sun(800))) * 60).toBeCloseTo(perMinute, 3);
			}
		},
	);

	it("a flow that creeps is had from the dish of a larger one, and a smaller dish gives none", () => {
		const outlet = bare(40);
		const needed = neededAperture({ kind: "direct", outlet }, heater, duty, 0.1 / 60, 113, sun(800));
		if (needed.kind !== "found") throw new Error("no dish found");
		const by = (area: number) =>
			flowOf(directFlow(scaledHeater(heater, area / heater.apertureArea), outlet, duty, sun(800)));
		expect(by(1.01 * needed.area)).toBeGreaterThan(0.1 / 60);
		expect(by(0.97 * needed.area)).toBe(0);
	});

	it("brings hot water after its own water and what warms its copper", () => {
		// 3 m of 13 mm bore: 0.3982 L; copper 43.98 mm² × 3.44 MJ/m³K = 151 J/mK on 551 J/mK of water: 1.275 times as much
		expect(massUntilHot(outletPipe(3, 0.025), duty)).toBeCloseTo(0.3982 * 1.275, 2);
		expect(massUntilHot(noPipe, duty)).toBe(0);
	});
});

describe("feasibility behind a pipe", () => {
	const asked = (outlet: Pipe, change = {}) =>
		instantOutcome(heater, { ...task, arrangement: { kind: "direct", outlet }, ...change });

	it("names the pipe where the water is hot at the focus and never at the tap", () => {
		const far = asked(outletPipe(150, 0));
		expect(far.verdict).toBe("infeasible");
		expect(far.reasons).toEqual(["lostInPipe"]);
		expect(asked(outletPipe(150, 0), { levels: [sun(0)] }).reasons).toEqual(["noSun"]);
		expect(asked(outletPipe(3, 0.025)).verdict).toBe("feasible");
	});

	it("a wanted flow comes to the tap cooler than it left, and serves only if it is hot enough there", () => {
		const wantedFlow = flowOf(directFlow(heater, outletPipe(10, 0), duty, sun(1000)));
		const level = asked(outletPipe(10, 0), { wantedFlow }).levels.at(-1)!;
		expect(level.serving).toBe("serves");
		expect(level.drawn!.atTap).toBeCloseTo(duty.wanted, 1);
		expect(level.drawn!.leaving).toBeGreaterThan(duty.wanted + 2);
		const above = asked(outletPipe(12, 0), { wantedFlow }).levels.at(-1)!;
		expect(above.serving).toBe("tooLittle");
		expect(above.drawn!.atTap!).toBeLessThan(duty.wanted);
	});

	it("rests on the pipe's correlations only where there is one", () => {
		const names = (outlet: Pipe) => asked(outlet).methods.map(({ name }) => name);
		expect(
			names(outletPipe(3, 0.025)).filter((name) => /to the tap|Pipe insulation/.test(name)),
		).toHaveLength(3);
		expect(names(noPipe).filter((name) => /to the tap|Pipe insulation/.test(name))).toHaveLength(0);
	});
});
