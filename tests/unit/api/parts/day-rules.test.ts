import { describe, expect, it } from "vitest";
import { hostel } from "../../../../api/demo/hostel.ts";
import { dayDesigns } from "../../../../api/parts/day-plan.ts";
import { WarmUpRequest } from "../../../../api/parts/day-request.ts";
import { DAY_RULES } from "../../../../api/parts/day-rules.ts";
import { ProblemError } from "../../../../api/problem/problem.ts";
import { refuseFaults } from "../../../../api/validation/rule.ts";

const least = {
	site: { latitude: 31.2, longitude: -7.9, elevationM: 2350, timeZone: "Africa/Casablanca" },
	date: "2025-01-15",
	dish: { diameterM: 2 },
	tank: { volumeL: 150 },
};

function faultsOf(body: object) {
	const request = WarmUpRequest.parse({ ...least, ...body });
	const designs = dayDesigns(request);
	return DAY_RULES.flatMap((rule) => rule(request, designs));
}

const hours = (from: number, to: number) =>
	Array.from(
		{ length: to - from + 1 },
		(_, i) => `2025-01-15T${String(from + i).padStart(2, "0")}:00:00+01:00`,
	);
const day = hours(8, 19);
const beam = day.map(() => 700);
const measured = (sky: object) => ({
	sky: { kind: "measured", time: day, beamIrradianceWPerM2: beam, ...sky },
});

