import { describe, expect, it } from "vitest";
import { wireCaution } from "../../../api/parts/caution.ts";
import { dayDesigns, dayPlan } from "../../../api/parts/day-plan.ts";
import { WarmUpRequest } from "../../../api/parts/day-request.ts";
import type { Circumstances } from "../../../src/cautions/caution.ts";
import { cautionsOf } from "../../../src/cautions/cautions.ts";
import { fluidById } from "../../../src/fluids/catalogue.ts";
import { warmUpDay } from "../../../src/plant/day.ts";
import { glazedCoil } from "../plant/plants.ts";

const celsius = (temperature: number) => temperature + 273.15;

const MILD_AIR = { coldest: celsius(10), source: "stated" } as const;

/** A mild day at sea level with a closed tank, its water double-walled from the oil. */
function mildDay(more: object = {}): Circumstances {
	const request = WarmUpRequest.parse({
		site: { latitude: 31.2, longitude: -7.9, elevationM: 0, timeZone: "UTC" },
		date: "2025-03-15",
		dish: { diameterM: 1.5 },
		tank: { volumeL: 150 },
		coil: { doubleWall: true },
		...more,
	});
	const { plant, task, weather } = dayPlan(request, 900, dayDesigns(request)).value;
	const outcome = warmUpDay(plant, weather, task);
	const build = {
		tankWall: "stainlessSteel",
		coilWall: "copper",
		pipeWalls: ["copper"],
		weatherproof: true,
	} as const;
	return { plant, build, task, air: MILD_AIR, outcome };
}

const mild = mildDay();

type Part<T> = { readonly [K in keyof T]?: T[K] };

/** The mild day with some of it otherwise. */
function otherwise(change: {
	readonly outcome?: Part<Circumstances["outcome"]>;
	readonly build?: Part<Circumstances["build"]>;
	readonly tank?: Part<Circumstances["plant"]["tank"]>;
	readonly coil?: Part<Circumstances["plant"]["coil"]>;
	readonly loop?: Part<Circumstances["plant"]["loop"]>;
	readonly receiver?: Circumstances["plant"]["receiver"];
	readonly air?: Circumstances["air"];
}): Circumstances {
	const { plant, build, air, outcome, task } = mild;
	return {
		task,
		plant: {
			...plant,
			tank: { ...plant.tank, ...change.tank },
			coil: { ...plant.coil, ...change.coil },
			loop: { ...plant.loop, ...change.loop },
			receiver: change.receiver ?? plant.receiver,
		},
		build: { ...build, ...change.build },
		air: change.air ?? air,
		outcome: { ...outcome, ...change.outcome },
	};
}

const found = (circumstances: Circumstances) =>
	Object.fromEntries(cautionsOf(circumstances).map((caution) => [caution.code, caution]));

const stated = (coldest: number) => ({ coldest: celsius(coldest), source: "stated" }) as const;
const lagging = (material: string) => ({ insulation: { ...mild.plant.tank.insulation, material } });
const wool = { ...mild.plant.tank.insulation, moisture: 0.05 };
const layers = (temperature: number) => new Float64Array(10).fill(temperature);
const steady = (temperature: number) => ({
	...mild.outcome.series,
	tankMean: mild.outcome.series.tankMean.map(() => temperature),
});

const cool = {
	endTop: celsius(59),
	series: { ...mild.outcome.series, tankTop: mild.outcome.series.tankTop.map(() => celsius(20)) },
};

/** The mild day with foam for all its lagging, its receiver a measured one. */
const foam = { ...wool, material: "polyurethane", moisture: 0 };
const foamed = otherwise({
	loop: {
		supply: { ...mild.plant.loop.supply, insulation: foam },
		return: { ...mild.plant.loop.return, insulation: foam },
	},
	tank: { insulation: foam },
	receiver: { kind: "efficiencyLine", opticalEfficiency: 0.7, lossCoefficient: 3, heldHeatCapacity: 2000 },
});

/** A hazard, circumstances that bring it and circumstances on the other side of its threshold. */
/** The mild day with a share of the heat brought to the water taken out of it again. */
function takenBack(share: number): Circumstances {
	const { balance } = mild.outcome;
	return otherwise({ outcome: { balance: { ...balance, toWater: 1 - share, takenBack: share } } });
}

