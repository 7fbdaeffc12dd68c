import { capital, countsByKind, errorsOf, figure, tableRow } from "./errors.ts";
import { KINDS, type Kind, type ReferenceRow, type ReferenceSet } from "./reference.ts";

const KIND_TITLES: Readonly<Record<Kind, string>> = {
	print: "Published values",
	library: "Values of independent libraries",
	formula: "Published formulas and exact laws, evaluated by us",
	memory: "Values from memory",
};
const KIND_MEANINGS: Readonly<Record<Kind, string>> = {
	print: "transcribed from a published text, or from a public copy that quotes it",
	library: "computed by an independent library",
	formula: "a published formula or an exact law, which we evaluated apart from the code under test",
	memory: "the value, or the formula behind it, was written from memory and is not confirmed",
};
const SECTION_NOTES: Readonly<Record<Kind, string>> = {
	print: "The project's answer against what the source prints.",
	library: "The project's answer against that of a program that others wrote.",
	formula:
		"The arithmetic is ours; the source is that of the formula alone. It shows that the code does what the formula says, not that the formula is right.",
	memory: "It shows that the code does what was remembered, nothing more.",
};

const HEAD = [
	tableRow([
		"quantity",
		"unit",
		"values",
		"mean error",
		"worst error",
		"widest tolerance",
		"tolerance rests on",
		"source",
	]),
	"|---|---|---|---|---|---|---|---|",
];

function line(set: ReferenceSet, rows: readonly ReferenceRow[]): string {
	const { count, mean, worst, widest } = errorsOf(rows, false);
	const reasons = new Set(rows.map(({ tolerance }) => `${tolerance.basis}: ${tolerance.reason}`));
	const sources = new Set(rows.map(({ source }) => source));
	return tableRow([
		capital(set.quantity),
		set.unit,
		String(count),
		figure(mean),
		figure(worst),
		figure(widest),
		[...reasons].join("; "),
		[...sources].join("; "),
	]);
}

function section(sets: readonly ReferenceSet[], kind: Kind): readonly string[] {
	const lines = sets.flatMap((set) => {
		const rows = set.rows.filter((row) => row.kind === kind);
		return rows.length > 0 ? [line(set, rows)] : [];
	});
	return ["", `## ${KIND_TITLES[kind]}`, "", SECTION_NOTES[kind], "", ...HEAD, ...lines];
}

function uncounted(sets: readonly ReferenceSet[], title: string, note: string): readonly string[] {
	const head = [
		"quantity",
		"unit",
		"values",
		"worst error",
		"widest tolerance",
		"why it does not count",
		"source",
	];
	const lines = sets.map((set) => {
		const { count, worst, widest } = errorsOf(set.rows, false);
		const sources = [...new Set(set.rows.map(({ source }) => source))].join("; ");
		const why = set.role === "check" ? "" : set.why;
		const cells = [
			capital(set.quantity),
			set.unit,
			String(count),
			figure(worst),
			figure(widest),
			why,
			sources,
		];
		return tableRow(cells);
	});
	return ["", `## ${title}`, "", note, "", tableRow(head), "|---|---|---|---|---|---|---|", ...lines];
}

/** The whole accuracy table, as tests/reference/ACCURACY.md has it. */
export function accuracyTable(sets: readonly ReferenceSet[]): string {
	const byRole = (role: ReferenceSet["role"]) => sets.filter((set) => set.role === role);
	const counts = {
		checks: countsByKind(byRole("check")),
		"sanity checks": countsByKind(byRole("sanity")),
		fits: countsByKind(byRole("fit")),
	};
	const head = ["", ...Object.keys(counts)];
	const kinds = KINDS.map((kind) =>
		tableRow([`**${kind}**: ${KIND_MEANINGS[kind]}`, ...Object.values(counts).map((of) => String(of[kind]))]),
	);
	return [
		"# Accuracy",
		"",
		"Written by `npm run accuracy` from the reference tests of this folder; `npm run accuracy -- --check` fails where it is not true.",
		"Each line has one unit and one kind of witness. Only a check counts as one: a sanity check compares two models or two definitions,",
		"a fit shows the data that a model was made from. A tolerance rests on the digits printed, on a published uncertainty (source), on what",
		"the model's own documentation allows itself (claim), on step or quadrature (numerics), or is stated wide (practice).",
		"",
		tableRow(head),
		"|---|---|---|---|",
		...kinds,
		...KINDS.flatMap((kind) => section(byRole("check"), kind)),
		...uncounted(
			byRole("sanity"),
			"Sanity checks, which do not count",
			"Two models or two definitions lie about as far apart as these do. That says nothing of who is right.",
		),
		...uncounted(
			byRole("fit"),
			"Data that the models were made from, which do not count",
			"It shows how closely the fit follows its data and that it was copied rightly.",
		),
		"",
	].join("\n");
}
