import { fluidById } from "../../../src/index.ts";
import { windingFaults } from "../../parts/coil-rules.ts";
import { dishFocus, dishOffset, dishSize } from "../../parts/dish-rules.ts";
import { spreadsOfRange } from "../../parts/range-rules.ts";
import { hollowBehindOpening, receiverWithinDish, tubeWound } from "../../parts/receiver-rules.ts";
import { ambientInOrder, beamMeasured, columnsOfOneLength, timesRise } from "../../parts/sky-rules.ts";
import { receiverTubeWall, tubeWall } from "../../parts/tube-rules.ts";
import { rowTimes } from "../../parts/weather.ts";
import {
	contradictory,
	outOfRange,
	type Rule,
	type RuleFault,
	refuseFaults,
	said,
} from "../../validation/rule.ts";
import { isoText } from "../../wire/time-zone.ts";
import { fromSi } from "../../wire/units.ts";
import { spanOf } from "./plan.ts";
import type { InstantRequest } from "./request.ts";
import { coilRoom, coreVessel } from "./vessel.ts";

type InstantRule = Rule<InstantRequest>;

const asIs = <T>(_pointer: string, value: T, _grounds: unknown): T => value;

const wantedAboveMains: InstantRule = ({ wantedTemperatureC, mainsTemperatureC }) =>
	wantedTemperatureC > mainsTemperatureC
		? []
		: [
				contradictory(
					"/wantedTemperatureC",
					`${said(wantedTemperatureC)} °C at the tap is not above the mains' ${said(mainsTemperatureC)} °C`,
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
const windowOfDay: InstantRule = (request) => {
	if (request.date === undefined) return [];
	const { zone, from, to } = spanOf(request, request.date, asIs);
	const shown = (time: number) => isoText(time, zone);
	if (to <= from)
		return [
			contradictory(
				request.endTime === undefined ? "/startTime" : "/endTime",
				`the window would end at ${shown(to)}, which is not after its start at ${shown(from)}`,
			),
		];
	if (request.sky?.kind !== "measured") return [];
	const times = rowTimes(request.sky);
	const [first, last] = [times[0]!, times.at(-1)!];
	return first > from || last < to
		? [
				contradictory(
					"/sky/time",
					`the rows reach from ${shown(first)} to ${shown(last)}, the window from ${shown(from)} to ${shown(to)}`,
				),
			]
		: [];
};

const vesselTemperatures: InstantRule = ({ vessel }) => {
	if (!vessel) return [];
	const { limit } = coreVessel(vessel, asIs);
	const limitC = fromSi.celsius(limit);
	const knownC = fromSi.celsius(fluidById(vessel.fluid).range[1]);
	const faults: RuleFault[] = [];
	if (limitC > knownC)
		faults.push(
			outOfRange(
				"/vessel/oilLimitC",
				`${said(limitC)} °C is beyond what is known of this oil, which ends at ${said(knownC)} °C`,
			),
		);
	if (vessel.chargeTemperatureC >= limitC)
		faults.push(
			contradictory(
				"/vessel/chargeTemperatureC",
				`a charge at ${said(vessel.chargeTemperatureC)} °C is not below the oil's limit of ${said(limitC)} °C`,
			),
		);
	if (vessel.startTemperatureC >= vessel.chargeTemperatureC)
		faults.push(
			contradictory(
				"/vessel/startTemperatureC",
				`a start at ${said(vessel.startTemperatureC)} °C is not below the charge of ${said(vessel.chargeTemperatureC)} °C`,
			),
		);
	return faults;
};

const wantedBelowOilLimit: InstantRule = ({ vessel, wantedTemperatureC }) => {
	if (!vessel) return [];
	const limitC = fromSi.celsius(coreVessel(vessel, asIs).limit);
	return wantedTemperatureC < limitC
		? []
		: [
				contradictory(
					"/wantedTemperatureC",
					`oil held below ${said(limitC)} °C does not bring water to ${said(wantedTemperatureC)} °C`,
				),
			];
};

const coilInVessel: InstantRule = ({ vessel }) => {
	if (!vessel) return [];
	const { coil } = vessel;
	if (coil.outerDiameterMm <= coil.innerDiameterMm)
		return [contradictory("/vessel/coil/outerDiameterMm", "the coil's tube is no wider outside than inside")];
	if (coil.bottomHeight >= coil.topHeight)
		return [contradictory("/vessel/coil/topHeight", "the coil's top is not above its bottom")];
	const inside = coreVessel(vessel, asIs);
	return windingFaults("/vessel/coil", "vessel", coil, inside.coil, coilRoom(inside));
};

const skySound: InstantRule = ({ sky }) =>
	sky ? [ambientInOrder, columnsOfOneLength, beamMeasured, timesRise].flatMap((rule) => rule({ sky })) : [];

const coilOneLength: InstantRule = ({ vessel }) =>
	vessel?.coil.lengthM !== undefined && vessel.coil.turns !== undefined
		? ["lengthM", "turns"].map((name) =>
				contradictory(`/vessel/coil/${name}`, "lengthM and turns say the same thing: give only one"),
			)
		: [];

const RULES: readonly InstantRule[] = [
	wantedAboveMains,
	dateOfDay,
	skySound,
	windowOfDay,
	dishSize,
	dishFocus,
	dishOffset,
	receiverWithinDish,
	hollowBehindOpening,
	tubeWound,
	receiverTubeWall,
	vesselOfArrangement,
	pipeOfArrangement,
	outletWall,
	vesselTemperatures,
	wantedBelowOilLimit,
	coilOneLength,
	coilInVessel,
	spreadsOfRange,
];

/** Ends a request that keeps the contract but contradicts itself or asks for the impossible. */
export function requireSoundInstant(request: InstantRequest): void {
	refuseFaults(RULES.flatMap((rule) => rule(request)));
}
