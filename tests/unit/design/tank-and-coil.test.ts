import { describe, expect, it } from "vitest";
import { coilFits } from "../../../src/coil/geometry.ts";
import { coilBand, designCoil, type SparseCoil } from "../../../src/design/coil.ts";
import { designTank, type SparseTank, tankBoilingPoint } from "../../../src/design/tank.ts";
import { celsius, coil, tank } from "./sparse-plant.ts";

const MAINS = celsius(10);
const tankOf = (change: Partial<SparseTank>) => designTank({ ...tank, ...change }, MAINS);

describe("a tank", () => {
	it.each([
		["volume alone", {}, ["tank.diameter", "tank.height"]],
		["a height", { height: 1 }, ["tank.diameter"]],
		["a diameter", { diameter: 0.4 }, ["tank.height"]],
	])("by %s holds its volume, which is its area times its height", (_what, stated, left) => {
		const { design, assumed } = tankOf(stated);
		expect((Math.PI / 4) * design.diameter ** 2 * design.height).toBeCloseTo(0.15, 12);
		expect(design.fill).toBe(0.15);
		const sizes = assumed.filter(({ subject }) => /height|diameter/.test(subject));
		expect(sizes.map(({ subject }) => subject)).toEqual(left);
	});

	it("without dimensions is 2.2 times as high as wide, whatever it holds", () => {
		for (const volume of [0.01, 0.15, 5]) {
			const { height, diameter } = tankOf({ volume }).design;
			expect(height / diameter).toBeCloseTo(2.2, 12);
		}
	});

	it("starts at the mains' temperature in ten layers, or as stated", () => {
		expect([...tankOf({}).design.startTemperatures]).toEqual(new Array(10).fill(MAINS));
		const profile = tankOf({ startTemperature: [323, 303, 283] });
		expect([...profile.design.startTemperatures]).toEqual([323, 303, 283]);
		expect(profile.assumed.map(({ subject }) => subject)).not.toContain("tank.layers");
		expect([...tankOf({ layers: 4, startTemperature: 293 }).design.startTemperatures]).toEqual([
			293, 293, 293, 293,
		]);
	});

	it("has no pressure where it is vented, and a usual valve's where it is not", () => {
		expect(tankOf({}).design.reliefPressure).toBe(0);
		const closed = tankOf({ vented: false });
		expect(closed.design.reliefPressure).toBe(600_000);
		expect(closed.assumed.at(-1)).toMatchObject({
			subject: "tank.reliefPressure",
			grounds: { source: "EN 1490", confirmed: false },
		});
	});

	it("boils where open water does; under 600 kPa above the air at 165 °C", () => {
		expect(tankBoilingPoint(tankOf({}).design, 0)).toBeCloseTo(celsius(99.97), 1);
		// 701.3 kPa: saturated at 165.0 °C, IAPWS R7-97
		expect(tankBoilingPoint(tankOf({ vented: false }).design, 0)).toBeCloseTo(celsius(165.0), 0);
	});
});

describe("a coil", () => {
	const wound = (change: Partial<SparseCoil>, volume = 0.15) => {
		const vessel = tankOf({ volume }).design;
		return { vessel, ...designCoil({ ...coil, ...change }, vessel) };
	};

	it.each([0.005, 0.01, 0.02, 0.04, 0.08, 0.15, 0.5, 5])(
		"of no stated length fits a tank of %d m³, with half a tube between turns, and is at most 12 m",
		(volume) => {
			const { design, vessel } = wound({}, volume);
			const band = ((design.top - design.bottom) * vessel.fill) / ((Math.PI / 4) * vessel.diameter ** 2);
			expect(coilBand(design, vessel)).toBeCloseTo(band, 12);
			expect(design.length).toBeLessThanOrEqual(12);
			expect(design.length).toBeGreaterThan(band);
			const turns = Math.sqrt(design.length ** 2 - band ** 2) / (Math.PI * design.coilDiameter); // a helix unrolled
			expect(band / turns).toBeGreaterThan(1.499 * design.outerDiameter);
			if (design.length < 12) expect(band / turns).toBeLessThan(1.52 * design.outerDiameter); // no shorter than need be
			expect(design.coilDiameter).toBeCloseTo(0.7 * vessel.diameter, 12);
			expect(coilFits(design, vessel).outcome).toBe("fits");
		},
	);

	it("of so many turns has the tube that they take", () => {
		const { design, vessel, assumed } = wound({ turns: 10, coilDiameter: 0.3 });
		expect(design.length).toBeCloseTo(
			Math.sqrt((10 * Math.PI * 0.3) ** 2 + coilBand(design, vessel) ** 2),
			9,
		);
		expect(assumed).toEqual([]);
	});

	it("of two walls resists more than of one", () => {
		expect(wound({ doubleWall: true }).design.gapResistance).toBeGreaterThan(0);
		expect(wound({}).design.gapResistance).toBe(0);
	});
});
