import { scaleLinear } from "d3-scale";
import type { DayAxis } from "./day-axis.ts";
import { type Shape, shape } from "./svg.ts";

/** The quantity on one axis. */
export interface Measure {
	readonly unit: string;
	readonly low: number;
	readonly high: number;
}

/** The meaning of a curve, which decides its colour. */
export type Role = "sun" | "sky" | "water" | "top" | "plane";

export interface Curve {
	readonly role: Role;
	readonly label: string;
	readonly values: readonly number[];
	readonly filled: boolean;
	readonly side: "left" | "right";
}

/** The data of a chart over one day. */
export interface DayChart {
	readonly title: string;
	readonly description: string;
	readonly axis: DayAxis;
	readonly left: Measure;
	readonly right?: Measure;
	readonly curves: readonly Curve[];
	readonly levels: readonly { readonly value: number; readonly label: string }[]; // on the left axis
	readonly moments: readonly { readonly at: number; readonly value: number; readonly label: string }[];
	readonly number: (value: number) => string;
	readonly clock: (hour: number) => string;
}

export interface Size {
	readonly width: number;
	readonly height: number;
}

export const INK: Readonly<Record<Role | "ink" | "faint" | "ground", string>> = {
	...{ sun: "#e9b44c", sky: "#5a86a0", water: "#0b6e75", top: "#3f8a91", plane: "#a4501f" },
	...{ ink: "#23302f", faint: "#d5dad4", ground: "#fbfaf6" },
};
const BEFORE = 44; // [px] of the left axis
const BEHIND = 50; // [px] of the right axis
const EDGE = 22; // [px] without one: room for half the label of the last mark
export const LETTER = 7.2; // [px] mean width of a letter at 13 px, on the wide side; common practice, no source
const BOLD = 8; // [px] the same in bold
const ROW = 20; // [px] height of a row of the legend

/** Number of marks that fit below a plot between two axes, without labels that touch.
 *  @param words  a label of about the greatest length */
export const marksWithin = (width: number, words: string) =>
	(width - BEFORE - BEHIND) / (words.length * LETTER + 8);

/** Position of each entry of the legend, in as many rows as the width requires. */
function legendPlaces(labels: readonly string[], from: number, to: number) {
	let [x, row] = [from, 0];
	return labels.map((label) => {
		const wide = 22 + label.length * LETTER + 12;
		if (x > from && x + wide > to) [x, row] = [from, row + 1];
		const place = { x, y: 18 + row * ROW };
		x += wide;
		return place;
	});
}

function legend({ curves }: DayChart, places: readonly { x: number; y: number }[]): Shape[] {
	return curves.flatMap(({ role, label, filled }, i) => {
		const { x, y } = places[i]!;
		const swatch = filled
			? shape("rect", {
					class: `fill ${role}`,
					x,
					y: y - 9,
					width: 14,
					height: 10,
					rx: 2,
					fill: INK[role],
					"fill-opacity": 0.45,
				})
			: shape("line", { ...strokeOf(role), x1: x, x2: x + 14, y1: y - 4, y2: y - 4 });
		return [swatch, shape("text", { class: "ink", x: x + 20, y, fill: INK.ink }, label)];
	});
}

const WIDTHS: Readonly<Record<Role, number>> = { sun: 2, sky: 2, water: 3, top: 1.75, plane: 2.25 };
const DASHES: Readonly<Partial<Record<Role, string>>> = { top: "5 3", sky: "2 3" };

function strokeOf(role: Role): Shape["attributes"] {
	const dash = DASHES[role];
	return {
		...{ class: `stroke ${role}`, fill: "none", stroke: INK[role], "stroke-width": WIDTHS[role] },
		...{ "stroke-linecap": "round", "stroke-linejoin": "round" },
		...(dash !== undefined && { "stroke-dasharray": dash }),
	};
}

const written = (at: Shape["attributes"], words: string) =>
	shape("text", { class: "ink", fill: INK.ink, ...at }, words);

type Scale = (value: number) => number;

/** The edges of the plot, and the scales within it. */
interface Frame extends Size {
	readonly from: number;
	readonly to: number;
	readonly top: number;
	readonly bottom: number;
	readonly x: Scale;
	readonly left: Scale;
	readonly right: Scale;
	readonly leftTicks: readonly number[];
	readonly rightTicks: readonly number[];
}

function framed({ axis, left, right }: DayChart, { width, height }: Size, top: number): Frame {
	const [from, to, bottom] = [BEFORE, width - (right ? BEHIND : EDGE), height - 26];
	const scaleOf = ({ low, high }: Measure) => scaleLinear([low, high], [bottom, top]).nice(5);
	const scales = { left: scaleOf(left), right: scaleOf(right ?? left) };
	return {
		...{ width, height, from, to, top, bottom, ...scales },
		x: scaleLinear([0, axis.minutes.at(-1)!], [from, to]),
		leftTicks: scales.left.ticks(5),
		rightTicks: right ? scales.right.ticks(5) : [],
	};
}

const hundredth = (pixels: number) => Math.round(pixels * 100) / 100;

