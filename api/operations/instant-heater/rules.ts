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
					`${fourDigits(wantedTemperatureC)} °C at the tap is not above the mains temperature of ${fourDigits(mainsTemperatureC)} °C; send a higher wantedTemperatureC`,
				),
			];

/** Window and sky require a date. */
const dateOfDay: InstantRule = (request) =>
	request.date === undefined
		? (["startTime", "endTime", "sky"] as const)
				.filter((name) => request[name] !== undefined)
				.map((name) => contradictory(`/${name}`, `${name} requires a date; send date, or omit ${name}`))
		: [];

const vesselOfArrangement: InstantRule = ({ arrangement, vessel }) =>
	arrangement === "direct" && vessel
		? [
				contradictory(
					"/vessel",
					"the arrangement `direct` has no vessel; omit vessel, or send the arrangement `vessel`",
				),
			]
		: [];

const pipeOfArrangement: InstantRule = ({ arrangement, outletPipe }) =>
	arrangement === "vessel" && outletPipe
		? [
				contradictory(
					"/outletPipe",
					"a vessel is at the tap, without an outlet pipe; omit outletPipe, or send the arrangement `direct`",
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
				`the window ends at ${shown(end)}, not after its start at ${shown(start)}`,
			),
		];
	if (request.sky?.kind !== "measured") return [];
	const times = rowTimes(request.sky);
	const [first, last] = [times[0]!, times.at(-1)!];
	return first > start || last < end
		? [
				contradictory(
					"/sky/time",
					`the measured rows run from ${shown(first)} to ${shown(last)} and do not cover the window from ${shown(start)} to ${shown(end)}`,
				),
			]
		: [];
};

const skySound: InstantRule = ({ sky }) =>
	sky
		? [ambientInOrder, columnsOfOneLength, beamMeasured, timesRise].flatMap((rule) => rule({ sky }, {}))
		: [];

/** Rules for a request about an instant heater. */
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
