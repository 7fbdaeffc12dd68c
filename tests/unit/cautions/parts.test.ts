import { describe, expect, it } from "vitest";
import type { Caution, DayAir } from "../../../src/cautions/caution.ts";
import { starvedStart } from "../../../src/cautions/cold-start.ts";
import { dishCautions } from "../../../src/cautions/dish-cautions.ts";
import { hotSurfaces } from "../../../src/cautions/hot-surface.ts";
import { receiverCautions } from "../../../src/cautions/receiver-cautions.ts";
import { tankFrost } from "../../../src/cautions/tank-frost.ts";
import { mineralOil } from "../../../src/fluids/mineral-oil.ts";
import { water } from "../../../src/fluids/water.ts";
import { coldStart } from "../../../src/loop/cold-start.ts";
import type { Tank } from "../../../src/tank/tank.ts";
import { cavity, glazedCoil, lagging, measuredDish, plant } from "../plant/plants.ts";

const celsius = (temperature: number) => temperature + 273.15;
const stated = (coldest: number): DayAir => ({ coldest: celsius(coldest), source: "stated" });
const outdoors: Tank = { ...plant.tank, surroundings: { kind: "outdoors" } };
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

	it("freezes as a tank from 0 °C down, in the air or in its room", () => {
		const frost = (coldest: number) => [{ code: "tankFreezes", parameters: { air: { value: coldest } } }];
		const seen = (tank: Tank, coldest: number) => tankFrost({ plant: { tank }, air: stated(coldest) });
		expect(seen(outdoors, -0.1)).toMatchObject(frost(celsius(-0.1)));
		expect(seen(outdoors, 0.1)).toEqual([]);
		const inRoom = (temperature: number): Tank => ({
			...outdoors,
			surroundings: { kind: "indoors", temperature: celsius(temperature) },
		});
		expect(seen(inRoom(-0.1), 20)).toMatchObject(frost(celsius(-0.1)));
		expect(seen(inRoom(0.1), -20)).toEqual([]);
	});

	it("may freeze out of doors in air that was only assumed, and not in a room", () => {
		const air: DayAir = { ...stated(20), source: "assumed" };
		expect(tankFrost({ plant: { tank: outdoors }, air })).toMatchObject([
			{ code: "mayFreeze", severity: "danger", parameters: { place: "tank" } },
		]);
		const surroundings = { kind: "indoors", temperature: celsius(15) } as const;
		expect(tankFrost({ plant: { tank: { ...outdoors, surroundings } }, air })).toEqual([]);
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
					air: stated(10),
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

		it("freezes with water in it, where the air is cold or only assumed", () => {
			expect(seen({ fluid: water, air: stated(4) })).toContain("receiverFreezes");
			expect(seen({ fluid: water, air: { ...stated(30), source: "assumed" } })).toContain("mayFreeze");
			for (const code of ["receiverFreezes", "mayFreeze"]) {
				expect(seen({ fluid: water, air: stated(6) })).not.toContain(code);
				expect(seen({ air: { ...stated(4), source: "assumed" } })).not.toContain(code); // oil
			}
		});

		it("knows nothing of the lagging of a measured one", () => {
			expect(seen({ receiver: measuredDish, weatherproof: false })).not.toContain("wetInsulation");
		});
	});
});