const HAZARDS: readonly (readonly [
	code: string,
	severity: string,
	present: Circumstances,
	absent: Circumstances,
])[] = [
	[
		"scald",
		"danger",
		otherwise({ outcome: { endTop: celsius(45.1) } }),
		otherwise({ outcome: { endTop: celsius(44.9) } }),
	],
	["closedTank", "danger", otherwise({ tank: { reliefPressure: 6e5 } }), mild],
	["openVent", "warning", mild, otherwise({ tank: { reliefPressure: 6e5 } })],
	["waterBoils", "danger", otherwise({ outcome: { boils: true } }), mild],
	[
		"waterNearBoiling",
		"warning",
		otherwise({ outcome: { endTop: celsius(96), boilingPoint: celsius(100) } }),
		otherwise({ outcome: { endTop: celsius(94), boilingPoint: celsius(100) } }),
	],
	[
		"lowBoilingPoint",
		"info",
		otherwise({ outcome: { boilingPoint: celsius(94.9) } }),
		otherwise({ outcome: { boilingPoint: celsius(95.1) } }),
	],
	[
		"fluidAboveBulkLimit",
		"danger",
		otherwise({ outcome: { maximumOil: celsius(181) } }),
		otherwise({ outcome: { maximumOil: celsius(179) } }),
	],
	[
		"fluidAboveFilmLimit",
		"danger",
		otherwise({ outcome: { maximumFilm: celsius(211) } }),
		otherwise({ outcome: { maximumFilm: celsius(209) } }),
	],
	[
		"fluidAboveFlashPoint",
		"danger",
		otherwise({ outcome: { stagnation: celsius(176) } }),
		otherwise({ outcome: { stagnation: celsius(174) } }),
	],
	[
		"fluidBurns",
		"warning",
		otherwise({ outcome: { stagnation: celsius(174) } }),
		otherwise({ loop: { fluid: fluidById("water") } }),
	],
	["concentratedLight", "danger", mild, mild],
	["flatCoilInFocus", "danger", otherwise({ receiver: glazedCoil }), mild],
	["pumpStops", "danger", otherwise({ outcome: { stagnation: celsius(700) } }), mild],
	[
		"electricShock",
		"danger",
		mild,
		otherwise({ loop: { pump: { ...mild.plant.loop.pump, electricPower: 0 } } }),
	],
	[
		"expansionTooSmall",
		"danger",
		otherwise({ loop: { expansionVolume: 1e-5 } }),
		otherwise({ loop: { expansionVolume: 1e-2 } }),
	],
	[
		"expansion",
		"info",
		otherwise({ loop: { expansionVolume: 1e-2 } }),
		otherwise({ loop: { expansionVolume: 1e-5 } }),
	],
	[
		"loopFreezes",
		"danger",
		otherwise({ loop: { fluid: fluidById("water") }, air: stated(4) }),
		otherwise({ loop: { fluid: fluidById("water") }, air: stated(6) }),
	],
	["loopStiffens", "warning", otherwise({ air: stated(-20) }), otherwise({ air: stated(-5) })],
	["tankFreezes", "danger", otherwise({ air: stated(-0.1) }), otherwise({ air: stated(0.1) })],
	["mayFreeze", "danger", otherwise({ air: { ...MILD_AIR, source: "assumed" } }), mild],
	[
		"legionella",
		"warning",
		otherwise({ outcome: { endTemperatures: layers(celsius(59)), series: steady(celsius(59)) } }),
		otherwise({ outcome: { endTemperatures: layers(celsius(61)), series: steady(celsius(61)) } }),
	],
	["singleWall", "warning", otherwise({ coil: { gapResistance: 0 } }), mild],
	[
		"laggingTooHot",
		"warning",
		otherwise({
			tank: lagging("polyethyleneFoam"),
			outcome: { endTop: celsius(96), stagnation: celsius(500) },
		}),
		otherwise({
			tank: lagging("polyethyleneFoam"),
			outcome: { endTop: celsius(94), stagnation: celsius(500) },
		}),
	],
	["wetInsulation", "warning", otherwise({ tank: { insulation: wool } }), mild],
	[
		"copperWithGalvanised",
		"warning",
		otherwise({ build: { tankWall: "galvanisedSteel" } }),
		otherwise({ build: { tankWall: "galvanisedSteel", coilWall: "stainlessSteel", pipeWalls: ["steel"] } }),
	],
	[
		"galvanisedTooHot",
		"warning",
		otherwise({ build: { tankWall: "galvanisedSteel" }, outcome: { endTop: celsius(61) } }),
		otherwise({ build: { tankWall: "galvanisedSteel" }, outcome: { endTop: celsius(59) } }),
	],
	[
		"plasticTooHot",
		"danger",
		otherwise({
			build: { tankWall: "polyethylene" },
			outcome: { endTop: celsius(20), maximumOil: celsius(61) },
		}),
		otherwise({ build: { tankWall: "polyethylene" }, outcome: { ...cool, maximumOil: celsius(59) } }),
	],
	["windAndWeight", "warning", mild, mild],
	["fibreDust", "warning", mild, foamed],
	["carcinogenicFibre", "danger", otherwise({ tank: lagging("ceramicFibre") }), mild],
	["glass", "warning", otherwise({ receiver: glazedCoil }), mild],
	[
		"starvedFlow",
		"info",
		otherwise({ outcome: { starvedTime: 600 } }),
		otherwise({ outcome: { starvedTime: 0 } }),
	],
	["heatTakenBack", "info", takenBack(0.011), takenBack(0.009)],
];

const ALWAYS = new Set(["concentratedLight", "windAndWeight", "pumpStops"]);

