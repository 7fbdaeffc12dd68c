import { type RowFault, rowFaults, tankBoilingPoint } from "../../../src/index.ts";
import { LIMITS } from "../../config/limits.ts";
import { DAY_RULES } from "../../parts/day-rules.ts";
import { dishFocus, dishOffset, dishSize } from "../../parts/dish.ts";
import { fillWithinVolume, reliefOfClosedTank, tankDimensions } from "../../parts/tank.ts";
import {
	contradictory,
	fourDigits,
	impossible,
	outOfRange,
	type Rule,
	type RuleFault,
	tooLarge,
} from "../../validation/rule.ts";
import { fromSi, toSi } from "../../wire/units.ts";
import { type RunDesigns, runTimes, thermometersOf } from "./plan.ts";
import type { TestRunRequest } from "./request.ts";

type RunRule = Rule<TestRunRequest, RunDesigns>;

const COLUMNS = [
	"beamIrradianceWPerM2",
	"ambientC",
	"windMPerS",
	"oilInC",
	"oilOutC",
	"pumpOn",
] as const satisfies readonly (keyof TestRunRequest["run"])[];

/** Every column has one value per row. */
const columnsOfOneLength: RunRule = ({ run }) => {
	const rows = run.time.length;
	const fault = (pointer: string, name: string, length: number) =>
		contradictory(pointer, `${name} has ${length} rows but time has ${rows}; send one value per row`);
	const thermometers = thermometersOf(run).flatMap((column, i) =>
		column.length === rows ? [] : [fault(thermometerPointer(run, i), "tankTemperatureC", column.length)],
	);
	const others = COLUMNS.flatMap((name) => {
		const column = run[name];
		return Array.isArray(column) && column.length !== rows
			? [fault(`/run/${name}`, name, column.length)]
			: [];
	});
	return [...thermometers, ...others];
};

function thermometerPointer(run: TestRunRequest["run"], thermometer: number): string {
	const single = typeof run.tankTemperatureC[0] === "number";
	return single ? "/run/tankTemperatureC" : `/run/tankTemperatureC/${thermometer}`;
}

/** Rows that no plant can produce, each with its pointer. */
const soundRows: RunRule = (request, designs) => {
	const { run, site } = request;
	if (columnsOfOneLength(request, designs).length > 0) return [];
	const boiling = tankBoilingPoint(designs.tank, site?.elevationM ?? 0);
	const columns = {
		time: runTimes(run),
		thermometers: thermometersOf(run).map((column) => column.map(toSi.celsius)),
		beam: run.beamIrradianceWPerM2,
		pumpOn: run.pumpOn,
	};
	return rowFaults(columns, boiling).map((fault) => rowFault(run, fault));
};

function rowFault(run: TestRunRequest["run"], { kind, row, thermometer, value, limit }: RowFault): RuleFault {
	const pointer =
		thermometer === undefined ? `/run/time/${row}` : `${thermometerPointer(run, thermometer)}/${row}`;
	const celsius = (kelvin: number) => `${fourDigits(fromSi.celsius(kelvin))} °C`;
	const minutes = (seconds: number) => `${fourDigits(fromSi.minutes(seconds))} min`;
	switch (kind) {
		case "backwards":
			return contradictory(
				pointer,
				`row ${row} is not later than the previous row; send times in rising order`,
			);
		case "gap":
			return outOfRange(
				pointer,
				`row ${row} is ${minutes(value)} after the previous row, and the longest gap allowed in this run is ${minutes(limit)}; send the rows between, or send each part as its own run`,
			);
		case "ice":
			return impossible(
				pointer,
				`row ${row} has water at ${celsius(value)}, which is frozen; correct or omit the row`,
			);
		case "boils":
			return impossible(
				pointer,
				`row ${row} has water at ${celsius(value)}, above its boiling point of ${celsius(limit)} in this tank; correct or omit the row`,
			);
		case "spike":
			return impossible(
				pointer,
				`row ${row} jumps from ${celsius(limit)} to ${celsius(value)} and back, which a tank of water cannot do; correct or omit the row`,
			);
	}
}

const HOUR = 3600; // [s]

/** A run of many days would be simulated many times over. */
const shortEnough: RunRule = ({ run }) => {
	const times = runTimes(run);
	const last = times.length - 1;
	const hours = (times[last]! - times[0]!) / HOUR;
	const most = LIMITS.testRunTime.value;
	return hours > most
		? [
				tooLarge(
					`/run/time/${last}`,
					`the run lasts ${fourDigits(hours)} h; send at most ${most} h per request`,
				),
			]
		: [];
};

const startFromRun: RunRule = ({ tank }) =>
	tank.startTemperatureC === undefined
		? []
		: [
				contradictory(
					"/tank/startTemperatureC",
					"the run's first row states the start temperature of the tank; omit startTemperatureC",
				),
			];

/** The aperture of a dish that is reshaped through the year depends on the hemisphere. */
const siteOfOffsetPolar: RunRule = ({ dish, site }) =>
	dish?.kind === "offsetPolar" && site === undefined
		? [
				contradictory(
					"/dish/kind",
					"the aperture of an off-axis dish on a polar axis depends on season and hemisphere; send site",
				),
			]
		: [];

/** A plant used for a prediction obeys the rules of a warm-up; otherwise only dish and tank are checked. */
const plantSound: RunRule = ({ dish, tank }, designs) => {
	const { plant } = designs;
	if (plant) return DAY_RULES.flatMap((rule) => rule(plant.request, plant.designs));
	return [
		...(dish ? [dishSize, dishFocus, dishOffset].flatMap((rule) => rule({ dish }, designs)) : []),
		...[fillWithinVolume, tankDimensions, reliefOfClosedTank].flatMap((rule) => rule({ tank }, designs)),
	];
};

/** Rules for a measured run and its plant. */
export const RUN_RULES: readonly RunRule[] = [
	columnsOfOneLength,
	soundRows,
	shortEnough,
	startFromRun,
	siteOfOffsetPolar,
	plantSound,
];
