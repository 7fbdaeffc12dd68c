import { clockMinutes, dayAxis } from "./day-axis.ts";
import { type DayChart, drawDay, marksWithin, type Size } from "./day-chart.ts";
import type { Shape } from "./svg.ts";

/** The fields of a warm-up's answer that the chart shows. */
export interface WarmUpShown {
	readonly targetTime?: string | undefined;
	readonly boilingPointC: number;
	readonly series: {
		readonly time: readonly string[];
		readonly beamIrradianceWPerM2: readonly number[];
		readonly tankMeanC: readonly number[];
		readonly tankTopC: readonly number[];
	};
}

/** The chart's words and units, in the reader's language. */
export interface WarmUpWords {
	readonly title: string;
	readonly description: string;
	readonly beam: string;
	readonly mean: string;
	readonly top: string;
	readonly target: string;
	readonly boiling: string;
	readonly reached: string;
	readonly temperature: { readonly unit: string; readonly from: (celsius: number) => number };
	readonly irradiance: { readonly unit: string; readonly from: (wPerM2: number) => number };
	readonly number: DayChart["number"];
	readonly clock: DayChart["clock"];
}

/** Chart of a tank's day: its temperature with sunlight, target and boiling point. */
export function warmUpChart(answer: WarmUpShown, targetC: number, words: WarmUpWords, size: Size): Shape {
	const { series, targetTime, boilingPointC } = answer;
	const axis = dayAxis(series.time, marksWithin(size.width, words.clock(22)));
	const { temperature, irradiance } = words;
	const [mean, top] = [series.tankMeanC.map(temperature.from), series.tankTopC.map(temperature.from)];
	const beam = series.beamIrradianceWPerM2.map(irradiance.from);
	const [target, boil] = [temperature.from(targetC), temperature.from(boilingPointC)];
	const hottest = Math.max(...top, target);
	const nearBoil = hottest > temperature.from(boilingPointC - 15);
	const from = Math.min(temperature.from(0), ...mean);
	return drawDay(
		{
			...{
				title: words.title,
				description: words.description,
				axis,
				number: words.number,
				clock: words.clock,
			},
			left: { unit: temperature.unit, low: from, high: Math.max(hottest, nearBoil ? boil : hottest) },
			right: { unit: irradiance.unit, low: 0, high: Math.max(...beam, irradiance.from(1000)) },
			curves: [
				{ role: "sun", label: words.beam, values: beam, filled: true, side: "right" },
				{ role: "top", label: words.top, values: top, filled: false, side: "left" },
				{ role: "water", label: words.mean, values: mean, filled: false, side: "left" },
			],
			levels: [
				{ value: target, label: words.target },
				...(nearBoil && boil - target > (hottest - from) / 12 ? [{ value: boil, label: words.boiling }] : []),
			],
			moments:
				targetTime === undefined
					? []
					: [{ at: since(series.time[0]!, targetTime), value: target, label: words.reached }],
		},
		size,
	);
}

const since = (start: string, time: string) => (Date.parse(time) - Date.parse(start)) / 60_000;

/** A local time as a clock shows it, such as 13:57. */
export function clockTime(time: string): string {
	const minutes = Math.floor(clockMinutes(time));
	return `${String(Math.floor(minutes / 60)).padStart(2, "0")}:${String(minutes % 60).padStart(2, "0")}`;
}
