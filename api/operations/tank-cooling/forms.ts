import type { z } from "@hono/zod-openapi";
import type { DayAxis } from "../../../sdk/chart/day-axis.ts";
import { type DayChart, drawDay } from "../../../sdk/chart/day-chart.ts";
import { svgText } from "../../../sdk/chart/svg.ts";
import { belowTitle, PAPER, withTitle } from "../../parts/chart.ts";
import { seriesTable } from "../../parts/series-table.ts";
import type { TankCoolingRequest } from "./request.ts";
import type { TankCoolingResponse } from "./response.ts";

type Answer = z.output<typeof TankCoolingResponse>;

const LEAST_GAP = 0.07; // [-] of the height, so that the labels of two dashed lines don't touch
const ONE_TEMPERATURE = 0.5; // [K] within which top and bottom are one line
const MARK_STEPS = [1, 2, 3, 6, 12, 24]; // [h] between marks
const MAX_MARKS = 12;

const whole = (value: number) => String(Math.round(value)).replace("-", "−");
const tenth = (value: number) => String(Math.round(value * 10) / 10).replace("-", "−");

/** Forms of the response besides JSON. */
export const tankCoolingForms = {
	chart: (answer: Answer, request: TankCoolingRequest) => svgText(withTitle(chart(answer, request))),
	table: ({ series }: Answer) => seriesTable(series),
};

function chart(answer: Answer, request: TankCoolingRequest) {
	const { tankMeanC: mean, tankTopC: top, tankBottomC: bottom } = answer.series;
	const layered = top.some((t, i) => t - bottom[i]! > ONE_TEMPERATURE);
	const shown = [...mean, ...(layered ? [...top, ...bottom] : [])];
	const left = { unit: "°C", low: Math.min(...shown), high: Math.max(...shown) };
	const levels = levelsOf(answer, left);
	return drawDay(
		{
			title: `Cooling of a tank over ${tenth(request.durationH)} hours`,
			description: descriptionOf(answer, request),
			axis: axisOf(answer),
			left: { ...left, low: Math.min(left.low, ...levels.map(({ value }) => value)) },
			curves: [
				...(layered ? [{ ...AS_LINE, role: "top" as const, label: "top", values: top }] : []),
				{ ...AS_LINE, role: "water", label: "tank, mean", values: mean },
				...(layered ? [{ ...AS_LINE, role: "sky" as const, label: "bottom", values: bottom }] : []),
			],
			levels,
			moments: momentsOf(answer),
			...{ number: whole, clock: (hour: number) => `${hour} h` },
		},
		belowTitle(PAPER),
	);
}

const AS_LINE = { filled: false, side: "left" } as const;

/** Hours since the start along the axis. */
function axisOf({ series }: Answer): DayAxis {
	const hours = series.elapsedMin.at(-1)! / 60;
	const every = MARK_STEPS.find((step) => hours / step <= MAX_MARKS) ?? MARK_STEPS.at(-1)!;
	const marks = Array.from({ length: Math.floor(hours / every + 1e-9) + 1 }, (_, i) => i * every);
	return { minutes: series.elapsedMin, hours: marks.map((hour) => ({ at: hour * 60, hour })) };
}

/** The requested temperatures within the drawing, far enough apart for their labels. */
function levelsOf({ hoursUntilC }: Answer, { low, high }: DayChart["left"]): DayChart["levels"] {
	const shown = hoursUntilC
		.filter(({ hours }) => hours !== 0) // the description names one that the tank starts below
		.map(({ temperatureC }) => temperatureC)
		.sort((a, b) => b - a);
	const found: number[] = [];
	for (const limit of shown) {
		const last = found.at(-1);
		const apart = last === undefined || last - limit > LEAST_GAP * (high - low);
		if (apart && limit <= high && limit >= low - (high - low) / 2) found.push(limit);
	}
	return found.map((value) => ({ value, label: `${tenth(value)} °C` }));
}

/** The last of them that the tank falls below within the requested duration. */
function momentsOf({ hoursUntilC }: Answer): DayChart["moments"] {
	const reached = hoursUntilC
		.filter(({ hours }) => hours !== undefined && hours > 0)
		.sort((a, b) => b.hours! - a.hours!);
	return reached.slice(0, 1).map(({ hours, temperatureC }) => ({
		at: hours! * 60,
		value: temperatureC,
		label: `below ${tenth(temperatureC)} °C after ${tenth(hours!)} h`,
	}));
}

const NOT_YET = { later: "not in this period", never: "never" } as const;

function descriptionOf(
	{ hoursUntilC, surroundingsC, series, lossKwh }: Answer,
	{ untilAt }: TankCoolingRequest,
): string {
	const falls = hoursUntilC.map(({ temperatureC, outcome, hours }) => {
		const when = outcome === "reached" ? `after ${tenth(hours!)} h` : NOT_YET[outcome];
		return `below ${tenth(temperatureC)} °C ${when}`;
	});
	return [
		`The mean temperature of the tank goes from ${whole(series.tankMeanC[0]!)} to ${whole(series.tankMeanC.at(-1)!)} °C; its surroundings are at ${whole(surroundingsC)} °C.`,
		`The ${untilAt} temperature falls ${falls.join(", ")}.`,
		`The tank loses ${lossKwh.toFixed(2)} kWh.`,
	].join(" ");
}
