import type { Shape } from "../chart/svg.ts";

type Child = Node | string | undefined;
type Listener = (event: Event) => void;

/** An element with attributes, listeners (`onclick`) and children; an attribute that is undefined or false is omitted. */
export function element<Tag extends keyof HTMLElementTagNameMap>(
	tag: Tag,
	attributes: Readonly<Record<string, string | number | boolean | undefined | Listener>> = {},
	...children: readonly Child[]
): HTMLElementTagNameMap[Tag] {
	const made = document.createElement(tag);
	for (const [name, value] of Object.entries(attributes)) {
		if (typeof value === "function") made.addEventListener(name.slice(2), value);
		else if (value !== undefined && value !== false)
			made.setAttribute(name, value === true ? "" : String(value));
	}
	made.append(...children.filter((child) => child !== undefined));
	return made;
}

/** A drawing as elements. No markup is parsed, so a strict policy refuses nothing. */
export function drawn({ tag, attributes, inside }: Shape): SVGElement {
	const made = document.createElementNS("http://www.w3.org/2000/svg", tag);
	for (const [name, value] of Object.entries(attributes))
		if (name !== "xmlns") made.setAttribute(name, String(value));
	if (typeof inside === "string") made.textContent = inside;
	else made.append(...inside.map(drawn));
	return made;
}
