import { scaleLinear } from "d3-scale";
import { INK, LETTER, type Size, sheet } from "./day-chart.ts";
import { type Shape, shape } from "./svg.ts";

/** One item of a ranking. */
export interface Bar {
	readonly label: string;
	readonly value: number | undefined; // undefined draws no bar
	readonly says: string; // beside the bar
	readonly whisker?: { readonly low: number | undefined; readonly high: number | undefined }; // undefined where an end is open
}

/** The data of a ranking chart. */
export interface BarChart {
	readonly title: string;
	readonly description: string;
	readonly heading: string; // what the bars measure, with its unit
	readonly bars: readonly Bar[]; // the first on top
	readonly notes: readonly string[]; // under the bars, a line each
	readonly number: (value: number) => string;
}

const NARROW = 480; // [px] below this width a label is above its bar instead of before it
const LABEL = 152; // [px] of the column of labels
const THICK = 14; // [px] of a bar
const CAP = 4; // [px] half the height of a whisker's end
const LINE = 18; // [px] of a line of notes
const HEAD = 40; // [px] above the first bar

/** The edges of the plot, and its scale. */
interface Frame {
	readonly width: number;
	readonly from: number;
	readonly to: number;
	readonly bottom: number;
	readonly pitch: number; // from one bar to the next
	readonly drop: number; // of a bar's middle within its row
	readonly x: (value: number) => number;
	readonly ticks: readonly number[];
}

function framed({ bars }: BarChart, width: number): Frame {
	const stacked = width < NARROW;
	const longest = Math.max(0, ...bars.map(({ says }) => says.length)) * LETTER;
	const [from, to] = [stacked ? 12 : LABEL + 12, width - 14 - longest - 8];
	const reach = bars.flatMap(({ value, whisker }) => [value ?? 0, whisker?.low ?? 0, whisker?.high ?? 0]);
	const ends = [Math.min(0, ...reach), Math.max(0, ...reach)];
	const scale = scaleLinear(ends[0] === ends[1] ? [0, 1] : ends, [from, to]).nice(4);
	const pitch = stacked ? 42 : 26;
	const bottom = HEAD + bars.length * pitch;
	return { width, from, to, bottom, pitch, drop: stacked ? 30 : 13, x: scale, ticks: scale.ticks(4) };
}

/** Keeps a label readable over the line of zero. */
const HALO = { stroke: INK.ground, "stroke-width": 4, "stroke-linejoin": "round", "paint-order": "stroke" };

const text = (at: Shape["attributes"], words: string) =>
	shape("text", { class: "ink", fill: INK.ink, ...at }, words);

function grid({ heading, number }: BarChart, { from, bottom, x, ticks }: Frame): Shape[] {
	return [
		text({ x: from < LABEL ? 12 : from, y: 20, "font-weight": 600 }, heading),
		...ticks.flatMap((value) => [
			shape("line", {
				...(value === 0 ? { class: "ink-line", stroke: INK.ink } : { class: "faint", stroke: INK.faint }),
				...{ x1: x(value), x2: x(value), y1: HEAD - 8, y2: bottom + 4 },
			}),
			text({ x: x(value), y: bottom + 20, "text-anchor": "middle" }, number(value)),
		]),
	];
}

function bar({ label, value, says, whisker }: Bar, row: number, frame: Frame): Shape[] {
	const { from, pitch, drop, x } = frame;
	const y = HEAD + row * pitch + drop;
	const place =
		from < LABEL ? { x: 12, y: y - THICK } : { x: LABEL + 2, y: y + 4, "text-anchor": "end" as const };
	const furthest = Math.max(x(value ?? 0), x(0), ...(whisker ? ends(whisker, frame) : []));
	return [
		text({ class: "ink halo", ...HALO, ...place }, label),
		...(value === undefined ? [] : [block(value, y, frame)]),
		...(whisker ? whiskers(whisker, y, frame) : []),
		text({ x: furthest + 8, y: y + 4 }, says),
	];
}

/** A gain is filled, a loss only outlined. */
function block(value: number, y: number, { x }: Frame): Shape {
	const at = {
		x: Math.min(x(0), x(value)),
		y: y - THICK / 2,
		width: Math.abs(x(value) - x(0)),
		height: THICK,
	};
	return value < 0
		? shape("rect", { class: "stroke water", ...at, fill: "none", stroke: INK.water, "stroke-width": 1.5 })
		: shape("rect", { class: "fill water", ...at, fill: INK.water, "fill-opacity": 0.75 });
}

type Whisker = NonNullable<Bar["whisker"]>;

/** An end that is open runs to the edge of the plot. */
const ends = ({ low, high }: Whisker, { from, to, x }: Frame): readonly [number, number] => [
	low === undefined ? from : x(low),
	high === undefined ? to : x(high),
];

function whiskers(whisker: Whisker, y: number, frame: Frame): Shape[] {
	const [x1, x2] = ends(whisker, frame);
	const line = (at: Shape["attributes"]) =>
		shape("line", { class: "ink-line", stroke: INK.ink, "stroke-width": 1.5, ...at });
	const cap = (x: number) => line({ x1: x, x2: x, y1: y - CAP, y2: y + CAP });
	return [
		line({ x1, x2, y1: y, y2: y }),
		...(whisker.low === undefined ? [] : [cap(x1)]),
		...(whisker.high === undefined ? [] : [cap(x2)]),
	];
}

/** Height of the drawing [px]. */
function heightOf({ notes }: BarChart, { bottom }: Frame): number {
	return bottom + 32 + notes.length * LINE + (notes.length > 0 ? 8 : 0);
}

/** Draws a ranking as bars; the height follows from their number. */
export function drawBars(chart: BarChart, { width }: Pick<Size, "width">): Shape {
	const frame = framed(chart, width);
	const height = heightOf(chart, frame);
	return sheet(chart, { width, height }, [
		...grid(chart, frame),
		...chart.bars.flatMap((one, row) => bar(one, row, frame)),
		...chart.notes.map((words, i) => text({ x: 12, y: frame.bottom + 32 + (i + 1) * LINE - 4 }, words)),
	]);
}
