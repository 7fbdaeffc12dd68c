import { warmUpChart } from "../chart/warm-up-chart.ts";
import type { Answer } from "../method.ts";
import type { Catalogue } from "./catalogue.ts";
import { type Choice, litresNeeded, litresPerPerson, target } from "./choice.ts";
import { drawn, element } from "./dom.ts";
import type { Voice } from "./voice.ts";

type WarmUp = Answer<"warmUpTank">;

/** One answer and the question that it belongs to. */
export interface Answered {
	readonly answer: WarmUp;
	readonly choice: Choice;
	readonly catalogue: Catalogue;
}

/** The answer in words: the headline and the sentences below it. */
export function words(
	{ answer, choice, catalogue }: Answered,
	voice: Voice,
): [headline: string, ...sentences: string[]] {
	const { texts, say } = voice;
	const month = voice.month(choice.month);
	const usable = answer.usableLitresAt40C;
	const share = litresPerPerson(catalogue);
	const needed = litresNeeded(choice, catalogue);
	const [first, reached] =
		answer.targetTime === undefined
			? [say(texts.notHot, { month }), reasonIn(answer.reason, voice)]
			: [say(texts.hot, { at: voice.at(answer.targetTime), month }), undefined];
	const temperatures = { endTemperatureC: answer.endTemperatureC, targetTemperatureC: target(catalogue) };
	const showers = voice.plural(texts.showers, Math.floor(usable / share));
	const enough = usable >= needed ? texts.enough : texts.short;
	return [
		first,
		...(reached === undefined ? [] : [reached]),
		`${say(texts.gives, { usableL: usable, warmC: 40, litresL: share, showers })} ${say(enough, { neededL: needed, missingL: needed - usable })}`,
		say(reached === undefined ? texts.hotEnds : texts.ends, temperatures),
		...(answer.boilTime === undefined
			? []
			: [say(texts.boils, { boilingPointC: answer.boilingPointC, at: voice.at(answer.boilTime) })]),
	];
}

function reasonIn(reason: WarmUp["reason"], { warmUp, say }: Voice): string {
	if (!reason) return "";
	const template: string | undefined = warmUp.reasons[reason.code]; // none where the service is newer
	return template === undefined ? reason.message : say(template, reason.parameters);
}

/** The chart at a given width. */
export function chart({ answer, catalogue }: Answered, voice: Voice, width: number): SVGElement {
	const { texts, say, isolated } = voice;
	const { time, tankMeanC } = answer.series;
	const targetC = target(catalogue);
	const description = say(texts.chartSays, {
		...{
			startC: tankMeanC[0],
			start: voice.at(time[0]!),
			endC: tankMeanC.at(-1),
			end: voice.at(time.at(-1)!),
		},
		targetC,
	});
	const said = {
		...{ title: texts.chart, description, beam: texts.beam, mean: texts.mean, top: texts.top },
		target: isolated(say(texts.targetLine, { targetC })),
		boiling: isolated(say(texts.boilLine, { boilC: answer.boilingPointC })),
		reached:
			answer.targetTime === undefined ? "" : isolated(say(texts.hotAt, { at: voice.at(answer.targetTime) })),
		temperature: { unit: voice.symbol("C"), from: (celsius: number) => voice.shown("C", celsius) },
		irradiance: { unit: voice.symbol("WPerM2"), from: (flux: number) => voice.shown("WPerM2", flux) },
		number: (value: number) => voice.number(value),
		clock: voice.hour,
	};
	return drawn(warmUpChart(answer, targetC, said, { width, height: width < 440 ? 280 : 340 }));
}

/** Safety notes, the most serious first. */
export function cautions({ answer }: Answered, voice: Voice): HTMLElement {
	const { texts, warmUp, say } = voice;
	const sentences: Readonly<Record<string, string>> = warmUp.cautions;
	const items = answer.cautions.map(({ code, severity, parameters, message }) => {
		const template = sentences[code];
		const sentence =
			template === undefined
				? element("span", { lang: "en", dir: "ltr" }, message)
				: say(template, parameters);
		return element("li", { class: severity }, element("strong", {}, texts[severity]), " ", sentence);
	});
	return element(
		"section",
		{ class: "cautions" },
		element("h3", {}, texts.cautions),
		element("ul", {}, ...items),
	);
}

/** The air of the day and its source. */
export function air({ answer, choice }: Answered, { texts, say, month }: Voice): string {
	const { ambientC } = answer.series;
	const isAssumed = answer.assumed.some(({ pointer }) => pointer.startsWith("/sky/ambient"));
	return say(isAssumed ? texts.airAssumed : texts.airListed, {
		lowC: Math.min(...ambientC),
		highC: Math.max(...ambientC),
		month: month(choice.month),
	});
}

/** The values that the service filled in, each with its reason. */
export function assumptions({ answer }: Answered, { texts, plural }: Voice): HTMLElement {
	const rows = answer.assumed.flatMap(({ pointer, value, reason }) => [
		element(
			"dt",
			{},
			`${pointer.slice(1).replaceAll("/", " › ")}: ${typeof value === "object" ? JSON.stringify(value) : String(value)}`,
		),
		element("dd", {}, reason),
	]);
	return element(
		"details",
		{},
		element("summary", {}, plural(texts.assumed, answer.assumed.length)),
		element("p", { class: "hint" }, texts.assumedHint),
		element("dl", { lang: "en", dir: "ltr" }, ...rows),
	);
}
