/** A part of a drawing as plain data: a server writes it as text, a page builds it as elements. */
export interface Shape {
	readonly tag: string;
	readonly attributes: Readonly<Record<string, string | number>>;
	readonly inside: readonly Shape[] | string;
}

export function shape(
	tag: string,
	attributes: Shape["attributes"] = {},
	inside: Shape["inside"] = [],
): Shape {
	return { tag, attributes, inside };
}

const ENTITIES: Readonly<Record<string, string>> = { "&": "&amp;", "<": "&lt;", ">": "&gt;", '"': "&quot;" };
const escaped = (text: string) => text.replace(/[&<>"]/g, (sign) => ENTITIES[sign]!);

/** A drawing as text. */
export function svgText({ tag, attributes, inside }: Shape): string {
	const named = Object.entries(attributes).map(([name, value]) => ` ${name}="${escaped(String(value))}"`);
	const within = typeof inside === "string" ? escaped(inside) : inside.map(svgText).join("");
	return `<${tag}${named.join("")}${within === "" ? "/>" : `>${within}</${tag}>`}`;
}
