/** Unit signs by the end of a column's name, the longest first. */
const UNITS: readonly (readonly [suffix: string, sign: string])[] = [
	["WPerM2", "W/m²"],
	["LPerMin", "L/min"],
	["Deg", "°"],
	["Kwh", "kWh"],
	["Min", "min"],
	["C", "°C"],
	["W", "W"],
	["K", "K"],
];

function columnHeader(name: string): string {
	const sign = UNITS.find(([suffix]) => name.endsWith(suffix))?.[1];
	return sign === undefined ? name : `${name} [${sign}]`;
}

/** The columns of a series as comma-separated values (RFC 4180), with each unit in the header. */
export function seriesTable(series: Readonly<Record<string, unknown>>): string {
	const columns = Object.entries(series).filter((entry): entry is [string, unknown[]] =>
		Array.isArray(entry[1]),
	);
	const rows = columns[0]![1].map((_, i) => columns.map(([, values]) => String(values[i])).join(","));
	return [columns.map(([name]) => columnHeader(name)).join(","), ...rows, ""].join("\r\n");
}
