import { describe, expect, it } from "vitest";
import type { Answer, Body } from "../../sdk/index.ts";
import { raykettle } from "./service.ts";

type Caution = Answer<"warmUpTank">["cautions"][number];

const codes = (cautions: readonly Caution[]) => cautions.map(({ code }) => code);
const ofCode = (cautions: readonly Caution[], code: string) => cautions.filter((one) => one.code === code);

const dish = { diameterM: 1.8, focalLengthM: 0.675 };
const site = { latitude: 31.2, longitude: -7.9, elevationM: 2350 };
const day: Body<"warmUpTank"> = { site, date: "2026-01-15", dish, tank: { volumeL: 150 } };
const heater: Body<"assessInstantHeater"> = { site, dish, wantedTemperatureC: 40 };

describe.each(["openCoil", "glazedCoil"] as const)("the spot of light on a %s", (kind) => {
	const receiver = { kind };
	const answers = async () => [
		await raykettle.warmUpTank({ ...day, receiver }),
		await raykettle.rankImprovements({ ...day, receiver }),
		await raykettle.receiverLosses({ dish, receiver }),
		await raykettle.assessInstantHeater({ ...heater, receiver }),
	];

	it("is a danger wherever its temperatures are, as bright as the optics of the dish in full sun", async () => {
		const { focalSpot } = await raykettle.dishOptics({ dish, receiver, beamIrradianceWPerM2: 1000 });
		for (const { cautions } of await answers()) {
			const [caution, ...more] = ofCode(cautions, "flatCoilInFocus");
			expect(more).toEqual([]);
			expect(caution).toMatchObject({ severity: "danger" });
			expect(caution!.parameters.peakIrradianceWPerM2).toBeCloseTo(focalSpot.peakIrradianceWPerM2, 0);
			expect(caution!.message).toMatch(/ \d+ kW\/m².*cavity.*licensed/);
		}
	});

	it("stays a danger on the widest disc, and in light given without a dish", async () => {
		const wide = await raykettle.receiverLosses({ dish, receiver: { kind, apertureDiameterM: 1.5 } });
		expect(codes(wide.cautions)).toContain("flatCoilInFocus");
		const given = { absorbedPowerW: 900, receiver: { kind, apertureDiameterM: 0.25 } };
		const [caution] = ofCode((await raykettle.receiverLosses(given)).cautions, "flatCoilInFocus");
		expect(caution).toMatchObject({ severity: "danger", parameters: {} });
	});

	it("is nowhere said to be kept from charring by the size of its disc", async () => {
		const { assumed } = await raykettle.warmUpTank({ ...day, receiver });
		const { reason } = assumed.find(({ pointer }) => pointer === "/receiver/apertureDiameterM")!;
		expect(reason).not.toMatch(/char/);
		expect(reason).toMatch(/the light falls on a spot/);
	});
});

it("a cavity and a measured dish have no flat coil to burn", async () => {
	const measured = { kind: "efficiencyLine", opticalEfficiency: 0.7, lossCoefficientWPerK: 3 } as const;
	for (const receiver of [{}, measured])
		expect(codes((await raykettle.warmUpTank({ ...day, receiver })).cautions)).not.toContain(
			"flatCoilInFocus",
		);
});

