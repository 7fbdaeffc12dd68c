import { describe, expect, it } from "vitest";
import type { Caution } from "../../../src/cautions/caution.ts";
import { starvedStart } from "../../../src/cautions/cold-start.ts";
import { dishCautions } from "../../../src/cautions/dish-cautions.ts";
import { hotSurfaces } from "../../../src/cautions/hot-surface.ts";
import { receiverCautions } from "../../../src/cautions/receiver-cautions.ts";
import { tankFreezing } from "../../../src/cautions/tank-freezing.ts";
import { mineralOil } from "../../../src/fluids/mineral-oil.ts";
import { coldStart } from "../../../src/loop/cold-start.ts";
import { cavity, glazedCoil, lagging, measuredDish, plant } from "../plant/plants.ts";

const celsius = (temperature: number) => temperature + 273.15;
const codes = (cautions: readonly Caution[]) => cautions.map(({ code }) => code);

describe("a part asked about on its own", () => {
	it("burns the hand above 60 °C, and is named", () => {
		const hot = hotSurfaces([
			["supply pipe", celsius(60.1)],
			["return pipe", celsius(59.9)],
		]);
		expect(hot).toMatchObject([
			{ code: "hotSurface", severity: "warning", parameters: { place: "supply pipe" } },
		]);
	});

	it("freezes as a tank from 0 °C down", () => {
		expect(tankFreezing(celsius(-0.1))).toMatchObject([{ code: "tankFreezes", severity: "danger" }]);
		expect(tankFreezing(celsius(0.1))).toEqual([]);
	});

	it("holds its pump back in the cold, and not in the warm", () => {
		const oil = { ...plant.loop, fluid: mineralOil(68) };
		const at = (temperature: number) => coldStart(oil, [], celsius(temperature));
		const cold = starvedStart("oil", [at(60), at(-10), at(20)]);
		expect(cold).toMatchObject([{ code: "starvedColdStart", severity: "warning" }]);
		expect(cold[0]!.parameters.fluidTemperature).toMatchObject({ value: celsius(-10) }); // the coldest is the worst
		expect(starvedStart("oil", [at(80)])).toEqual([]);
		expect(starvedStart("oil", [])).toEqual([]);
	});

	it("is a sail and a burning glass as a dish", () => {
		expect(codes(dishCautions(3))).toEqual(["concentratedLight", "dishInWind"]);
	});

	describe("as a receiver", () => {
		const seen = (change: object) =>
			codes(
				receiverCautions({
					receiver: cavity,
					litBy: { dish: plant.dish, area: 2.5 },
					fluid: plant.loop.fluid,
					hottest: { maximumOil: celsius(100), maximumFilm: celsius(120), stagnation: celsius(160) },
					weatherproof: true,
					...change,
				}),
			);

		it("says what any receiver must", () => {
			expect(seen({})).toEqual(["concentratedLight", "fluidBurns", "pumpStops", "fibreDust"]);
		});

		it("adds pane, rain and lagging past its limit where they are", () => {
			expect(seen({ receiver: glazedCoil })).toContain("glass");
			expect(seen({ weatherproof: false })).toContain("wetInsulation");
			const foam = { ...cavity, insulation: { ...lagging(0.05), material: "polyurethane" } };
			expect(seen({ receiver: foam })).toContain("laggingTooHot");
			const none = { ...cavity, insulation: { ...lagging(0), material: "polyurethane" } };
			expect(seen({ receiver: none, weatherproof: false })).toEqual([
				"concentratedLight",
				"fluidBurns",
				"pumpStops",
			]);
		});

		it("knows nothing of the lagging of a measured one", () => {
			expect(seen({ receiver: measuredDish, weatherproof: false })).not.toContain("wetInsulation");
		});
	});
});
