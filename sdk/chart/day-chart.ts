import { scaleLinear } from "d3-scale";
import { line } from "d3-shape";
import type { DayAxis } from "./day-axis.ts";
import { type Shape, shape } from "./svg.ts";

/** What one axis measures. */
export interface Measure {
	readonly unit: string;
	readonly low: number;
	readonly high: number;
}

/** What stands in the chart, by its part in the story; the colour follows from it. */
export type Role = "sun" | "sky" | "water" | "top" | "plane";

export interface Curve {
	readonly role: Role;
	readonly label: string;
	readonly values: readonly number[];
	readonly filled: boolean;
	readonly side: "left" | "right";
}

/** A day of something, ready to draw. */
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

const INK: Readonly<Record<Role | "ink" | "faint" | "ground", string>> = {
	...{ sun: "#e9b44c", sky: "#7ba7bc", water: "#0b6e75", top: "#4d9aa0", plane: "#a4501f" },
	...{ ink: "#23302f", faint: "#d5dad4", ground: "#fbfaf6" },
};
const LETTER = 7.2; // [px] mean width of a letter at 13 px, on the wide side; common practice, no source
const ROW = 20; // [px] height of a row of the legend

/** Where each entry of the legend stands, in as many rows as the width asks for. */
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

/** Draws a day. Every colour stands as an attribute, which a page's style sheet may overrule by class. */
export function drawDay(chart: DayChart, { width, height }: Size): Shape {
	const labels = chart.curves.map(({ label }) => label);
	const edge = { left: 44, right: chart.right ? 50 : 14 };
	const places = legendPlaces(labels, 8, width - 8);
	const top = Math.max(...places.map(({ y }) => y)) + 30;
	const bottom = height - 26;
	const end = chart.axis.minutes.at(-1)!;
	const x = scaleLinear([0, end], [edge.left, width - edge.right]);
	const scaleOf = ({ low, high }: Measure) => scaleLinear([low, high], [bottom, top]).nice(5);
	const left = scaleOf(chart.left);
	const scales = { left, right: chart.right ? scaleOf(chart.right) : left };
	const text = (at: Shape["attributes"], words: string) =>
		shape("text", { class: "ink", fill: INK.ink, ...at }, words);

	const grid = left.ticks(5).flatMap((value) => [
		shape("line", {
			class: "faint",
			stroke: INK.faint,
			x1: edge.left,
			x2: width - edge.right,
			y1: left(value),
			y2: left(value),
		}),
		text({ x: edge.left - 6, y: left(value) + 4, "text-anchor": "end" }, chart.number(value)),
	]);
	const rightTicks = chart.right
		? scales.right
				.ticks(5)
				.map((value) => text({ x: width - edge.right + 6, y: scales.right(value) + 4 }, chart.number(value)))
		: [];
	const units = [
		text({ x: edge.left - 6, y: top - 12, "text-anchor": "end" }, chart.left.unit),
		...(chart.right ? [text({ x: width - 2, y: top - 12, "text-anchor": "end" }, chart.right.unit)] : []),
	];
	const hours = chart.axis.hours.flatMap(({ at, hour }) => [
		shape("line", { class: "ink-line", stroke: INK.ink, x1: x(at), x2: x(at), y1: bottom, y2: bottom + 4 }),
		text({ x: x(at), y: height - 8, "text-anchor": "middle" }, chart.clock(hour)),
	]);
	const curves = chart.curves.flatMap(({ role, values, filled, side }) => {
		const points = values.map((value, i): [number, number] => [
			x(chart.axis.minutes[i]!),
			scales[side](value),
		]);
		const outline = line()(points) ?? "";
		if (!filled) return [shape("path", { ...strokeOf(role), d: outline })];
		const ground = scales[side](0);
		const d = `${outline}L${x(end)},${ground}L${x(0)},${ground}Z`;
		return [shape("path", { class: `fill ${role}`, d, fill: INK[role], "fill-opacity": 0.4 })];
	});
	const levels = chart.levels.flatMap(({ value, label }) => [
		shape("line", {
			class: "level",
			stroke: INK.ink,
			"stroke-dasharray": "6 4",
			x1: edge.left,
			x2: width - edge.right,
			y1: left(value),
			y2: left(value),
		}),
		haloed({ x: edge.left + 6, y: left(value) - 6 }, label),
	]);
	const moments = chart.moments.flatMap(({ at, value, label }) => {
		const room = width - edge.right - label.length * LETTER; // the free corner below a rising curve, kept off the axis
		return [
			shape("line", { class: "level", stroke: INK.ink, x1: x(at), x2: x(at), y1: left(value), y2: bottom }),
			shape("circle", {
				...{ class: "moment", cx: x(at), cy: left(value), r: 5 },
				...{ fill: INK.ground, stroke: INK.water, "stroke-width": 2.5 },
			}),
			haloed(
				x(at) + 9 <= room
					? { x: x(at) + 9, y: left(value) + 24, "font-weight": 600 }
					: { x: room, y: bottom - 12, "font-weight": 600 },
				label,
			),
		];
	});
	return shape(
		"svg",
		{
			...{
				xmlns: "http://www.w3.org/2000/svg",
				viewBox: `0 0 ${width} ${height}`,
				width,
				height,
				role: "img",
			},
			...{ "aria-labelledby": "chart-title chart-description", direction: "ltr" },
			...{ "font-family": "system-ui, sans-serif", "font-size": 13 },
		},
		[
			shape("title", { id: "chart-title" }, chart.title),
			shape("desc", { id: "chart-description" }, chart.description),
			shape("rect", { class: "ground", width, height, fill: INK.ground }),
			...legend(chart, places),
			...units,
			...curves.slice(0, 1), // the sun behind the grid
			...grid,
			...rightTicks,
			shape("line", {
				class: "ink-line",
				stroke: INK.ink,
				x1: edge.left,
				x2: width - edge.right,
				y1: bottom,
				y2: bottom,
			}),
			...hours,
			...levels,
			...curves.slice(1),
			...moments,
		],
	);
}

/** Words on the drawing, kept readable over whatever lies behind. */
function haloed(at: Shape["attributes"], words: string): Shape {
	const halo = { stroke: INK.ground, "stroke-width": 4, "stroke-linejoin": "round", "paint-order": "stroke" };
	return shape("text", { class: "ink halo", fill: INK.ink, ...halo, ...at }, words);
}
