import { INK } from "../../sdk/chart/day-chart.ts";
import { type Shape, shape } from "../../sdk/chart/svg.ts";

const BAND = 26; // [px] of the title

/** Room that a drawing has under its title on paper of a given height. */
export const under = ({ width, height }: { readonly width: number; readonly height: number }) => ({
	width,
	height: height - BAND,
});

/** A drawing with its title on it, since an image that stands alone shows nothing of its `<title>`. */
export function titled({ tag, attributes, inside }: Shape): Shape {
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
