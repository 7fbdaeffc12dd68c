import { dishFocus, dishOffset, dishSize } from "../../parts/dish.ts";
import { spreadsOfRange } from "../../parts/range.ts";
import {
	openingWithinCavity,
	receiverTubeWall,
	receiverWithinDish,
	tubeWindable,
} from "../../parts/receiver.ts";
import { ambientInOrder, beamMeasured, columnsOfOneLength, rowTimes, timesRise } from "../../parts/sky.ts";
import { tubeWall } from "../../parts/tube.ts";
import { contradictory, fourDigits, type Rule } from "../../validation/rule.ts";
import { isoText } from "../../wire/time-zone.ts";
import type { InstantDesigns } from "./plan.ts";
import type { InstantRequest } from "./request.ts";
import { coilInVessel, vesselCoilLength, vesselTemperatures, wantedBelowOilLimit } from "./vessel.ts";

type InstantRule = Rule<InstantRequest, InstantDesigns>;

const wantedAboveMains: InstantRule = ({ wantedTemperatureC, mainsTemperatureC }) =>
	wantedTemperatureC > mainsTemperatureC
		? []
		: [
				contradictory(
					"/wantedTemperatureC",
					`${fourDigits(wantedTemperatureC)} °C at the tap is not above the mains' ${fourDigits(mainsTemperatureC)} °C`,
				),
			];

/** Window and sky belong to a date. */
const dateOfDay: InstantRule = (request) =>
	request.date === undefined
		? (["startTime", "endTime", "sky"] as const)
				.filter((name) => request[name] !== undefined)
				.map((name) => contradictory(`/${name}`, `${name} belongs to a day: give a date with it`))
		: [];

const vesselOfArrangement: InstantRule = ({ arrangement, vessel }) =>
	arrangement === "direct" && vessel
		? [
				contradictory(
					"/vessel",
					"water straight through the focus has no vessel: leave it out, or ask for `vessel`",
				),
			]
		: [];

const pipeOfArrangement: InstantRule = ({ arrangement, outletPipe }) =>
	arrangement === "vessel" && outletPipe
		? [
				contradictory(
					"/outletPipe",
					"a vessel is reckoned to stand at the tap: leave the pipe out, or ask for `direct`",
				),
			]
		: [];

const outletWall: InstantRule = ({ outletPipe }) => (outletPipe ? tubeWall("/outletPipe", outletPipe) : []);

/** The window ends after it starts, and measured rows cover it. */
const windowOfDay: InstantRule = (request, { window }) => {
	if (!window) return [];
	const { timeZone, start, end } = window;
	const shown = (time: number) => isoText(time, timeZone);
	if (end <= start)
		return [
			contradictory(
				request.endTime === undefined ? "/startTime" : "/endTime",
				`the window would end at ${shown(end)}, which is not after its start at ${shown(start)}`,
			),
		];
	if (request.sky?.kind !== "measured") return [];
	const times = rowTimes(request.sky);
	const [first, last] = [times[0]!, times.at(-1)!];
	return first > start || last < end
		? [
				contradictory(
					"/sky/time",
					`the rows reach from ${shown(first)} to ${shown(last)}, the window from ${shown(start)} to ${shown(end)}`,
				),
			]
		: [];
};

const skySound: InstantRule = ({ sky }) =>
	sky
		? [ambientInOrder, columnsOfOneLength, beamMeasured, timesRise].flatMap((rule) => rule({ sky }, {}))
		: [];

/** What a request for an instant heater must keep to. */
export const INSTANT_RULES: readonly InstantRule[] = [
	wantedAboveMains,
	dateOfDay,
	skySound,
	windowOfDay,
	dishSize,
	dishFocus,
	dishOffset,
	receiverWithinDish,
	openingWithinCavity,
	tubeWindable,
	receiverTubeWall,
	vesselOfArrangement,
	pipeOfArrangement,
	outletWall,
	vesselTemperatures,
	wantedBelowOilLimit,
	vesselCoilLength,
	coilInVessel,
	spreadsOfRange,
];
