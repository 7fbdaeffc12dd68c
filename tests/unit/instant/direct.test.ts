import { describe, expect, it } from "vitest";
import { water } from "../../../src/fluids/water.ts";
import { directFlow } from "../../../src/instant/direct.ts";
import { heatedStream } from "../../../src/instant/heated-stream.ts";
import { receiverBalance } from "../../../src/receiver/balance.ts";
import { cavity, openCoil } from "../plant/plants.ts";
import { duty, heater, heaterWith, ideal, noPipe, receivers, sun } from "./heaters.ts";

const flowing = (steady: ReturnType<typeof directFlow>) => {
	if (steady.kind !== "flows") throw new Error("nothing flows");
	return steady;
};
const heated = (stream: ReturnType<typeof heatedStream>) => {
	if (stream.kind !== "heated") throw new Error("no gain");
	return stream;
};

describe.each(receivers.map((receiver) => [receiver.kind, receiver] as const))("%s", (_kind, receiver) => {
	const own = heaterWith(receiver);

	it("power, flow and rise agree", () => {
		const { massFlow, power } = flowing(directFlow(own, noPipe, duty, sun(800)));
		const rise = water.enthalpy(duty.wanted) - water.enthalpy(duty.cold);
		expect(Math.abs(massFlow * rise - power)).toBeLessThan(1e-3 * power);
		expect(Math.abs(massFlow * 4182 * (duty.wanted - duty.cold) - power)).toBeLessThan(1e-3 * power);
	});

	it("the flow it gives leaves at the wanted temperature", () => {
		const { massFlow, power } = flowing(directFlow(own, noPipe, duty, sun(800)));
		const stream = heated(heatedStream(own, { fluid: water, inlet: duty.cold, massFlow }, sun(800)));
		expect(stream.outlet).toBeCloseTo(duty.wanted, 3);
		expect(stream.power).toBeCloseTo(power, 1);
	});

	it("efficiency rises with flow, and stays below what is absorbed", () => {
		const powers = [0.2, 0.4, 0.8, 1.6, 3.2, 6.4].map(
			(perMinute) =>
				heated(heatedStream(own, { fluid: water, inlet: duty.cold, massFlow: perMinute / 60 }, sun(800)))
					.power,
		);
		for (let i = 1; i < powers.length; i++) expect(powers[i]!).toBeGreaterThan(powers[i - 1]!);
	});

	it("flow rises with the sun and falls with the wanted temperature", () => {
		const flows = [300, 500, 800, 1000].map(
			(beam) => flowing(directFlow(own, noPipe, duty, sun(beam))).massFlow,
		);
		for (let i = 1; i < flows.length; i++) expect(flows[i]!).toBeGreaterThan(flows[i - 1]!);
		const hotter = flowing(directFlow(own, noPipe, { ...duty, wanted: 333.15 }, sun(1000)));
		expect(hotter.massFlow).toBeLessThan(flows[3]!);
		expect(hotter.power).toBeLessThan(flowing(directFlow(own, noPipe, duty, sun(1000))).power);
	});

	it("gives nothing in the dark and below the dish's lowest sun", () => {
		expect(directFlow(own, noPipe, duty, sun(0)).kind).toBe("none");
		expect(directFlow(own, noPipe, duty, { ...sun(800), altitude: 0.01 }).kind).toBe("none");
	});
});

it("the receiver's own balance, solved apart, gives the same power and wall", () => {
	for (const receiver of [cavity, openCoil]) {
		const own = heaterWith(receiver);
		const { massFlow, power, hottestWall } = flowing(directFlow(own, noPipe, duty, sun(900)));
		const fluidTemperature = (duty.cold + duty.wanted) / 2;
		const { useful, wallTemperature } = receiverBalance(receiver, {
			...sun(900),
			fluid: water,
			fluidTemperature,
			flow: massFlow / water.density(fluidTemperature),
			absorbed: own.absorbingArea * 900,
		});
		expect(useful).toBeCloseTo(power, 2);
		expect(hottestWall! - duty.wanted).toBeCloseTo(wallTemperature - fluidTemperature, 3);
	}
});

it("an ideal heater turns all its light into heat", () => {
	expect(flowing(directFlow(ideal, noPipe, duty, sun(1000))).power).toBe(1000);
});

it("a receiver that loses all it takes up warms nothing", () => {
	const hot = { ...duty, cold: 363.15, wanted: 368.15 };
	expect(directFlow(heater, noPipe, hot, sun(5)).kind).toBe("none");
	expect(heatedStream(heater, { fluid: water, inlet: 363.15, massFlow: 0.01 }, sun(5)).kind).toBe("noGain");
});

it("the wall stands hotter than the water, and the less so the longer the tube", () => {
	const superheat = (length: number) => {
		const own = heaterWith({ ...cavity, tube: { ...cavity.tube, length } });
		return flowing(directFlow(own, noPipe, duty, sun(900))).hottestWall! - duty.wanted;
	};
	expect(superheat(4)).toBeGreaterThan(superheat(8));
	expect(superheat(8)).toBeGreaterThan(0);
});

it("refuses water wanted no warmer than the feed", () => {
	expect(() => directFlow(heater, noPipe, { ...duty, wanted: duty.cold }, sun(800))).toThrow(/not warmer/);
	expect(() => directFlow(heater, noPipe, { ...duty, wanted: Number.NaN }, sun(800))).toThrow(/not warmer/);
});
