import { INK } from "../../sdk/chart/day-chart.ts";
import { type Shape, shape } from "../../sdk/chart/svg.ts";

/** Size of every chart in a response [px]. */
export const PAPER = { width: 600, height: 360 };

const twoDigits = (value: number) => String(value).padStart(2, "0");

/** An hour of the day as a clock shows it: 13.5 is 13:30. */
export const clockOfHour = (hour: number) =>
	`${twoDigits(Math.floor(hour))}:${twoDigits(Math.round((hour % 1) * 60))}`;

const BAND = 26; // [px] height of the title

/** Size that remains for a drawing below its title. */
export const belowTitle = ({ width, height }: { readonly width: number; readonly height: number }) => ({
	width,
	height: height - BAND,
});

/** A drawing with a visible title, since an image on its own does not show its `<title>`. */
export function withTitle({ tag, attributes, inside }: Shape): Shape {
	const [title, description, ground, ...drawn] = inside as readonly Shape[];
	const { width, height } = attributes;
	const taller = Number(height) + BAND;
	return shape(tag, { ...attributes, viewBox: `0 0 ${width} ${taller}`, height: taller }, [
		title!,
		description!,
		shape(ground!.tag, { ...ground!.attributes, height: taller }),
		shape(
			"text",
			{ class: "ink", x: 8, y: 20, fill: INK.ink, "font-size": 14, "font-weight": 600 },
			title!.inside,
		),
		shape("g", { transform: `translate(0 ${BAND})` }, drawn),
	]);
}
