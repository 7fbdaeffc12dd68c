import { dayAxis } from "../../../sdk/chart/day-axis.ts";
import { drawDay, marksWithin } from "../../../sdk/chart/day-chart.ts";
import { svgText } from "../../../sdk/chart/svg.ts";
import { clockTime } from "../../../sdk/chart/warm-up-chart.ts";
import { belowTitle, clockOfHour, PAPER, withTitle } from "../../parts/chart.ts";
import { seriesTable } from "../../parts/series-table.ts";
import type { SunDayResponse } from "./response.ts";

const whole = (value: number) => String(Math.round(value));

/** Forms of the response besides JSON. */
export const sunDayForms = {
	chart: (answer: SunDayResponse) => svgText(withTitle(chart(answer))),
	table: ({ series }: SunDayResponse) => seriesTable(series),
};

function chart(answer: SunDayResponse) {
	const { series, date, plane, daylight } = answer;
	const {
		beamIrradianceWPerM2: beam,
		planeIrradianceWPerM2: onPlane,
		diffuseIrradianceWPerM2: diffuse,
	} = series;
	return drawDay(
		{
			title: `Clear sky on ${date}${ALL_DAY[daylight] && `. ${ALL_DAY[daylight]}`}`,
			description: descriptionOf(answer),
			axis: dayAxis(series.time, marksWithin(PAPER.width, clockOfHour(22))),
			left: { unit: "W/m²", low: 0, high: Math.max(...beam, ...onPlane, 1000) },
			curves: [
				{ role: "sun", label: "beam on a tracking dish", values: beam, filled: true, side: "left" },
				{
					role: "plane",
					label: `total on a plane tilted ${whole(plane.tiltDeg)}°`,
					values: onPlane,
					filled: false,
					side: "left",
				},
				{ role: "sky", label: "diffuse", values: diffuse, filled: false, side: "left" },
			],
			...{ levels: [], moments: [], number: whole, clock: clockOfHour },
		},
		belowTitle(PAPER),
	);
}

const ALL_DAY = {
	polarDay: "The sun stays above the horizon all day.",
	polarNight: "The sun stays below the horizon all day.",
	riseAndSet: "",
};

function descriptionOf({
	daylight,
	sunrise,
	sunset,
	noon,
	noonAltitudeDeg,
	daily,
	timeZone,
}: SunDayResponse): string {
	const rises =
		sunrise !== undefined && sunset !== undefined
			? `The sun rises at ${clockTime(sunrise)} and sets at ${clockTime(sunset)}.`
			: ALL_DAY[daylight];
	return [
		rises,
		`At solar noon, ${clockTime(noon)}, its altitude is ${noonAltitudeDeg.toFixed(1)}°.`,
		`Each square metre receives ${daily.trackedBeamKwhPerM2.toFixed(1)} kWh of beam when tracked, ${daily.planeTotalKwhPerM2.toFixed(1)} kWh of all light on the fixed plane.`,
		`Times are local (${timeZone}).`,
	].join(" ");
}