describe.each(HAZARDS)("%s", (code, severity, present) => {
	const caution = found(present)[code]!;

	it("arises with its severity", () => {
		expect(caution).toMatchObject({ code, severity });
	});

	it("says all that it has to say, in wire units", () => {
		const { message, parameters } = wireCaution(caution);
		expect(message).not.toMatch(/[{}]|NaN|undefined/);
		for (const value of Object.values(parameters)) expect(value).not.toBeNaN();
		expect(Object.keys(parameters)).toHaveLength(Object.keys(caution.parameters).length);
	});

	it("defers to codes, law or those licensed to do it", () => {
		expect(caution.message).toMatch(/local|licensed|qualified|the law requires/);
	});
});

describe("across its threshold", () => {
	it.each(HAZARDS.filter(([code]) => !ALWAYS.has(code)))(
		"%s does not arise",
		(code, _severity, _present, absent) => {
			expect(found(absent)).not.toHaveProperty(code);
		},
	);
});

it("a draw before sunset lets the pump take heat out of the water again", () => {
	const drawn = mildDay({ endTime: "22:00", draw: { draws: [{ time: "18:00", litres: 60 }] } });
	const quiet = mildDay({ endTime: "22:00" });
	expect(found(drawn)).toHaveProperty("heatTakenBack");
	expect(drawn.outcome.balance.takenBack).toBeGreaterThan(2 * quiet.outcome.balance.takenBack);
});

describe("cautions of a run", () => {
	it("come most serious first, each code and parameter once", () => {
		const order = ["danger", "warning", "info"];
		const ranks = cautionsOf(mild).map(({ severity }) => order.indexOf(severity));
		expect(ranks).toEqual(ranks.toSorted((a, b) => a - b));
		const keys = cautionsOf(mild).map(({ code, parameters }) => JSON.stringify([code, parameters]));
		expect(new Set(keys).size).toBe(keys.length);
	});

	it("take no notice of lagging that is not there", () => {
		const none = (material: string) => ({ ...wool, material, thickness: 0 });
		const bare = { ...mild.plant.loop.supply, insulation: none("polyethyleneFoam") };
		const hot = { endTop: celsius(99), maximumOil: celsius(170) };
		const uncovered = { supply: bare, return: bare };
		const codes = cautionsOf(
			otherwise({ loop: uncovered, tank: { insulation: none("sheepWool") }, outcome: hot }),
		).flatMap(({ code, parameters }) => [code, parameters.place]);
		for (const stray of ["wetInsulation", "supply pipe", "return pipe", "tank"])
			expect(codes).not.toContain(stray);
	});

	it("count a lukewarm day against Legionella though it ends hot", () => {
		const hot = layers(celsius(65));
		const lukewarm = otherwise({ outcome: { endTemperatures: hot, series: steady(celsius(35)) } });
		const quick = otherwise({ outcome: { endTemperatures: hot, series: steady(celsius(65)) } });
		expect(found(lukewarm)).toHaveProperty("legionella");
		expect(found(quick)).not.toHaveProperty("legionella");
	});

	it("of a pump that stops are graver where the fluid chars", () => {
		const severity = (stagnation: number) =>
			found(otherwise({ outcome: { stagnation: celsius(stagnation) } })).pumpStops!.severity;
		expect([severity(209), severity(211)]).toEqual(["warning", "danger"]); // film limit of mineral oil
	});

	it("speak in wire units", () => {
		const { parameters, message } = wireCaution(
			found(otherwise({ tank: { reliefPressure: 6e5 } })).closedTank!,
		);
		expect(parameters).toEqual({ reliefPressureKpa: 600 });
		expect(message).toContain("600 kPa");
	});

	it("judge each plastic by the hottest that it meets", () => {
		const plastic = ["polyethylene", "polyethylene"] as const;
		const places = (build: Part<Circumstances["build"]>, outcome: Part<Circumstances["outcome"]>) =>
			cautionsOf(otherwise({ build, outcome: { ...cool, maximumOil: celsius(59), ...outcome } }))
				.filter(({ code }) => code === "plasticTooHot")
				.map(({ parameters }) => [parameters.place, (parameters.hottest as { value: number }).value]);
		const noon = { ...cool.series, tankTop: [celsius(20), celsius(62), celsius(50)] }; // hot before a draw
		expect(places({ tankWall: "polyethylene" }, { series: noon })).toEqual([["tank", celsius(62)]]);
		const oil = { maximumOil: celsius(160) };
		expect(places({ tankWall: "polyethylene" }, oil)).toEqual([["tank", celsius(160)]]);
		expect(places({ coilWall: "polyethylene" }, oil)).toEqual([["coil", celsius(160)]]);
		expect(places({ pipeWalls: plastic }, { stagnation: celsius(59) })).toEqual([]);
		expect(places({ pipeWalls: plastic }, { stagnation: celsius(421) })).toEqual([
			["supply pipe", celsius(421)],
			["return pipe", celsius(421)],
		]);
	});

	it("of a measured dish say nothing of tubes and lagging that nobody described", () => {
		const line = {
			kind: "efficiencyLine",
			opticalEfficiency: 0.7,
			lossCoefficient: 3,
			heldHeatCapacity: 2000,
		} as const;
		const places = cautionsOf(otherwise({ receiver: line })).flatMap(
			({ parameters }) => parameters.place ?? [],
		);
		expect(places).not.toContain("receiver");
	});
});
