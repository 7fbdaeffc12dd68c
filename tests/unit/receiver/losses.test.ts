import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { totalReceiverLoss } from "../../../src/receiver/loss-paths.ts";
import { receiverLosses } from "../../../src/receiver/losses.ts";
import { all, cavity, glazedCoil, measured, mild, openCoil, tubes } from "./receivers.ts";

const total = (receiver: (typeof all)[number], change: Partial<typeof mild>): number =>
	totalReceiverLoss(receiverLosses(receiver, { ...mild, ...change }));
const rising = (values: readonly number[]): void => {
	for (let i = 1; i < values.length; i++) expect(values[i]!).toBeGreaterThan(values[i - 1]!);
};

describe.each(all.map((receiver) => [receiver.kind, receiver] as const))("losses of %s", (_, receiver) => {
	it("vanish on every path where the wall is as warm as the air", () => {
		for (const loss of Object.values(receiverLosses(receiver, { ...mild, wallTemperature: mild.ambient })))
			expect(Math.abs(loss)).toBeLessThan(1e-9);
	});

	it("flow from hot to cold on every path, whatever the weather", () => {
		fc.assert(
			fc.property(
				fc.double({ min: 200, max: 1200, noNaN: true }),
				fc.double({ min: 230, max: 330, noNaN: true }),
				fc.double({ min: 0, max: 30, noNaN: true }),
				fc.double({ min: 0, max: Math.PI / 2, noNaN: true }),
				(wallTemperature, ambient, wind, altitude) => {
					const losses = receiverLosses(receiver, {
						wallTemperature,
						ambient,
						wind,
						altitude,
						pressure: 70_000,
					});
					for (const loss of Object.values(losses)) {
						expect(Number.isFinite(loss)).toBe(true);
						expect(loss * (wallTemperature - ambient)).toBeGreaterThanOrEqual(0);
					}
				},
			),
			{ seed: 1 },
		);
	});

	it("rise with the wall's temperature, steeper and steeper or evenly", () => {
		const losses = [250, 298.15, 350, 400, 500, 700, 1000].map((wallTemperature) =>
			total(receiver, { wallTemperature }),
		);
		rising(losses);
	});

	it("have a slope that a finite difference finds, above, at and below the air's temperature", () => {
		for (const wallTemperature of [285, 298.15, 298.65, 320, 423.15]) {
			const forward =
				total(receiver, { wallTemperature: wallTemperature + 0.5 }) - total(receiver, { wallTemperature });
			const backward =
				total(receiver, { wallTemperature }) - total(receiver, { wallTemperature: wallTemperature - 0.5 });
			expect(forward).toBeGreaterThan(0);
			expect(Math.abs(forward / backward - 1)).toBeLessThan(0.15);
		}
	});

	it("refuse NaN, a negative wind and a sun beyond the zenith", () => {
		const refused = (change: Partial<typeof mild>) =>
			expect(() => total(receiver, change)).toThrow("must be between");
		refused({ wallTemperature: Number.NaN });
		refused({ wind: Number.NaN });
		refused({ wind: -1 });
		refused({ altitude: Number.NaN });
		refused({ altitude: 2 });
	});
});

describe.each(tubes.map((receiver) => [receiver.kind, receiver] as const))("%s", (_, receiver) => {
	it("loses more in more wind, at every tilt", () => {
		for (const altitude of [0, 0.8, Math.PI / 2])
			rising([0, 0.01, 0.5, 1, 2, 4, 8].map((wind) => total(receiver, { wind, altitude })));
	});

	it("loses less by convection the farther it looks down, in still air", () => {
		const convected = [1.5, 1.2, 0.9, 0.6, 0.3, 0].map(
			(altitude) => receiverLosses(receiver, { ...mild, wind: 0, altitude }).convected,
		);
		rising(convected);
	});

	it("loses less in thin air, and less behind thicker lagging", () => {
		expect(total(receiver, { pressure: 70_000 })).toBeLessThan(total(receiver, {}));
		const thick = { ...receiver, insulation: { ...receiver.insulation, thickness: 0.1 } };
		expect(receiverLosses(thick, mild).conducted).toBeLessThan(receiverLosses(receiver, mild).conducted);
		const bare = { ...receiver, insulation: { ...receiver.insulation, thickness: 0 } };
		expect(receiverLosses(bare, mild).conducted).toBeGreaterThan(
			4 * receiverLosses(receiver, mild).conducted,
		);
	});

	it("loses less with a selective surface", () => {
		expect(totalReceiverLoss(receiverLosses({ ...receiver, emittance: 0.1 }, mild))).toBeLessThan(
			total(receiver, {}),
		);
	});
});

describe("kinds against each other", () => {
	it("a pane cuts what an equal open coil loses to less than half in wind", () => {
		expect(total(glazedCoil, {})).toBeLessThan(total(openCoil, {}) / 2);
		expect(total(glazedCoil, {})).toBeGreaterThan(total(openCoil, {}) / 10);
	});

	it("radiation is blackbody radiation for a black face, and through a black cavity's aperture", () => {
		const flux = 5.670374419e-8 * (423.15 ** 4 - 298.15 ** 4);
		expect(receiverLosses({ ...openCoil, emittance: 1 }, mild).radiated).toBeCloseTo(
			(flux * Math.PI * 0.2 ** 2) / 4,
			9,
		);
		expect(receiverLosses({ ...cavity, emittance: 1 }, mild).radiated).toBeCloseTo(
			(flux * Math.PI * 0.15 ** 2) / 4,
			9,
		);
	});

	it("an efficiency line loses its coefficient times the difference", () => {
		expect(receiverLosses(measured, mild)).toEqual({
			radiated: 0,
			convected: 0,
			conducted: 0,
			unresolved: 4.6 * (423.15 - 298.15),
		});
	});
});