/** A line across the plot at a height. */
const across = ({ from, to }: Frame, y: number) => ({ x1: from, x2: to, y1: y, y2: y });

function sides(chart: DayChart, frame: Frame): Shape[] {
	const { from, to, top, width, left, right } = frame;
	return [
		written({ x: from - 6, y: top - 12, "text-anchor": "end" }, chart.left.unit),
		...(chart.right ? [written({ x: width - 2, y: top - 12, "text-anchor": "end" }, chart.right.unit)] : []),
		...frame.leftTicks.flatMap((value) => [
			shape("line", { class: "faint", stroke: INK.faint, ...across(frame, left(value)) }),
			written({ x: from - 6, y: left(value) + 4, "text-anchor": "end" }, chart.number(value)),
		]),
		...frame.rightTicks.map((value) => written({ x: to + 6, y: right(value) + 4 }, chart.number(value))),
	];
}

function foot({ axis, clock }: DayChart, frame: Frame): Shape[] {
	const { x, bottom, height } = frame;
	const ink = { class: "ink-line", stroke: INK.ink };
	return [
		shape("line", { ...ink, ...across(frame, bottom) }),
		...axis.hours.flatMap(({ at, hour }) => [
			shape("line", { ...ink, x1: x(at), x2: x(at), y1: bottom, y2: bottom + 4 }),
			written({ x: x(at), y: height - 8, "text-anchor": "middle" }, clock(hour)),
		]),
	];
}

function curve({ role, values, filled, side }: Curve, { minutes }: DayAxis, frame: Frame): Shape {
	const [x, y] = [frame.x, frame[side]];
	const outline = `M${values.map((value, i) => `${hundredth(x(minutes[i]!))},${hundredth(y(value))}`).join("L")}`;
	if (!filled) return shape("path", { ...strokeOf(role), d: outline });
	const d = `${outline}L${x(minutes.at(-1)!)},${y(0)}L${x(0)},${y(0)}Z`;
	return shape("path", { class: `fill ${role}`, d, fill: INK[role], "fill-opacity": 0.4 });
}

function levels(chart: DayChart, frame: Frame): Shape[] {
	return chart.levels.flatMap(({ value, label }) => {
		const y = frame.left(value);
		return [
			shape("line", { class: "level", stroke: INK.ink, "stroke-dasharray": "6 4", ...across(frame, y) }),
			haloed({ x: frame.from + 6, y: y - 6 }, label),
		];
	});
}

function moments(chart: DayChart, { x, left, from, to, bottom }: Frame): Shape[] {
	return chart.moments.flatMap(({ at, value, label }) => {
		const room = Math.max(from, to - label.length * BOLD); // the free corner below a rising curve, kept off the axis
		const place = x(at) + 9 <= room ? { x: x(at) + 9, y: left(value) + 24 } : { x: room, y: bottom - 12 };
		const ring = { fill: INK.ground, stroke: INK.water, "stroke-width": 2.5 };
		return [
			shape("line", { class: "level", stroke: INK.ink, x1: x(at), x2: x(at), y1: left(value), y2: bottom }),
			shape("circle", { class: "moment", cx: x(at), cy: left(value), r: 5, ...ring }),
			haloed({ ...place, "font-weight": 600 }, label),
		];
	});
}

/** The sheet of a drawing, with its title and description. */
export function sheet(
	{ title, description }: Readonly<Record<"title" | "description", string>>,
	{ width, height }: Size,
	inside: readonly Shape[],
): Shape {
	const attributes = {
		...{ xmlns: "http://www.w3.org/2000/svg", viewBox: `0 0 ${width} ${height}`, width, height, role: "img" },
		...{ "aria-labelledby": "chart-title chart-description", direction: "ltr" },
		...{ "font-family": "system-ui, sans-serif", "font-size": 13 },
	};
	return shape("svg", attributes, [
		shape("title", { id: "chart-title" }, title),
		shape("desc", { id: "chart-description" }, description),
		shape("rect", { class: "ground", width, height, fill: INK.ground }),
		...inside,
	]);
}

/** Draws a day. Each colour is an attribute, so a page's style sheet can override it by class. */
export function drawDay(chart: DayChart, size: Size): Shape {
	const { width } = size;
	const labels = chart.curves.map(({ label }) => label);
	const places = legendPlaces(labels, 8, width - 8);
	const frame = framed(chart, size, Math.max(...places.map(({ y }) => y)) + 30);
	const [behind, ...before] = chart.curves.map((one) => curve(one, chart.axis, frame));
	return sheet(chart, size, [
		...legend(chart, places),
		...(behind ? [behind] : []), // the sun behind the grid
		...sides(chart, frame),
		...foot(chart, frame),
		...before,
		...levels(chart, frame), // with their labels over the curves
		...moments(chart, frame),
	]);
}

/** Text that stays readable over the curves behind it. */
function haloed(at: Shape["attributes"], words: string): Shape {
	const halo = { stroke: INK.ground, "stroke-width": 4, "stroke-linejoin": "round", "paint-order": "stroke" };
	return shape("text", { class: "ink halo", fill: INK.ink, ...halo, ...at }, words);
}
