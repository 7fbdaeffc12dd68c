import { describe, expect, it } from "vitest";
import { lightCone } from "../../../src/dish/light-cone.ts";
import { dishOptics } from "../../../src/dish/optics.ts";
import { receiverAbsorptance } from "../../../src/receiver/absorption.ts";
import { type ApertureDuty, bestApertureDiameter } from "../../../src/receiver/best-aperture.ts";
import { totalReceiverLoss } from "../../../src/receiver/loss-paths.ts";
import { receiverLosses } from "../../../src/receiver/losses.ts";
import { proportionedReceiver } from "../../../src/receiver/proportions.ts";
import { perfectDish, perfectOffsetPolar } from "../dish/mirror.ts";
import { cavity, openCoil, tubes } from "./receivers.ts";

const dish = { ...perfectDish, slopeError: 6e-3, specularity: 3e-3, trackingError: 3e-3 };
const duty: ApertureDuty = {
	beam: 800,
	fluidTemperature: 373.15,
	ambient: 298.15,
	wind: 2,
	pressure: 101_325,
	altitude: 0.8,
};

describe("best aperture", () => {
	it.each(tubes.map((receiver) => [receiver.kind, receiver] as const))(
		"of %s beats every other on a millimetre scale",
		(_, receiver) => {
			const net = (diameter: number) => {
				const sized = proportionedReceiver(receiver, diameter);
				const { apertureArea, shares } = dishOptics(dish, diameter, 0, 0);
				const loss = totalReceiverLoss(
					receiverLosses(sized, { ...duty, wallTemperature: duty.fluidTemperature + 15 }),
				);
				return (
					duty.beam * apertureArea * shares.toReceiver * receiverAbsorptance(sized, lightCone(dish)) - loss
				);
			};
			let best = 0;
			for (let diameter = 0.01; diameter <= 0.27; diameter += 0.001)
				if (net(diameter) > net(best || 0.01)) best = diameter;
			expect(best).toBeGreaterThan(0.03);
			expect(best).toBeLessThan(0.26);
			expect(Math.abs(bestApertureDiameter(dish, receiver, duty) - best)).toBeLessThan(0.002);
		},
	);

	it("is wider for a worse mirror and a stronger sun, narrower for hotter oil", () => {
		const base = bestApertureDiameter(dish, cavity, duty);
		expect(bestApertureDiameter({ ...dish, slopeError: 12e-3 }, cavity, duty)).toBeGreaterThan(base);
		expect(bestApertureDiameter(dish, cavity, { ...duty, beam: 1000 })).toBeGreaterThan(base);
		expect(bestApertureDiameter(dish, cavity, { ...duty, fluidTemperature: 473.15 })).toBeLessThan(base);
	});

	it("stays within half the mirror, however long the focal length", () => {
		for (const focalLength of [2, 20, 200]) {
			const best = bestApertureDiameter({ ...dish, focalLength }, openCoil, duty);
			expect(best).toBeGreaterThan(0.01);
			expect(best).toBeLessThanOrEqual(0.5 * dish.diameter);
		}
	});

	it("serves an off-axis dish on a polar axis too, and falls to its lower end without sun", () => {
		expect(bestApertureDiameter({ ...perfectOffsetPolar, slopeError: 5e-3 }, cavity, duty)).toBeGreaterThan(
			0.05,
		);
		expect(bestApertureDiameter(dish, cavity, { ...duty, beam: 0 })).toBeLessThan(0.01);
	});
});

describe("proportions", () => {
	it("wind the wall of the hollow, or the disc, with tube that just covers it", () => {
		const hollow = proportionedReceiver(cavity, 0.1);
		expect(hollow.apertureDiameter).toBe(0.1);
		expect(hollow.innerDiameter).toBeGreaterThan(0.1);
		expect(hollow.tube.length * hollow.tube.outerDiameter).toBeCloseTo(
			Math.PI * 0.13 * 0.13 + (Math.PI / 4) * 0.13 ** 2,
			12,
		);
		const spiral = proportionedReceiver(openCoil, 0.2);
		expect(spiral.tube.length * spiral.tube.outerDiameter).toBeCloseTo(Math.PI * 0.1 ** 2, 12);
		expect(spiral.emittance).toBe(openCoil.emittance);
	});
});
