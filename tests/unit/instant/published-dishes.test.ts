import { describe, expect, it } from "vitest";
import {
	barePipe,
	goodMirrors,
	honest,
	lineEnds,
	lineStarts,
	type Model,
	type PublishedDish,
	told,
	waterHeater,
} from "../../reference/published-dishes.ts";

const MEASURED: readonly PublishedDish[] = [...lineStarts, ...lineEnds, waterHeater];
const middleOf = ({ efficiency: [low, high] }: PublishedDish) => (low + high) / 2;

/** Clean mirrors, no arms, black at every angle, no pipe: what the receiver's heat losses leave, and nothing else. */
const nothingLost: Model = (of) =>
	honest({
		...of,
		dish: { ...of.dish, cleanliness: 1, blockedFraction: 0 },
		receiver: of.receiver.kind === "efficiencyLine" ? of.receiver : { ...of.receiver, absorptance: 1 },
		arrangement: { kind: "direct", outlet: barePipe(0) },
	});

/** The mirror struck twice. */
const struckTwice: Model = (of) =>
	honest({ ...of, dish: { ...of.dish, reflectance: of.dish.reflectance ** 2 } });

/** Published over the model's middle, as a geometric mean over the dishes. */
function bias(dishes: readonly PublishedDish[], model: Model): number {
	const logs = dishes.map((dish) => Math.log(middleOf(dish) / told(dish, model).middle));
	return Math.exp(logs.reduce((sum, log) => sum + log, 0) / logs.length);
}

describe("dishes that were built and measured, from the materials alone", () => {
	it.each(MEASURED)("$name: published between 5 and 95 in a hundred", (dish) => {
		const { low, high } = told(dish, honest);
		expect(low).toBeLessThan(middleOf(dish));
		expect(high).toBeGreaterThan(middleOf(dish));
	});

	it.each(MEASURED)(
		"$name: a model that loses nothing at mirror and paint leaves the published value out",
		(dish) => {
			expect(told(dish, nothingLost).low).toBeGreaterThan(middleOf(dish));
		},
	);

	it("reads neither high nor low over all of them: within 5 %, where a wrong mirror is 10 % off", () => {
		expect(Math.abs(bias(MEASURED, honest) - 1)).toBeLessThan(0.05);
		expect(bias(MEASURED, struckTwice)).toBeGreaterThan(1.1);
		expect(bias(MEASURED, nothingLost)).toBeLessThan(0.9);
	});

	it("loses with temperature as they do, 2.1 and 2.9 W/m²K of aperture", () => {
		for (const [i, published] of [2.9, 2.1].entries()) {
			const [cold, warm] = [told(lineStarts[i]!, honest), told(lineEnds[i]!, honest)];
			const perArea = ((cold.middle - warm.middle) * 775) / 40; // [W/m²K] at the middle of the beams drawn
			expect(perArea / published).toBeGreaterThan(0.7);
			expect(perArea / published).toBeLessThan(1.3);
		}
	});

	it("good mirrors give 45 to 60 % with water 40 to 60 K over the air", () => {
		const { low, middle, high } = told(goodMirrors, honest);
		const [least, most] = goodMirrors.efficiency;
		expect(middle).toBeGreaterThan(least);
		expect(middle).toBeLessThan(most);
		expect(low).toBeLessThan(least); // some are worse
		expect(high).toBeGreaterThan(most); // and the best are better
		expect(told(goodMirrors, nothingLost).middle).toBeGreaterThan(most);
	});
});
