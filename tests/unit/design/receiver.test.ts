import { describe, expect, it } from "vitest";
import { designDish } from "../../../src/design/dish.ts";
import { designReceiver, designReceiverInLight } from "../../../src/design/receiver.ts";
import { type SparseReceiver, statedAbsorber } from "../../../src/design/sparse-receiver.ts";
import { fluidById } from "../../../src/fluids/catalogue.ts";
import type { Fluid } from "../../../src/fluids/fluid.ts";
import { receiverBalance } from "../../../src/receiver/balance.ts";
import type { TubeReceiver } from "../../../src/receiver/receiver.ts";
import { standardPressure } from "../../../src/sky/atmosphere.ts";
import { measuredDish } from "../plant/plants.ts";
import { cavity, celsius, dish, loop } from "./sparse-plant.ts";

const ELEVATION = 2350; // [m]
const { kind: _, ...surfaces } = cavity;
const spirals = {
	openCoil: { ...surfaces, kind: "openCoil" },
	glazedCoil: { ...surfaces, kind: "glazedCoil", coverTransmittance: 0.9, coverGap: 0.025 },
} as const satisfies Record<string, SparseReceiver>;
const receivers = { cavity, ...spirals };

function inDish(sparse: SparseReceiver, diameter = 2, fluid: Fluid = loop.fluid): TubeReceiver {
	const { design } = designReceiver(sparse, designDish({ ...dish, diameter }).design, fluid, ELEVATION);
	if (design.kind === "efficiencyLine") throw new Error("an efficiency line has no tube");
	return design;
}

/** Area that a receiver's tube covers, turn against turn [m²]. */
const covered = ({ tube }: TubeReceiver) => tube.length * tube.outerDiameter;
const disc = (diameter: number) => (Math.PI / 4) * diameter ** 2;
const hollow = (wide: number, deep: number) => Math.PI * wide * deep + disc(wide); // cylinder and back

const CHARS = celsius(210); // film limit of mineral oil, DIN 4754 practice (from memory)

/** Fluid at the wall with all the light that the mirror can send, and none of the fluid moving. */
function restingFilm(receiver: TubeReceiver, diameter: number): number {
	return receiverBalance(receiver, {
		fluid: loop.fluid,
		fluidTemperature: celsius(60),
		flow: 0,
		absorbed: 1000 * disc(diameter) * 0.85 * 0.92 * 0.94,
		ambient: celsius(20),
		wind: 0,
		pressure: standardPressure(ELEVATION),
		altitude: Math.PI / 4,
	}).filmTemperature;
}

const kinds = ["cavity", "openCoil", "glazedCoil"] as const;

it.each(kinds.flatMap((kind) => [1, 2, 4].map((diameter) => [kind, diameter] as const)))(
	"%s of a dish %d m wide bears full sun at rest, and is no larger for it",
	(kind, diameter) => {
		const receiver = inDish(receivers[kind], diameter);
		const film = restingFilm(receiver, diameter);
		expect(film).toBeLessThan(CHARS);
		expect(receiver.apertureDiameter).toBeLessThan(diameter / 2);
		const grown =
			receiver.kind === "cavity" ? receiver.innerDiameter > 1.31 * receiver.apertureDiameter : true;
		if (grown) expect(film).toBeGreaterThan(CHARS - 30);
	},
);

describe("a tube", () => {
	it("covers its absorber", () => {
		const found = inDish(cavity);
		if (found.kind !== "cavity") throw new Error("another receiver");
		expect(found.depth).toBe(found.innerDiameter);
		expect(covered(found)).toBeCloseTo(hollow(found.innerDiameter, found.depth), 12);
		const spiral = inDish(spirals.openCoil);
		expect(covered(spiral)).toBeCloseTo(disc(spiral.apertureDiameter), 12);
	});

	it.each([
		["hollow", { innerDiameter: 0.5 }, 0.5, 0.5],
		["depth", { innerDiameter: 0.3, depth: 0.2 }, 0.3, 0.2],
	])("follows a stated %s", (_what, stated, wide, deep) => {
		const found = inDish({ ...cavity, ...stated });
		expect(found).toMatchObject({ innerDiameter: wide, depth: deep });
		expect(covered(found)).toBeCloseTo(hollow(wide, deep), 12);
	});

	it.each(["openCoil", "glazedCoil"] as const)("can be wound to a %s of a small dish", (kind) => {
		const small = inDish(spirals[kind], 0.4, fluidById("water"));
		const helix = (2 / 3) * small.apertureDiameter; // mean of a flat spiral's turns by their length
		expect(helix / small.tube.innerDiameter).toBeGreaterThan(1.999); // tighter no film is known
		expect(helix / small.tube.innerDiameter).toBeLessThan(6);
	});
});

describe("an aperture", () => {
	it("is no wider than a stated hollow", () => {
		const free = inDish(cavity).apertureDiameter;
		expect(inDish({ ...cavity, innerDiameter: 0.08 }).apertureDiameter).toBe(0.08);
		expect(inDish({ ...cavity, innerDiameter: 0.4 }).apertureDiameter).toBe(free);
	});

	it("that is stated stays, though a disc of it chars", () => {
		const spiral = inDish({ ...spirals.openCoil, apertureDiameter: 0.1 });
		expect(spiral.apertureDiameter).toBe(0.1);
		expect(covered(spiral)).toBeCloseTo(disc(0.1), 12);
		expect(restingFilm(spiral, 2)).toBeGreaterThan(CHARS);
	});

	it("has no dish to be chosen by in light of any source", () => {
		const lit = () => designReceiverInLight(cavity, 1, loop.fluid, ELEVATION);
		expect(lit).toThrow(expect.objectContaining({ code: "contradictory" }));
	});
});

it("in given light a hollow grows with the light that it must bear", () => {
	const widthIn = (light: number) => {
		const stated = { ...cavity, apertureDiameter: 0.12 };
		const { design } = designReceiverInLight(stated, light, loop.fluid, ELEVATION);
		return (design as { innerDiameter: number }).innerDiameter;
	};
	expect(widthIn(0.001)).toBeCloseTo(1.3 * 0.12, 12); // next to no light: as proportioned
	expect(widthIn(4)).toBeGreaterThan(widthIn(2));
});

it("a measured dish has nothing to be sized", () => {
	const measured = designReceiver(measuredDish as SparseReceiver, designDish(dish).design, loop.fluid, 0);
	expect(measured).toEqual({ design: measuredDish, assumed: [] });
});

it("an absorber's width is known where its size is stated", () => {
	expect(statedAbsorber(cavity)).toBeUndefined();
	expect(statedAbsorber({ ...cavity, innerDiameter: 0.2 })?.width).toBe(0.2);
	expect(statedAbsorber({ ...cavity, apertureDiameter: 0.1 })?.width).toBeCloseTo(0.13, 12);
	expect(statedAbsorber({ ...spirals.openCoil, apertureDiameter: 0.1 })?.width).toBe(0.1);
});
