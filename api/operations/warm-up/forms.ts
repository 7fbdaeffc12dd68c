import type { z } from "@hono/zod-openapi";
import { svgText } from "../../../sdk/chart/svg.ts";
import { clockTime, warmUpChart } from "../../../sdk/chart/warm-up-chart.ts";
import { clockOfHour, PAPER, titled, under } from "../../parts/chart.ts";
import type { WarmUpRequest } from "../../parts/day-request.ts";
import { seriesTable } from "../../parts/series-table.ts";
import type { WarmUpResponse } from "./response.ts";

type Answer = z.output<typeof WarmUpResponse>;

const whole = (value: number) => String(Math.round(value));

/** Chart and table of a warm-up. */
export const warmUpForms = {
	chart: (answer: Answer, { targetTemperatureC, date }: WarmUpRequest) =>
		svgText(
			titled(
				warmUpChart(
					answer,
					targetTemperatureC,
					{
						title: `The tank on ${date}: ${answer.targetTime === undefined ? "target not reached" : `${whole(targetTemperatureC)} °C at ${clockTime(answer.targetTime)}`}`,
						description: described(answer, targetTemperatureC),
						...{ beam: "sun's beam", mean: "tank, mean", top: "tank, top" },
						...{
							target: `target ${whole(targetTemperatureC)} °C`,
							boiling: `boils at ${whole(answer.boilingPointC)} °C`,
						},
						reached: answer.targetTime === undefined ? "" : `hot at ${clockTime(answer.targetTime)}`,
						temperature: { unit: "°C", from: (celsius) => celsius },
						irradiance: { unit: "W/m²", from: (irradiance) => irradiance },
						...{ number: whole, clock: clockOfHour },
					},
					under(PAPER),
				),
			),
		),
	table: ({ series }: Answer) => seriesTable(series),
};

function described({ series, targetTime, timeZone, reason }: Answer, targetC: number): string {
	const at = (i: number) => `${whole(series.tankMeanC.at(i)!)} °C at ${clockTime(series.time.at(i)!)}`;
	const peak = series.beamIrradianceWPerM2.reduce((best, beam, i, all) => (beam > all[best]! ? i : best), 0);
	const reached =
		targetTime === undefined
			? `It does not reach the target of ${whole(targetC)} °C. ${reason?.message ?? ""}`
			: `It reaches the target of ${whole(targetC)} °C at ${clockTime(targetTime)}.`;
	return [
		`The tank's mean temperature changes from ${at(0)} to ${at(-1)}.`,
		reached,
		`The sun's beam peaks at ${whole(series.beamIrradianceWPerM2[peak]!)} W/m² at ${clockTime(series.time[peak]!)}.`,
		`Times are local (${timeZone}).`,
	].join(" ");
}