/** What is wrong, the body that is so, and the one pointer and code it must be refused with. */
const CASES: readonly (readonly [what: string, body: object, pointer: string, code: string])[] = [
	["an end before the start", { startTime: "12:00", endTime: "11:00" }, "/endTime", "contradictory"],
	["an end at the start", { startTime: "12:00", endTime: "12:00" }, "/endTime", "contradictory"],
	["a start after sunset", { startTime: "23:00" }, "/startTime", "contradictory"],
	[
		"a dawn warmer than the afternoon",
		{ sky: { ambientMinC: 20, ambientMaxC: 10 } },
		"/sky/ambientMinC",
		"contradictory",
	],
	["a column too short", measured({ ambientC: [1, 2, 3] }), "/sky/ambientC", "contradictory"],
	[
		"no beam",
		{ sky: { kind: "measured", time: day, diffuseIrradianceWPerM2: beam } },
		"/sky",
		"contradictory",
	],
	[
		"times that fall back",
		{
			...measured({ time: [...day.slice(0, 3), day[1]!, ...day.slice(4)] }),
			startTime: "09:00",
			endTime: "17:00",
		},
		"/sky/time/3",
		"contradictory",
	],
	["rows that begin after the run", { ...measured({}), startTime: "07:00" }, "/sky/time", "contradictory"],
	[
		"rows that end before the run",
		{ ...measured({}), startTime: "09:00", endTime: "20:00" },
		"/sky/time",
		"contradictory",
	],
	["a dish without size", { dish: {} }, "/dish", "contradictory"],
	["an off-axis dish without size", { dish: { kind: "offsetPolar" } }, "/dish", "contradictory"],
	[
		"an off-axis mirror too near its focus",
		{ dish: { kind: "offsetPolar", mirrorAreaM2: 8, focalLengthM: 1.2 } },
		"/dish/focalLengthM",
		"out_of_range",
	],
	[
		"a receiver as large as the dish",
		{ receiver: { apertureDiameterM: 2 } },
		"/receiver/apertureDiameterM",
		"impossible",
	],
	[
		"a hollow narrower than its opening",
		{ receiver: { apertureDiameterM: 0.2, innerDiameterM: 0.1 } },
		"/receiver/innerDiameterM",
		"contradictory",
	],
	[
		"a spiral too narrow for its tube",
		{ receiver: { kind: "openCoil", apertureDiameterM: 0.03 } },
		"/receiver/apertureDiameterM",
		"out_of_range",
	],
	[
		"a hollow too narrow for its tube",
		{
			receiver: {
				apertureDiameterM: 0.02,
				innerDiameterM: 0.02,
				tube: { innerDiameterMm: 26, outerDiameterMm: 28 },
			},
		},
		"/receiver/innerDiameterM",
		"out_of_range",
	],
	[
		"an opening whose hollow is too narrow for its tube",
		{ receiver: { apertureDiameterM: 0.015, tube: { innerDiameterMm: 26, outerDiameterMm: 28 } } },
		"/receiver/apertureDiameterM",
		"out_of_range",
	],
	[
		"a receiver tube without wall",
		{ receiver: { tube: { outerDiameterMm: 13 } } },
		"/receiver/tube/outerDiameterMm",
		"contradictory",
	],
	[
		"a supply pipe without wall",
		{ loop: { supply: { innerDiameterMm: 20 } } },
		"/loop/supply/outerDiameterMm",
		"contradictory",
	],
	[
		"a return pipe without wall",
		{ loop: { return: { innerDiameterMm: 20 } } },
		"/loop/return/outerDiameterMm",
		"contradictory",
	],
	[
		"a coil without wall",
		{ coil: { innerDiameterMm: 15, outerDiameterMm: 12 } },
		"/coil/outerDiameterMm",
		"contradictory",
	],
	[
		"a pump that stops above its start",
		{ loop: { control: { startDifferenceK: 3, stopDifferenceK: 4 } } },
		"/loop/control/stopDifferenceK",
		"contradictory",
	],
	[
		"an oil limit below the start",
		{ loop: { control: { oilLimitC: 30 } }, tank: { volumeL: 150, startTemperatureC: [20, 20, 35] } },
		"/loop/control/oilLimitC",
		"contradictory",
	],
	[
		"a high limit at the start",
		{ loop: { control: { highLimitC: 50 } }, tank: { volumeL: 150, startTemperatureC: 50 } },
		"/loop/control/highLimitC",
		"contradictory",
	],
	[
		"an oil limit that nobody knows the oil at",
		{ loop: { control: { oilLimitC: 300 } } },
		"/loop/control/oilLimitC",
		"out_of_range",
	],
	["a coil upside down", { coil: { bottomHeight: 0.7, topHeight: 0.2 } }, "/coil/topHeight", "contradictory"],
	["a coil longer than fits", { coil: { lengthM: 400 } }, "/coil/lengthM", "impossible"],
	["more turns than fit", { coil: { turns: 500 } }, "/coil/turns", "impossible"],
	[
		"a helix wider than the tank",
		{ coil: { coilDiameterM: 0.6, lengthM: 5 } },
		"/coil/coilDiameterM",
		"impossible",
	],
	[
		"a tube too short to rise from the coil's bottom to its top",
		{ coil: { lengthM: 0.2, bottomHeight: 0, topHeight: 1 } },
		"/coil/lengthM",
		"impossible",
	],
	[
		"a helix narrower than two bores",
		{ coil: { coilDiameterM: 0.025, lengthM: 2 } },
		"/coil/coilDiameterM",
		"out_of_range",
	],
	["a tank as flat as a puddle", { tank: { volumeL: 5, diameterM: 6 } }, "/tank/diameterM", "out_of_range"],
	[
		"a tank as slender as a pipe",
		{ tank: { volumeL: 20_000, diameterM: 0.1 } },
		"/tank/diameterM",
		"out_of_range",
	],
	["a tank wider than a house", { tank: { volumeL: 20_000, heightM: 0.1 } }, "/tank/heightM", "out_of_range"],
	["more water than the tank holds", { tank: { volumeL: 150, fillL: 160 } }, "/tank/fillL", "contradictory"],
	[
		"a tank that is not its dimensions",
		{ tank: { volumeL: 150, heightM: 1, diameterM: 0.6 } },
		"/tank/volumeL",
		"contradictory",
	],
	[
		"relief on an open tank",
		{ tank: { volumeL: 150, reliefPressureKpa: 600 } },
		"/tank/reliefPressureKpa",
		"contradictory",
	],
	[
		"a profile of other nodes",
		{ tank: { volumeL: 150, nodes: 4, startTemperatureC: [9, 8, 7] } },
		"/tank/startTemperatureC",
		"contradictory",
	],
	[
		"water above its boil",
		{ tank: { volumeL: 150, startTemperatureC: 95 }, loop: { control: { highLimitC: 99 } } },
		"/tank/startTemperatureC",
		"impossible",
	],
	["a draw of nothing", { draw: { draws: [{ time: "12:00" }] } }, "/draw/draws/0", "contradictory"],
	[
		"a draw that asks twice",
		{ draw: { draws: [{ time: "12:00", litres: 5, energyKwh: 1 }] } },
		"/draw/draws/0",
		"contradictory",
	],
	["households of no profile", { draw: { scale: 3 } }, "/draw/scale", "contradictory"],
	[
		"taps colder than the mains",
		{ draw: { mixedTemperatureC: 9, mainsTemperatureC: 12 } },
		"/draw/mixedTemperatureC",
		"contradictory",
	],
	[
		"one draw colder than the mains",
		{
			draw: {
				draws: [
					{ time: "12:00", litres: 5 },
					{ time: "13:00", litres: 5, temperatureC: 10 },
				],
			},
		},
		"/draw/draws/1/temperatureC",
		"contradictory",
	],
	[
		"a draw before the run",
		{ draw: { draws: [{ time: "02:00", litres: 5 }] } },
		"/draw/draws/0/time",
		"contradictory",
	],
];

