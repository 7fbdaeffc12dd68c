import { describe, expect, it } from "vitest";
import { air } from "../../../src/fluids/air.ts";
import { facingDiscCoefficient } from "../../../src/receiver/facing-disc.ts";
import { nusseltGap } from "../../../src/receiver/glazed-coil.ts";
import { receiverLosses } from "../../../src/receiver/losses.ts";
import { glazedCoil, mild } from "./receivers.ts";

const SIGMA = 5.670374419e-8;

/** The pane's balance by bisection, written out anew. */
function convergedPaneLoss(
	wall: number,
	wind: number,
	tilt: number,
): { radiated: number; convected: number } {
	const { coverGap, emittance, apertureDiameter } = glazedCoil;
	const area = (Math.PI / 4) * apertureDiameter ** 2;
	const inward = (pane: number) => {
		const gas = air((wall + pane) / 2, mild.pressure);
		const Ra =
			(9.80665 * Math.abs(wall - pane) * coverGap ** 3 * gas.prandtl) /
			(((wall + pane) / 2) * gas.kinematicViscosity ** 2);
		const Nu = nusseltGap(Ra, ((Math.PI / 4) * apertureDiameter) / coverGap, tilt);
		const radiation = (SIGMA * (wall ** 4 - pane ** 4)) / (1 / emittance + 1 / 0.88 - 1);
		return area * ((Nu * gas.conductivity * (wall - pane)) / coverGap + radiation);
	};
	const radiated = (pane: number) => area * 0.88 * SIGMA * (pane ** 4 - mild.ambient ** 4);
	const convected = (pane: number) =>
		area *
		facingDiscCoefficient(apertureDiameter, tilt, pane, mild.ambient, wind, mild.pressure) *
		(pane - mild.ambient);
	let low = mild.ambient;
	let high = wall;
	for (let i = 0; i < 80; i++) {
		const middle = (low + high) / 2;
		if (inward(middle) > radiated(middle) + convected(middle)) low = middle;
		else high = middle;
	}
	return { radiated: radiated(low), convected: convected(low) };
}

describe("pane over the coil", () => {
	it("is in balance: three passes come within 0.5 % of the converged loss", () => {
		for (const wallTemperature of [320, 423.15, 600])
			for (const wind of [0, 2, 10])
				for (const altitude of [0, 0.8, 1.5]) {
					const losses = receiverLosses(glazedCoil, { ...mild, wallTemperature, wind, altitude });
					const converged = convergedPaneLoss(wallTemperature, wind, altitude);
					const sum = converged.radiated + converged.convected;
					expect(Math.abs((losses.radiated + losses.convected) / sum - 1)).toBeLessThan(0.005);
					expect(Math.abs(losses.radiated - converged.radiated) / sum).toBeLessThan(0.02);
				}
	});

	it("has still air in the gap at no difference, and with the hot side straight above", () => {
		expect(nusseltGap(0, 10, 0)).toBeCloseTo(1, 12);
		expect(nusseltGap(1e5, 10, Math.PI / 2)).toBeCloseTo(1, 12);
		expect(nusseltGap(1e5, 10, 0)).toBeGreaterThan(2);
	});

	it("does without neither gap nor sense: a gap of 0 or NaN is refused", () => {
		expect(() => receiverLosses({ ...glazedCoil, coverGap: 0 }, mild)).toThrow("gap");
		expect(() => receiverLosses({ ...glazedCoil, coverGap: Number.NaN }, mild)).toThrow("gap");
	});
});

describe("face of a disc", () => {
	it("in still air gives off less the farther down it looks", () => {
		const still = [0, 0.5, 1, Math.PI / 2].map((tilt) => facingDiscCoefficient(0.2, tilt, 420, 300, 0, 1e5));
		for (let i = 1; i < still.length; i++) expect(still[i]!).toBeLessThan(still[i - 1]!);
	});

	it("is an upright plate when it looks sideways, a level one when it looks down, by the published formulas", () => {
		const gas = air(360, 1e5);
		const buoyancy = (9.80665 * (1 / 360) * 120 * gas.prandtl) / gas.kinematicViscosity ** 2;
		const chord = (Math.PI / 4) * 0.2;
		const upright =
			(0.825 +
				(0.387 * (buoyancy * chord ** 3) ** (1 / 6)) / (1 + (0.492 / gas.prandtl) ** (9 / 16)) ** (8 / 27)) **
			2; // Churchill & Chu, Int. J. Heat Mass Transfer 18 (1975) 1323
		expect(facingDiscCoefficient(0.2, 0, 420, 300, 0, 1e5)).toBeCloseTo(
			(upright * gas.conductivity) / chord,
			9,
		);
		const level = 0.27 * (buoyancy * 0.05 ** 3) ** 0.25; // McAdams, Heat Transmission, 1954, hot face down
		const down = facingDiscCoefficient(0.2, Math.PI / 2, 420, 300, 0, 1e5);
		expect(down / ((level * gas.conductivity) / 0.05)).toBeCloseTo(1, 2);
		const cold = facingDiscCoefficient(0.2, Math.PI / 2, 300, 420, 0, 1e5);
		expect(cold / down).toBeCloseTo(0.54 / 0.27, 1); // a cold face down sheds air as a hot one up, twice as well
	});

	it("lies between the published rules for a plate in wind, near 3 m/s", () => {
		// Watmuff, Charters & Proctor 1977: 2.8 + 3 v; a plate of 0.2 m in a smooth stream takes more than a large one
		const h = facingDiscCoefficient(0.2, 0.8, 350, 300, 3, 101_325);
		expect(h).toBeGreaterThan(11.8);
		expect(h).toBeLessThan(2 * 11.8);
	});
});
