/** What a tap is commonly asked for: the modest and the lavish end. */
export interface Use {
	readonly id: "basinTap" | "kitchenSink" | "shower";
	readonly modest: { readonly flow: number /* [m³/s] */; readonly temperature: number /* [K] */ };
	readonly lavish: { readonly flow: number; readonly temperature: number };
	readonly source: string;
}

const LITRES_PER_MINUTE = 1e-3 / 60; // [m³/s]
const REGULATION = "Regulation (EU) 814/2013, Annex III, table 1";
const PRACTICE = "common practice, no source";
const at = (litresPerMinute: number, celsius: number) => ({
	flow: litresPerMinute * LITRES_PER_MINUTE,
	temperature: celsius + 273.15,
});

export const USES: readonly Use[] = [
	{
		id: "basinTap",
		modest: at(3, 35),
		lavish: at(5, 40),
		source: `3 L/min: ${REGULATION}, small draws; 35–40 °C and 5 L/min: ${PRACTICE}`,
	},
	{
		id: "kitchenSink",
		modest: at(4, 45),
		lavish: at(6, 55),
		source: `4 L/min and 55 °C: ${REGULATION}, dish washing; 45 °C and 6 L/min: ${PRACTICE}`,
	},
	{
		id: "shower",
		modest: at(6, 38),
		lavish: at(9, 42),
		source: `6 L/min: ${REGULATION}, shower at 40 °C; 38–42 °C and 9 L/min: ${PRACTICE}`,
	},
];
