import { countsByKind, errorsOf, figure, tableRow } from "./errors.ts";
import type { ReferenceRow, ReferenceSet } from "./reference.ts";

/** A line of the README: quantities of one unit, or of any, by their error in per cent. */
interface Group {
	readonly title: string;
	readonly unit: string;
	readonly quantities: readonly string[];
}

const PERCENT = "%";
const GROUPS: readonly Group[] = [
	{ title: "Where the sun stands", unit: "°", quantities: ["Sun position", "Declination"] },
	{ title: "Sunrise, noon and sunset", unit: "s", quantities: ["Sunrise, noon and sunset"] },
	{
		title: "Equation of time, distance of the sun",
		unit: PERCENT,
		quantities: ["Equation of time", "Distance factor of the sun"],
	},
	{ title: "Clear-sky irradiance", unit: "W/m²", quantities: ["Clear-sky irradiance"] },
	{
		title: "Boiling point by elevation and under pressure",
		unit: "°C",
		quantities: ["Boiling point by elevation", "Boiling point under pressure"],
	},
	{
		title: "Air pressure, elevation and vapour pressure",
		unit: PERCENT,
		quantities: [
			"Saturation pressure of water",
			"Saturation temperature of water",
			"Elevation from the boiling point",
			"Standard pressure, geopotential",
			"Standard pressure, geometric",
		],
	},
	{
		title: "Air: viscosity, conductivity, Prandtl number, heat capacity",
		unit: PERCENT,
		quantities: [
			"Kinematic viscosity of air",
			"Thermal conductivity of air",
			"Prandtl number of air",
			"Heat capacity of air",
		],
	},
	{
		title: "Oil: density, heat capacity, conductivity",
		unit: PERCENT,
		quantities: [
			"Density of engine oil",
			"Heat capacity of engine oil",
			"Thermal conductivity of engine oil",
		],
	},
	{
		title: "Viscosity of oils",
		unit: PERCENT,
		quantities: ["Kinematic viscosity of engine oil through two points", "Viscosity of vegetable oil"],
	},
	{
		title: "Friction and turbulence in straight and helical tubes",
		unit: PERCENT,
		quantities: [
			"friction factor of a straight tube (Darcy)",
			"friction of a helical tube over that of a straight one, laminar",
			"friction factor of a helical tube, laminar (Darcy)",
			"helical tube, critical Reynolds number",
		],
	},
	{
		title: "Nusselt numbers in wind, in still air and in tubes",
		unit: PERCENT,
		quantities: [
			"cylinder in wind, Nusselt number",
			"free convection, Nusselt number",
			"inside a straight tube, Nusselt number",
		],
	},
	{
		title: "Whole examples: bare and insulated pipes, a duct, an oil cooler",
		unit: PERCENT,
		quantities: [
			"heat that a bare pipe loses in still air, whole example",
			"free convection from the faces of a duct, whole example",
			"logarithmic mean temperature difference",
			"length of a counterflow oil cooler, whole example",
			"conduction through lagging",
			"resistance of lagging",
			"critical radius of lagging",
		],
	},
	{
		title: "Geometry of built dishes",
		unit: PERCENT,
		quantities: ["Dish: rim angle", "Dish: depth and focal length", "Dish: mirror area"],
	},
	{
		title: "Draw-off from a layered tank, tapping profiles, Student's t",
		unit: PERCENT,
		quantities: [
			"Tank: outlet's excess after a draw through mixed layers",
			"Tap: heat of a tapping profile",
			"Tap: number of draws of a tapping profile",
			"Student's t of the intervals",
		],
	},
];

const outside = (set: ReferenceSet): readonly ReferenceRow[] =>
	set.role === "check" ? set.rows.filter(({ kind }) => kind === "print" || kind === "library") : [];

function line({ title, unit, quantities }: Group, sets: readonly ReferenceSet[]): string {
	const members = quantities.map((quantity) => {
		const set = sets.find((one) => one.quantity === quantity);
		if (!set || outside(set).length === 0) throw new Error(`no published values of ${quantity}`);
		if (unit !== PERCENT && set.unit !== unit) throw new Error(`${quantity} is in ${set.unit}, not ${unit}`);
		return set;
	});
	const rows = members.flatMap(outside);
	const { worst, widest } = errorsOf(rows, unit === PERCENT);
	const of = (kind: "print" | "library") => String(rows.filter((row) => row.kind === kind).length);
	return tableRow([
		title,
		of("print"),
		of("library"),
		`${figure(worst)} ${unit}`,
		`${figure(widest)} ${unit}`,
	]);
}

/** What the README says of the accuracy: counts, and the values that others published or computed. Fails where a line lacks one of these. */
export function accuracySummary(sets: readonly ReferenceSet[]): string {
	const grouped = GROUPS.flatMap(({ quantities }) => quantities);
	for (const set of sets)
		if (outside(set).length > 0 && !grouped.includes(set.quantity))
			throw new Error(`${set.quantity} has published values, and no line of the README shows them`);
	const checks = countsByKind(sets.filter(({ role }) => role === "check"));
	const count = (role: ReferenceSet["role"]) =>
		sets.filter((set) => set.role === role).reduce((sum, { rows }) => sum + rows.length, 0);
	return [
		`${checks.print} values transcribed from published texts and ${checks.library} computed by independent libraries check the models:`,
		"",
		tableRow(["what", "published", "by a library", "worst error", "widest tolerance"]),
		"|---|---|---|---|---|",
		...GROUPS.map((group) => line(group, sets)),
		"",
		`[ACCURACY.md](tests/reference/ACCURACY.md) lists each quantity with its source and the reason of its tolerance, and what counts for less: ${checks.formula} values that we evaluated from published formulas, ${checks.memory} from memory, ${count("sanity")} sanity checks between two models, ${count("fit")} values of the data that models were fitted to. [UNCONFIRMED.md](tests/reference/UNCONFIRMED.md) lists every value and formula that was written from memory and not confirmed.`,
	].join("\n");
}
