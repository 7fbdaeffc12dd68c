import type { Units } from "../texts/speech.ts";
import { type Catalogue, type Name, nameIn } from "./catalogue.ts";
import { BOUNDS, type Choice, darkestMonth, type Field, litresPerPerson } from "./choice.ts";
import { element } from "./dom.ts";
import { readings } from "./numeral.ts";
import type { Voice } from "./voice.ts";

const MONTHS = Array.from({ length: 12 }, (_, i) => i + 1);
const SUFFIXES = { elevationM: "M", litres: "L" } as const; // of the fields that have a unit
const DIGITS: Readonly<Record<Field, number>> = {
	latitude: 4,
	longitude: 4,
	elevationM: 0,
	people: 1,
	litres: 1,
};

/** The numbers as typed, and the fields whose numbers cannot be used. */
export interface Entries {
	readonly typed: Partial<Record<Field, string>>;
	readonly faulty: readonly Field[];
}

/** A coordinate has no thousands, so its separator marks decimals; any other number must have one reading. */
function meaning(field: Field, typed: string): number | undefined {
	const read = readings(typed);
	return field === "latitude" || field === "longitude" || read.length < 2 ? read.at(-1) : undefined;
}

/** Events of the form. */
export interface Listeners {
	readonly changed: () => void;
	readonly rebuild: (focus: string) => void; // the form itself must change
	readonly ask: () => void;
	readonly units: (units: Units) => void;
	readonly locate: () => void;
}

interface Option {
	readonly value: string;
	readonly words: string;
}

function labelled(label: string, id: string, field: HTMLElement, ...more: (Node | undefined)[]): HTMLElement {
	return element("div", { class: "field" }, element("label", { for: id }, label), field, ...more);
}

function select(
	id: string,
	options: readonly Option[],
	chosen: string,
	onchange: (value: string) => void,
): HTMLSelectElement {
	return element(
		"select",
		{ id, onchange: (event) => onchange((event.target as HTMLSelectElement).value) },
		...options.map(({ value, words }) => element("option", { value, selected: value === chosen }, words)),
	);
}

/** A group of choices, one of them selected: radio buttons that look like small buttons. */
function switched(
	name: string,
	legend: string,
	options: readonly Option[],
	chosen: string,
	onchange: (value: string) => void,
): HTMLElement {
	const radios = options.map(({ value, words }) =>
		element(
			"label",
			{},
			element("input", {
				type: "radio",
				name,
				id: `${name}-${value}`,
				value,
				checked: value === chosen,
				onchange: () => onchange(value),
			}),
			element("span", {}, words),
		),
	);
	return element(
		"fieldset",
		{ class: "switch" },
		element("legend", {}, legend),
		element("div", {}, ...radios),
	);
}

