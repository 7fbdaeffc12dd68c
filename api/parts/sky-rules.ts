import { contradictory, type Rule, said } from "../validation/rule.ts";
import { isoText } from "../wire/time-zone.ts";
import type { DayRule } from "./day-request.ts";
import { runOf } from "./run.ts";
import type { Sky } from "./sky.ts";
import { rowTimes } from "./weather.ts";

type WithSky = { readonly sky: Sky };

export const ambientInOrder: Rule<WithSky> = ({ sky }) =>
	sky.kind === "clear" && sky.ambientMinC > sky.ambientMaxC
		? [
				contradictory(
					"/sky/ambientMinC",
					`the day's lowest of ${said(sky.ambientMinC)} °C is above its highest of ${said(sky.ambientMaxC)} °C`,
				),
			]
		: [];

const COLUMNS = [
	"beamIrradianceWPerM2",
	"diffuseIrradianceWPerM2",
	"globalIrradianceWPerM2",
	"ambientC",
	"windMPerS",
] as const;

export const columnsOfOneLength: Rule<WithSky> = ({ sky }) => {
	if (sky.kind !== "measured") return [];
	return COLUMNS.flatMap((name) => {
		const column = sky[name];
		return Array.isArray(column) && column.length !== sky.time.length
			? [contradictory(`/sky/${name}`, `${name} has ${column.length} rows, time has ${sky.time.length}`)]
			: [];
	});
};

/** Beam can be had from what was measured. */
export const beamMeasured: Rule<WithSky> = ({ sky }) =>
	sky.kind === "measured" && !sky.beamIrradianceWPerM2 && !sky.globalIrradianceWPerM2
		? [
				contradictory(
					"/sky",
					"a dish lives on beam: give beamIrradianceWPerM2, or globalIrradianceWPerM2 to split it from",
				),
			]
		: [];

export const timesRise: Rule<WithSky> = ({ sky }) => {
	if (sky.kind !== "measured") return [];
	const times = rowTimes(sky);
	const back = times.findIndex((time, i) => i > 0 && time <= times[i - 1]!);
	return back < 0
		? []
		: [
				contradictory(
					`/sky/time/${back}`,
					`row ${back} is not later than the row before it; times must rise`,
				),
			];
};

/** Measured rows reach from the start of the run to its end. */
export const rowsCoverRun: DayRule = (request) => {
	const { sky } = request;
	if (sky.kind !== "measured") return [];
	const { start, end, zone } = runOf(request, (_, value) => value);
	const times = rowTimes(sky);
	const [first, last] = [times[0]!, times.at(-1)!];
	return end > start && (first > start || last < end)
		? [
				contradictory(
					"/sky/time",
					`the rows reach from ${isoText(first, zone)} to ${isoText(last, zone)}, the run from ${isoText(start, zone)} to ${isoText(end, zone)}; give rows for all of it, or startTime and endTime within the rows`,
				),
			]
		: [];
};