describe("frost", () => {
	const FROST = ["loopFreezes", "receiverFreezes", "coilFreezes", "tankFreezes", "mayFreeze"];
	const water = { fluid: "water" } as const;
	const north = { latitude: 62, longitude: 10, elevationM: 100 };
	const indoors = { volumeL: 150, surroundingsC: 15 };
	const wetLoop = { site: north, date: "2026-02-10", dish, tank: indoors, loop: water };
	const oilLoop = { ...wetLoop, loop: {}, tank: { volumeL: 150 } };
	const oneReceiver = { dish, receiver: {}, ...water };
	const oneLoop = { supplyTemperatureC: 80, loop: water };
	const dated = { ...heater, date: "2026-02-10" };
	const measured = (ambientC?: number[]) => ({
		kind: "measured" as const,
		time: ["2026-02-10T06:00:00+01:00", "2026-02-10T20:00:00+01:00"],
		beamIrradianceWPerM2: [500, 500],
		...(ambientC && { ambientC }),
	});
	type Asked = () => Promise<{ readonly cautions: readonly Caution[] }>;
	const { warmUpTank, rankImprovements, tankCooling, loopLosses, receiverLosses, assessInstantHeater } =
		raykettle;

	it.each<[name: string, place: string, assumed: Asked, stated: (ambientC: number) => ReturnType<Asked>]>([
		[
			"a loop of water",
			"loop",
			() => warmUpTank(wetLoop),
			(ambientMinC) => warmUpTank({ ...wetLoop, sky: { ambientMinC } }),
		],
		[
			"a loop of water under a measured sky",
			"loop",
			() => warmUpTank({ ...wetLoop, sky: measured() }),
			(ambientC) => warmUpTank({ ...wetLoop, sky: measured([ambientC, 15]) }),
		],
		[
			"a loop of water to improve",
			"loop",
			() => rankImprovements(wetLoop),
			(ambientMinC) => rankImprovements({ ...wetLoop, sky: { ambientMinC } }),
		],
		[
			"a tank out of doors",
			"tank",
			() => warmUpTank(oilLoop),
			(ambientMinC) => warmUpTank({ ...oilLoop, sky: { ambientMinC } }),
		],
		[
			"a tank that stands",
			"tank",
			() => tankCooling({ tank: { volumeL: 150 } }),
			(ambientC) => tankCooling({ tank: { volumeL: 150 }, ambientC }),
		],
		[
			"a loop on its own",
			"loop",
			() => loopLosses(oneLoop),
			(ambientC) => loopLosses({ ...oneLoop, ambientC }),
		],
		[
			"a receiver on its own",
			"receiver",
			() => receiverLosses(oneReceiver),
			(ambientC) => receiverLosses({ ...oneReceiver, ambientC }),
		],
		[
			"an instant heater",
			"receiver",
			() => assessInstantHeater(heater),
			(ambientC) => assessInstantHeater({ ...heater, levelAir: { ambientC } }),
		],
		[
			"an instant heater on a date",
			"receiver",
			() => assessInstantHeater({ ...dated, levelAir: { ambientC: 30 } }), // which is not the day's
			(ambientMinC) => assessInstantHeater({ ...dated, sky: { ambientMinC } }),
		],
		[
			"an instant heater with a vessel",
			"coil",
			() => assessInstantHeater({ ...heater, arrangement: "vessel" }),
			(ambientC) => assessInstantHeater({ ...heater, arrangement: "vessel", levelAir: { ambientC } }),
		],
	])("of %s is ruled out by stated air alone", async (_name, place, assumed, stated) => {
		const frosty = async (answer: ReturnType<Asked>) =>
			(await answer).cautions.filter(({ code }) => FROST.includes(code));
		const found = await frosty(assumed());
		expect(found).toMatchObject([{ code: "mayFreeze", severity: "danger", parameters: { place } }]);
		expect(found[0]!.message).toMatch(/assumed.*coldest night.*licensed/);
		expect(await frosty(stated(7))).toEqual([]);
		const cold = await frosty(stated(-3));
		expect(cold).toMatchObject([{ severity: "danger", parameters: { airC: -3 } }]);
		expect(codes(cold)).toEqual([`${place}Freezes`]);
	});

	it("is judged by the day's coldest air, also where the run begins later", async () => {
		const sky = { ambientMinC: 1, ambientMaxC: 20 };
		const { cautions } = await warmUpTank({ ...wetLoop, startTime: "12:00", sky });
		expect(codes(cautions)).toContain("loopFreezes");
	});

	it("is not ruled out near the equator by air that nobody stated", async () => {
		const nairobi = { latitude: -1.29, longitude: 36.8, elevationM: 1795 };
		const { cautions } = await warmUpTank({ ...wetLoop, site: nairobi });
		expect(codes(cautions)).toContain("mayFreeze");
	});
});

describe("polyethylene", () => {
	const polyethylene = { material: "polyethylene" } as const;
	const loop = { supply: polyethylene, return: polyethylene };
	const hot = async (answer: Promise<{ readonly cautions: readonly Caution[] }>) =>
		ofCode((await answer).cautions, "plasticTooHot").map(({ severity, parameters, message }) => {
			expect(severity).toBe("danger");
			expect(message).toMatch(/polyethylene.*licensed/);
			expect(parameters.limitC).toBe(60);
			return [parameters.place, parameters.hottestC] as const;
		});
	const soft = {
		...day,
		tank: { volumeL: 150, wallMaterial: "polyethylene" as const },
		coil: polyethylene,
		loop,
	};

	it("is a danger in the tank, the coil and the pipes of a plant, each at the hottest that it meets", async () => {
		for (const answer of [raykettle.warmUpTank(soft), raykettle.rankImprovements(soft)])
			expect((await hot(answer)).map(([place]) => place)).toEqual([
				"tank",
				"coil",
				"supply pipe",
				"return pipe",
			]);
		const day = await raykettle.warmUpTank(soft);
		const found = Object.fromEntries(await hot(Promise.resolve(day)));
		expect(found.tank).toBeCloseTo(day.maximumOilTemperatureC, 4);
		expect(found.coil).toBeCloseTo(day.maximumOilTemperatureC, 4);
		expect(found["return pipe"]).toBeCloseTo(day.stagnationTemperatureC, 4);
	});

	it("is a danger on a loop of its own, and none where it stays cool", async () => {
		const walls = {
			loop: { ...loop, control: {} },
			furtherTubes: [{ lengthM: 5, innerDiameterMm: 13, ...polyethylene }],
		};
		expect(
			await hot(raykettle.loopLosses({ ...walls, supplyTemperatureC: 70, returnTemperatureC: 55 })),
		).toEqual([
			["supply pipe", 70],
			["further tube", 70],
		]);
		expect(await hot(raykettle.loopLosses({ ...walls, supplyTemperatureC: 60 }))).toEqual([]);
	});

	it("is a danger round a tank that stands hot", async () => {
		const standing = (startTemperatureC: number) =>
			hot(raykettle.tankCooling({ tank: { ...soft.tank, startTemperatureC } }));
		expect(await standing(61)).toEqual([["tank", 61]]);
		expect(await standing(60)).toEqual([]);
	});

	it("is a danger at the receiver of an instant heater, and in its vessel of oil", async () => {
		const piped = await raykettle.assessInstantHeater({ ...heater, outletPipe: polyethylene });
		expect(await hot(Promise.resolve(piped))).toEqual([["pipe to the tap", piped.stagnationTemperatureC]]);
		const vessel = { wallMaterial: "polyethylene" as const, coil: polyethylene };
		const charged = await hot(raykettle.assessInstantHeater({ ...heater, arrangement: "vessel", vessel }));
		expect(charged.map(([place]) => place)).toEqual(["vessel", "coil"]);
	});
});