/** The input form. It writes into the choice and reports each change. */
export function form(
	choice: Choice,
	catalogue: Catalogue,
	voice: Voice,
	{ typed, faulty }: Entries,
	on: Listeners,
): HTMLFormElement {
	const { texts, language } = voice;
	const named = (items: readonly { id: string; name: Name }[]) =>
		items.map(({ id, name }) => ({ value: id, words: nameIn(name, language) }));
	const own = choice.placeId === "";

	const number = (field: Field, label: string, hint?: string) => {
		const suffix = field in SUFFIXES ? SUFFIXES[field as keyof typeof SUFFIXES] : undefined;
		const out = (value: number) => (suffix ? voice.shown(suffix, value) : value);
		const rounded = (value: number) => Number(out(value).toFixed(DIGITS[field]));
		const [least, most] = BOUNDS[field].map(rounded) as [number, number];
		const wrong = faulty.includes(field);
		const described = [...(hint ? [`${field}-hint`] : []), ...(wrong ? [`${field}-fault`] : [])].join(" ");
		const value = choice[field];
		const input = element("input", {
			...{ id: field, type: "text", required: true, autocomplete: "off", dir: "ltr" },
			inputmode: least < 0 ? "text" : "decimal", // number pads of phones lack a minus
			value: value === undefined ? typed[field] : voice.plain(out(value), DIGITS[field]),
			"aria-describedby": described === "" ? undefined : described,
			"aria-invalid": wrong ? "true" : undefined,
			oninput: () => {
				typed[field] = input.value;
				const meant = meaning(field, input.value);
				choice[field] = meant !== undefined && suffix ? voice.meant(suffix, meant) : meant;
				on.changed();
			},
		});
		const unit = suffix && element("span", { class: "unit" }, ` (${voice.symbol(suffix)})`);
		const read = value === undefined ? readings(typed[field] ?? "") : [];
		const fault = read[1]
			? voice.say(texts.twoWays, {
					typed: typed[field],
					whole: voice.plain(read[0]!, 0),
					decimal: voice.plain(read[1], 3),
				})
			: texts.fill.replace("{least}", voice.plain(least, 0)).replace("{most}", voice.plain(most, 0));
		return element(
			"div",
			{ class: "field" },
			element("label", { for: field }, label, unit),
			input,
			hint ? element("p", { class: "hint", id: `${field}-hint` }, hint) : undefined,
			wrong ? element("p", { class: "fault", id: `${field}-fault` }, fault) : undefined,
		);
	};

	const places = [...named(catalogue.places ?? []), { value: "", words: texts.ownPlace }];
	const place = select("place", places, choice.placeId, (id) => {
		choice.placeId = id;
		const latitude = catalogue.places?.find((one) => one.id === id)?.latitude ?? choice.latitude;
		choice.month = darkestMonth(latitude);
		on.rebuild("place");
	});
	const warm = voice.say("{warmC}", { warmC: 40 });
	const share = voice.say(texts.perPerson, { litresL: litresPerPerson(catalogue), warmC: 40 });
	return element(
		"form",
		{
			novalidate: true,
			onsubmit: (event) => {
				event.preventDefault();
				on.ask();
			},
		},
		labelled(texts.place, "place", place),
		own
			? element(
					"div",
					{ class: "own" },
					number("latitude", texts.latitude),
					number("longitude", texts.longitude),
					number("elevationM", texts.elevationM),
					element(
						"button",
						{ type: "button", id: "locate", class: "plain", onclick: on.locate },
						texts.locate,
					),
				)
			: undefined,
		labelled(
			texts.dish,
			"dish",
			select("dish", named(catalogue.dishes), choice.dishId, (id) => {
				choice.dishId = id;
				on.changed();
			}),
		),
		labelled(
			texts.tank,
			"tank",
			select("tank", named(catalogue.tanks), choice.tankId, (id) => {
				choice.tankId = id;
				on.changed();
			}),
		),
		labelled(
			texts.month,
			"month",
			select(
				"month",
				MONTHS.map((month) => ({ value: String(month), words: voice.month(month) })),
				String(choice.month),
				(month) => {
					choice.month = Number(month);
					on.changed();
				},
			),
		),
		element(
			"div",
			{ class: "need" },
			switched(
				"need",
				texts.need,
				[
					{ value: "people", words: texts.people },
					{ value: "litres", words: texts.litres.replace("{warm}", warm) },
				],
				choice.need,
				(need) => {
					choice.need = need as Choice["need"];
					on.rebuild(`need-${need}`);
				},
			),
			choice.need === "people"
				? number("people", texts.people, share)
				: number("litres", texts.litres.replace("{warm}", warm)),
		),
		element(
			"div",
			{ class: "foot" },
			element("button", { type: "submit", id: "ask", class: "ask" }, texts.ask),
			switched(
				"units",
				texts.units,
				[
					{ value: "metric", words: texts.metric },
					{ value: "us", words: texts.us },
				],
				voice.units,
				(units) => on.units(units as Units),
			),
		),
	);
}
