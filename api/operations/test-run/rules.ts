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

/** Every column has a cell for each row. */
const columnsOfOneLength: RunRule = ({ run }) => {
	const rows = run.time.length;
	const fault = (pointer: string, name: string, length: number) =>
		contradictory(pointer, `${name} has ${length} rows, time has ${rows}`);
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

/** The rows that no plant can have produced, each by its pointer. */
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
	return rowFaults(columns, boiling).map((fault) => spoken(run, fault));
};

function spoken(run: TestRunRequest["run"], { kind, row, thermometer, value, limit }: RowFault): RuleFault {
	const pointer =
		thermometer === undefined ? `/run/time/${row}` : `${thermometerPointer(run, thermometer)}/${row}`;
	const celsius = (kelvin: number) => `${fourDigits(fromSi.celsius(kelvin))} °C`;
	const minutes = (seconds: number) => `${fourDigits(fromSi.minutes(seconds))} min`;
	switch (kind) {
		case "backwards":
			return contradictory(pointer, `row ${row} is not later than the row before it; times must rise`);
		case "gap":
			return outOfRange(
				pointer,
				`row ${row} comes ${minutes(value)} after the row before it, more than the ${minutes(limit)} that pass for no gap in this run; give the rows between, or send the parts as runs of their own`,
			);
		case "ice":
			return impossible(pointer, `row ${row} has water at ${celsius(value)}, which is ice`);
		case "boils":
			return impossible(
				pointer,
				`row ${row} has water at ${celsius(value)}, which boils at ${celsius(limit)} in this tank`,
			);
		case "spike":
			return impossible(
				pointer,
				`row ${row} jumps to ${celsius(value)} from ${celsius(limit)} and back; a tank of water cannot: mend or leave out the row`,
			);
	}
}

const HOUR = 3600; // [s]

/** A run of many days would be marched many times over. */
const shortEnough: RunRule = ({ run }) => {
	const times = runTimes(run);
	const last = times.length - 1;
	const hours = (times[last]! - times[0]!) / HOUR;
	const most = LIMITS.testRunTime.value;
	return hours > most
		? [tooLarge(`/run/time/${last}`, `the run lasts ${fourDigits(hours)} h; send at most ${most} h at once`)]
		: [];
};

const startFromRun: RunRule = ({ tank }) =>
	tank.startTemperatureC === undefined
		? []
		: [
				contradictory(
					"/tank/startTemperatureC",
					"the run's first row tells how warm the tank starts; leave this out",
				),
			];

/** The aperture of a dish reshaped through the year depends on the hemisphere. */
const siteOfOffsetPolar: RunRule = ({ dish, site }) =>
	dish?.kind === "offsetPolar" && site === undefined
		? [
				contradictory(
					"/dish/kind",
					"an off-axis dish on a polar axis changes its aperture with season and hemisphere: give a site",
				),
			]
		: [];

/** A plant that is to predict the run keeps to what a warm-up's must; of another, only dish and tank are looked at. */
const plantSound: RunRule = ({ dish, tank }, designs) => {
	const { plant } = designs;
	if (plant) return DAY_RULES.flatMap((rule) => rule(plant.request, plant.designs));
	return [
		...(dish ? [dishSize, dishFocus, dishOffset].flatMap((rule) => rule({ dish }, designs)) : []),
		...[fillWithinVolume, tankDimensions, reliefOfClosedTank].flatMap((rule) => rule({ tank }, designs)),
	];
};

/** What a measured run and its plant must keep to. */
export const RUN_RULES: readonly RunRule[] = [
	columnsOfOneLength,
	soundRows,
	shortEnough,
	startFromRun,
	siteOfOffsetPolar,
	plantSound,
];
