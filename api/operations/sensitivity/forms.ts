import { type Bar, drawBars } from "../../../sdk/chart/bar-chart.ts";
import { svgText } from "../../../sdk/chart/svg.ts";
import { PAPER, withTitle } from "../../parts/chart.ts";
import { gainTable } from "./gain-table.ts";
import type { Ranking, SensitivityRequest } from "./request.ts";
import type { SensitivityResponse } from "./response.ts";
import { SHORT } from "./words.ts";

type Improvement = SensitivityResponse["improvements"][number];

/** What each ranking measures. */
const MEASURES = {
	litres: {
		field: "usableLitresAt40C",
		unit: "L",
		heading: "Additional water at 40 °C [L]",
		by: "usable litres",
	},
	minutes: {
		field: "timeToTargetMin",
		unit: "min",
		heading: "Earlier at the target [min]",
		by: "minutes to the target",
	},
	temperature: {
		field: "endTemperatureK",
		unit: "K",
		heading: "Higher end temperature [K]",
		by: "end temperature",
	},
	heat: {
		field: "toWaterKwh",
		unit: "kWh",
		heading: "Additional heat to the water [kWh]",
		by: "heat to the water",
	},
} as const satisfies Record<
	Ranking,
	{ readonly field: keyof Improvement["gains"]; readonly unit: string; heading: string; by: string }
>;

type Measure = (typeof MEASURES)[Ranking];

/** The formats besides JSON: chart and table. */
export const sensitivityForms = {
	chart: (answer: SensitivityResponse, request: SensitivityRequest) =>
		svgText(withTitle(chart(answer, request))),
	table: gainTable,
};

function chart(answer: SensitivityResponse, { date }: SensitivityRequest) {
	const { improvements, rankedBy } = answer;
	const measure = MEASURES[rankedBy];
	return drawBars(
		{
			title: `Improvements ranked by ${measure.by}, ${date}`,
			description: described(answer, measure),
			heading: measure.heading,
			bars: improvements.map((one) => barOf(one, measure)),
			notes: notes(answer),
			number: tick,
		},
		PAPER,
	);
}

function barOf(one: Improvement, measure: Measure): Bar {
	const range = one.range?.[measure.field];
	return {
		label: SHORT[one.id],
		value: one.gains[measure.field],
		says: `${gainText(one, measure)}${isUnsure(one) ? " ≈" : ""}`,
		...(range && { whisker: { low: range.low, high: range.high } }),
	};
}

const isUnsure = ({ aheadOfNext }: Improvement) => aheadOfNext?.order === "uncertain";

const WITHOUT_TIME = {
	both: "",
	onlyWith: "target reached only with it",
	onlyWithout: "target no longer reached",
	neither: "target not reached",
} as const;

function gainText({ gains, reaches }: Improvement, { field, unit }: Measure): string {
	const gain = gains[field];
	return gain === undefined ? WITHOUT_TIME[reaches] : `${signed(gain)} ${unit}`;
}

/** Three digits at most, and a sign. */
function signed(value: number): string {
	const text = tick(value);
	return text === "0" ? "0" : `${value > 0 ? "+" : "−"}${text.replace("−", "")}`;
}

function tick(value: number): string {
	const size = Math.abs(value);
	const text = size < 0.005 ? "0" : String(Number(size.toFixed(size >= 99.5 ? 0 : size >= 9.95 ? 1 : 2)));
	return value < 0 && text !== "0" ? `−${text}` : text;
}

function notes({ range, improvements, refused, notApplicable }: SensitivityResponse): string[] {
	const named = (ones: readonly { readonly id: keyof typeof SHORT }[]) =>
		ones.map(({ id }) => SHORT[id]).join(", ");
	return [
		...(range ? [`Whiskers cover ${Math.round(range.coverage * 100)} % of plants like this one.`] : []),
		...(improvements.some(isUnsure) ? ["≈: the order of this and the next is uncertain."] : []),
		...(notApplicable.length > 0 ? [`Not applicable: ${named(notApplicable)}.`] : []),
		...(refused.length > 0 ? [`Outside the models: ${named(refused)}.`] : []),
	];
}

function described({ improvements }: SensitivityResponse, measure: Measure): string {
	if (improvements.length === 0) return "No improvement applies to this plant.";
	return improvements
		.map((one, i) => {
			const range = one.range?.[measure.field];
			const between =
				range?.low !== undefined && range.high !== undefined
					? `, between ${tick(range.low)} and ${tick(range.high)}`
					: "";
			const unsure = isUnsure(one) ? ", order against the next uncertain" : "";
			return `${i + 1}. ${SHORT[one.id]}: ${gainText(one, measure)}${between}${unsure}.`;
		})
		.join(" ");
}