describe("a rule", () => {
	it.each(CASES)("refuses %s, and nothing else", (_what, body, pointer, code) => {
		const faults = faultsOf(body);
		expect(faults.map((fault) => [fault.pointer, fault.code])).toEqual([[pointer, code]]);
		expect(faults[0]!.detail.length).toBeGreaterThan(20);
	});

	it.each([
		[
			"two sizes of a dish",
			{ dish: { diameterM: 2, apertureM2: 3 } },
			["/dish/apertureM2", "/dish/diameterM"],
		],
		[
			"focal length and rim angle",
			{ dish: { diameterM: 2, focalLengthM: 1, rimAngleDeg: 53 } },
			["/dish/focalLengthM", "/dish/rimAngleDeg"],
		],
		["length and turns of a coil", { coil: { lengthM: 5, turns: 6 } }, ["/coil/lengthM", "/coil/turns"]],
	])("points at both of %s", (_what, body, pointers) => {
		expect(faultsOf(body).map(({ pointer }) => pointer)).toEqual(pointers);
	});
});

describe("sound requests", () => {
	it.each([
		["the least that must be said", {}],
		["the hostel", hostel.request],
		["a measured day", { ...measured({}), startTime: "09:00", endTime: "18:00" }],
		["a size by area", { dish: { apertureM2: 3 } }],
		["a tank by its dimensions", { tank: { volumeL: 150, heightM: 0.764, diameterM: 0.5 } }],
		["a polar night", { site: { latitude: 75, longitude: 20, elevationM: 0, timeZone: "UTC" } }],
		["a small tank, whose coil is cut to fit", { tank: { volumeL: 10 } }],
	])("%s has no fault", (_what, body) => {
		expect(faultsOf(body)).toEqual([]);
	});
});

it("tells every fault at once, under the kind of the first", () => {
	const faults = faultsOf({
		receiver: { apertureDiameterM: 2.5 },
		coil: { lengthM: 400 },
		tank: { volumeL: 150, reliefPressureKpa: 600 },
	});
	const refused = () => refuseFaults(faults);
	expect(refused).toThrow(ProblemError);
	expect(refused).toThrow(expect.objectContaining({ kind: "impossible" }));
	expect(faults.map(({ pointer }) => pointer)).toEqual([
		"/receiver/apertureDiameterM",
		"/coil/lengthM",
		"/tank/reliefPressureKpa",
	]);
});
