import { describe, expect, it } from "vitest";
import { designDish, mirrorWidth, type SparseOffsetPolarDish } from "../../../src/design/dish.ts";
import { offsetPolarAperture } from "../../../src/dish/offset-polar.ts";
import { rimAngle } from "../../../src/dish/paraboloid.ts";
import { dish } from "./sparse-plant.ts";

const { diameter: _, kind: _kind, ...mirror } = dish;
const fixedFocus: SparseOffsetPolarDish = { ...mirror, kind: "offsetPolar" };

describe("a two-axis dish", () => {
	it("of so much area is as wide as a disc of it", () => {
		const { design } = designDish({ ...dish, diameter: undefined, apertureArea: Math.PI });
		expect(design).toMatchObject({ diameter: 2 });
		expect(mirrorWidth(design)).toBe(2);
	});

	it("has its focus where the rim stands at the stated angle: at 90° in the rim's own plane, f = D/4", () => {
		const { design, assumed } = designDish({ ...dish, rimAngle: Math.PI / 2 });
		expect(design.focalLength).toBeCloseTo(0.5, 12);
		expect(assumed).toEqual([]);
	});

	it("has a rim angle of 45° where none is stated", () => {
		const { design, assumed } = designDish(dish);
		expect(rimAngle(2, design.focalLength)).toBeCloseTo(Math.PI / 4, 12);
		expect(assumed).toMatchObject([
			{ subject: "dish.rimAngle", value: Math.PI / 4, grounds: { basis: "handbook", confirmed: false } },
		]);
	});
});

describe("an off-axis dish on a polar axis", () => {
	it("shows the sun its stated aperture at the equinox", () => {
		const { design } = designDish({ ...fixedFocus, apertureArea: 3 });
		if (design.kind !== "offsetPolar") throw new Error("another dish");
		expect(offsetPolarAperture(design.mirrorArea, 0.5, 0)).toBeCloseTo(3, 12);
		expect(mirrorWidth(design)).toBeCloseTo(2 * Math.sqrt(design.mirrorArea / Math.PI), 12);
	});

	it("has the proportions of the published one of 8 m²", () => {
		// Munir, Hensel & Scheffler, Solar Energy 84 (2010) 1490: 8 m² of mirror, 5.83 m² at the equinox (from memory)
		const { design, assumed } = designDish({ ...fixedFocus, apertureArea: 5.83 });
		expect((design as { mirrorArea: number }).mirrorArea).toBeCloseTo(8, 1);
		expect(design.focalLength).toBeGreaterThan(2.6);
		expect(design.focalLength).toBeLessThan(2.9);
		expect(assumed.map(({ subject }) => subject)).toEqual(["dish.focalLength"]);
	});
});

it.each([
	["no size", {}],
	["two sizes", { diameter: 2, apertureArea: 3 }],
])("a dish of %s is refused", (_what, sizes) => {
	expect(() => designDish({ ...mirror, kind: "twoAxis", ...sizes })).toThrow(
		expect.objectContaining({ code: "contradictory" }),
	);
});
