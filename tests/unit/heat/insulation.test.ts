import { describe, expect, it } from "vitest";
import {
	insulationConductivity,
	insulationMaterial,
	insulationOutsideRange,
} from "../../../src/heat/insulation.ts";
import { INSULATION_MATERIALS } from "../../../src/heat/insulation-materials.ts";

describe.each(Object.entries(INSULATION_MATERIALS))("%s", (id, material) => {
	it("insulates better than oil conducts, worse than a vacuum, and less well when hot", () => {
		const [low, high] = material.range;
		let before = 0.01;
		for (let t = low; t <= high; t += 5) {
			const k = insulationConductivity(material, t, 0);
			expect(k).toBeGreaterThan(before);
			expect(k).toBeLessThan(0.3);
			before = k;
		}
	});
	it("stays positive from a mountain night to a dish without flow", () => {
		for (let t = 220; t <= 1000; t += 10)
			expect(insulationConductivity(material, t, 0)).toBeGreaterThan(0.01);
	});
	it("is found by its id, is plausible and says where it comes from", () => {
		expect(insulationMaterial(id)).toBe(material);
		expect(material.source?.length).toBeGreaterThan(10);
		expect(material.density).toBeGreaterThan(10);
		expect(material.density).toBeLessThan(300);
		expect(material.serviceLimit).toBeGreaterThan(material.range[0]);
	});
	it("conducts more with water in it, unless it takes up none", () => {
		const wet = insulationConductivity(material, 300, material.mostMoisture);
		const dry = insulationConductivity(material, 300, 0);
		if (material.moistureFactor === 0) expect(wet).toBe(dry);
		else expect(wet).toBeGreaterThan(dry * 1.3);
		expect(wet).toBeLessThan(0.6); // water's own
	});
	it("refuses moisture beyond the published range", () => {
		for (const moisture of [material.mostMoisture + 0.01, -0.01, Number.NaN])
			expect(() => insulationConductivity(material, 300, moisture)).toThrow(
				expect.objectContaining({ code: "out_of_range" }),
			);
	});
});

describe("insulation", () => {
	it("refuses an unknown id, inherited names included", () => {
		for (const id of ["asbestos", "", "toString"])
			expect(() => insulationMaterial(id)).toThrow(expect.objectContaining({ code: "contradictory" }));
	});
	it("flags a hot face beyond service and a mean beyond the fit", () => {
		const foam = insulationMaterial("elastomericFoam");
		expect(insulationOutsideRange(foam, 353, 300)).toBe(false);
		expect(insulationOutsideRange(foam, 423, 300)).toBe(true);
		expect(insulationOutsideRange(insulationMaterial("mineralWool"), 500, 300)).toBe(false);
		expect(insulationOutsideRange(foam, Number.NaN, 300)).toBe(true);
	});
});
