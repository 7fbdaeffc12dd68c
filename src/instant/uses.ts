import type { Provenance } from "../provenance.ts";

/** What a tap usually delivers: the modest and the lavish end. */
export interface Use extends Provenance {
	readonly id: "basinTap" | "kitchenSink" | "shower";
	readonly modest: { readonly flow: number /* [m³/s] */; readonly temperature: number /* [K] */ };
	readonly lavish: { readonly flow: number; readonly temperature: number };
}

const LITRES_PER_MINUTE = 1e-3 / 60; // [m³/s]
const REGULATION = "Regulation (EU) 814/2013, Annex III, table 1";
/** Common practice but for the figures that the regulation sets. */
const regulated = (figures: string): Provenance => ({
	basis: "commonPractice",
	source: `${REGULATION}: ${figures}`,
	confirmed: true,
});
const at = (litresPerMinute: number, celsius: number) => ({
	flow: litresPerMinute * LITRES_PER_MINUTE,
	temperature: celsius + 273.15,
});

export const USES: readonly Use[] = [
	{
		id: "basinTap",
		modest: at(3, 35),
		lavish: at(5, 40),
		...regulated("small draws of 3 L/min"),
	},
	{
		id: "kitchenSink",
		modest: at(4, 45),
		lavish: at(6, 55),
		...regulated("dish washing at 4 L/min and 55 °C"),
	},
	{
		id: "shower",
		modest: at(6, 38),
		lavish: at(9, 42),
		...regulated("shower of 6 L/min at 40 °C"),
	},
];
