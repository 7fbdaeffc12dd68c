import { studentQuantile } from "../../src/numeric/student.ts";
import { intervalPower, standardisedPower } from "../../src/test-run/standardised-power.ts";
import type { ReferenceRow, ReferenceSet } from "./reference.ts";

const S580 =
	"ASAE X580, Testing and Reporting Solar Cooker Performance, draft: P = (Tf − Ti)·M·4186/600 and Ps = P·700/I";

/** Seven kilograms that warm by 8 K in ten minutes at 900 W/m²; the values follow from the standard's own equations. */
const power: readonly ReferenceRow[] = [
	{
		name: "7 kg, 8 K in 600 s",
		published: 390.7,
		computed: () => intervalPower(7, 8, 600),
		tolerance: { absolute: 0.05, basis: "digits", reason: "half of the only decimal" },
		source: S580,
		kind: "formula",
	},
	{
		name: "the same at 900 W/m²",
		published: 303.9,
		computed: () => standardisedPower(intervalPower(7, 8, 600), 900),
		tolerance: { absolute: 0.05, basis: "digits", reason: "half of the only decimal" },
		source: S580,
		kind: "formula",
	},
];

const TABLE: readonly (readonly [freedom: number, t: number])[] = [
	[3, 3.18244631],
	[4, 2.77644511],
	[5, 2.57058184],
	[10, 2.22813885],
	[30, 2.04227246],
	[60, 2.00029782],
	[120, 1.97993041],
	[Number.POSITIVE_INFINITY, 1.95996398],
];

const quantiles: readonly ReferenceRow[] = TABLE.map(([freedom, t]) => ({
	name: `${freedom} degrees of freedom, 95 % two-sided`,
	published: t,
	computed: () => studentQuantile(freedom),
	tolerance: { relative: 0.0015, basis: "claim", reason: "the series' own error at 3" },
	source: "Student's t by the open library scipy 1.10.1",
	kind: "library",
}));

export const sets: readonly ReferenceSet[] = [
	{ quantity: "Standardised power of a test run", unit: "W", role: "check", rows: power },
	{ quantity: "Student's t of the intervals", unit: "-", role: "check", rows: quantiles },
];
