import { intervalPower, standardisedPower } from "../../src/test-run/standardised-power.ts";
import { studentQuantile } from "../../src/test-run/student.ts";
import type { ReferenceRow, ReferenceSet } from "./reference.ts";

const S580 =
	"ASAE X580, Testing and Reporting Solar Cooker Performance, draft: P = (Tf − Ti)·M·4186/600 and Ps = P·700/I";

/** Seven kilograms that warm by 8 K in ten minutes at 900 W/m²; the values follow from the standard's own equations. */
const power: readonly ReferenceRow[] = [
	{
		name: "7 kg, 8 K in 600 s",
		published: 390.7,
		computed: () => intervalPower(7, 8, 600),
		tolerance: { absolute: 0.05, reason: "the last digit written" },
		source: S580,
		fromMemory: false,
	},
	{
		name: "the same at 900 W/m²",
		published: 303.9,
		computed: () => standardisedPower(intervalPower(7, 8, 600), 900),
		tolerance: { absolute: 0.05, reason: "the last digit written" },
		source: S580,
		fromMemory: false,
	},
];

const TABLE: readonly (readonly [freedom: number, t: number])[] = [
	[3, 3.182],
	[4, 2.776],
	[5, 2.571],
	[10, 2.228],
	[30, 2.042],
	[60, 2.0],
	[120, 1.98],
	[Number.POSITIVE_INFINITY, 1.96],
];

const quantiles: readonly ReferenceRow[] = TABLE.map(([freedom, t]) => ({
	name: `${freedom} degrees of freedom, 95 % two-sided`,
	published: t,
	computed: () => studentQuantile(freedom),
	tolerance: {
		absolute: 0.0005,
		relative: 0.0015,
		reason: "the last digit of the table; the series' own error at 3",
	},
	source: "Abramowitz & Stegun, Handbook of Mathematical Functions, 1964, table 26.10",
	fromMemory: true,
}));

export const sets: readonly ReferenceSet[] = [
	{ quantity: "Standardised power of a test run", unit: "W", rows: power },
	{ quantity: "Student's t of the intervals", unit: "-", rows: quantiles },
];
