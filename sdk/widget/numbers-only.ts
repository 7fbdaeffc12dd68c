/** Stands in for d3-interpolate and d3-format in the widget's bundle: its scales run from numbers to numbers, and Intl
 *  writes them, so the colours and formats that those packages carry stay at home. */
export const interpolateNumber = (a: number, b: number) => (t: number) => a * (1 - t) + b * t;
export const interpolate = interpolateNumber;
export const interpolateRound = (a: number, b: number) => (t: number) => Math.round(a * (1 - t) + b * t);

function unused(): never {
	throw new Error("left out of the widget");
}

export {
	unused as format,
	unused as formatPrefix,
	unused as formatSpecifier,
	unused as piecewise,
	unused as precisionFixed,
	unused as precisionPrefix,
	unused as precisionRound,
};
