/** Stands in for d3-interpolate, d3-format and d3-path in the widget's bundle: its scales run from numbers to numbers, Intl
 *  writes them, and its curves are straight from point to point, so colours, formats and arcs stay at home. */
export const interpolateNumber = (a: number, b: number) => (t: number) => a * (1 - t) + b * t;
export const interpolate = interpolateNumber;
export const interpolateRound = (a: number, b: number) => (t: number) => Math.round(a * (1 - t) + b * t);

export class Path {
	#text = "";
	moveTo(x: number, y: number): void {
		this.#text += `M${x},${y}`;
	}
	lineTo(x: number, y: number): void {
		this.#text += `L${x},${y}`;
	}
	closePath(): void {
		this.#text += "Z";
	}
	toString(): string {
		return this.#text;
	}
}

function unused(): never {
	throw new Error("left out of the widget");
}

export {
	unused,
	unused as format,
	unused as formatPrefix,
	unused as formatSpecifier,
	unused as path,
	unused as piecewise,
	unused as precisionFixed,
	unused as precisionPrefix,
	unused as precisionRound,
};
