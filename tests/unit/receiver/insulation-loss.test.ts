import { describe, expect, it } from "vitest";
import { insulationConductivity, insulationMaterial } from "../../../src/heat/insulation.ts";
import { cylinderFilm } from "../../../src/heat/outer-film.ts";
import { insulatedShell, insulationLoss } from "../../../src/receiver/insulation-loss.ts";
import { mild } from "./receivers.ts";

const wool = (thickness: number, surfaceEmittance: number) => ({
	material: "mineralWool",
	thickness,
	moisture: 0,
	surfaceEmittance,
});

/** Loss by bisection on the surface temperature. */
function convergedLoss(thickness: number, emittance: number, wall: number, wind: number): number {
	const shell = insulatedShell(0.115, 0.215, thickness);
	const outward = (surface: number) => {
		const film = cylinderFilm(shell.outerDiameter, surface, mild.ambient, wind, mild.pressure, emittance);
		return (film.convective + film.radiative) * shell.outerArea * (surface - mild.ambient);
	};
	const through = (surface: number) =>
		((wall - surface) * insulationConductivity(insulationMaterial("mineralWool"), (wall + surface) / 2, 0)) /
		shell.shapeResistance;
	let low = mild.ambient;
	let high = wall;
	for (let i = 0; i < 80; i++) {
		const middle = (low + high) / 2;
		if (through(middle) > outward(middle)) low = middle;
		else high = middle;
	}
	return through((low + high) / 2);
}

describe("lagging", () => {
	it("two passes come within 1.1 % of the converged surface to 600 K, 3.5 % at 800 K", () => {
		for (const thickness of [0.005, 0.02, 0.05, 0.1])
			for (const emittance of [0.05, 0.3, 0.9])
				for (const wallTemperature of [330, 423.15, 600, 800])
					for (const wind of [0, 1, 8]) {
						const loss = insulationLoss(insulatedShell(0.115, 0.215, thickness), wool(thickness, emittance), {
							...mild,
							wallTemperature,
							wind,
						});
						const converged = convergedLoss(thickness, emittance, wallTemperature, wind);
						expect(Math.abs(loss / converged - 1)).toBeLessThan(wallTemperature > 600 ? 0.035 : 0.011);
					}
	});

	it("of no thickness leaves the bare shell's film", () => {
		const shell = insulatedShell(0.1, 0.2, 0);
		const film = cylinderFilm(0.2, mild.wallTemperature, mild.ambient, mild.wind, mild.pressure, 0.9);
		const area = Math.PI * 0.2 * 0.2 + Math.PI * 0.1 ** 2;
		expect(shell.outerArea).toBeCloseTo(area, 12);
		expect(insulationLoss(shell, wool(0, 0.9), mild)).toBeCloseTo(
			(film.convective + film.radiative) * area * (mild.wallTemperature - mild.ambient),
			9,
		);
	});

	it("has the resistance of a cylinder where it is long, of a plane layer where it is thin", () => {
		const long = insulatedShell(0.05, 1000, 0.05);
		expect(1 / long.shapeResistance / 1000).toBeCloseTo((2 * Math.PI) / Math.log(2), 2);
		const thin = insulatedShell(1, 0, 1e-6);
		expect(1 / thin.shapeResistance).toBeCloseTo(Math.PI / 1e-6, -2);
	});

	it("insulates worse when damp, and refuses an unknown material", () => {
		const shell = insulatedShell(0.1, 0.2, 0.05);
		const damp = insulationLoss(shell, { ...wool(0.05, 0.3), moisture: 0.05 }, mild);
		expect(damp).toBeGreaterThan(1.1 * insulationLoss(shell, wool(0.05, 0.3), mild));
		expect(() => insulationLoss(shell, { ...wool(0.05, 0.3), material: "straw hats" }, mild)).toThrow();
	});
});
