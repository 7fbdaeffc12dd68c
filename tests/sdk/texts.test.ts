import { describe, expect, it } from "vitest";
import { Reason } from "../../api/parts/reason.ts";
import type { ProblemKind } from "../../api/problem/problem.ts";
import contract from "../../openapi/openapi.json" with { type: "json" };
import type { ProblemKind as Kind } from "../../sdk/texts/codes.ts";
import { ANSWERS, languageFor, WIDGET } from "../../sdk/texts/languages.ts";
import { LANGUAGES, type Subject, sentence } from "../../sdk/texts/sentence.ts";
import { voice } from "../../sdk/widget/voice.ts";
import { CAUTION_CODES } from "../../src/index.ts";
import { app } from "../contract/service.ts";
import { sourcesIn } from "../sources.ts";

/** Every text of a dictionary by its path. */
function texts(of: object, path = ""): [path: string, text: string][] {
	return Object.entries(of).flatMap(([name, value]) =>
		typeof value === "string"
			? [[`${path}${name}`, value] as [string, string]]
			: texts(value, `${path}${name}.`),
	);
}
const named = (text: string) =>
	[...new Set([...text.matchAll(/\{(\w+)\}/g)].map(([, name]) => name!))].sort();
const whole = (language: (typeof LANGUAGES)[number]) => ({ ...WIDGET[language], ...ANSWERS[language] });
const plain = (text: string) => text.replace(/[\u2066-\u2069\u200e]/g, "").replaceAll("\u00a0", " ");

/** A text without what stands in isolates of Unicode, one within another included: what is left runs in the text's own direction. */
function outside(text: string): string {
	const less = text.replace(/[\u2066-\u2068][^\u2066-\u2069]*\u2069/g, "");
	return less === text ? text : outside(less);
}

/** Codes of the cautions that a warm-up can give, as the rules spell them; the widget has these and no others. */
const rules = sourcesIn("src/cautions");
const used = (path: string) => rules.find((rule) => rule.path === path)?.imports ?? [];
const direct = used("src/cautions/cautions.ts");
const warmUpRules = [...direct, ...direct.flatMap(used)];
const warmUpCodes = rules
	.filter(({ path }) => warmUpRules.includes(path))
	.flatMap(({ text }) =>
		[...text.matchAll(/code: ([^\n]+)/g)].flatMap(([, line]) =>
			[...line!.matchAll(/"(\w+)"/g)].map(([, code]) => code!),
		),
	);

describe("the dictionary", () => {
	it("has in the widget's part every caution and reason of a warm-up, and no others", () => {
		expect(warmUpCodes.length).toBeGreaterThan(20);
		expect(warmUpCodes).toContain("scald");
		const { cautions, reasons } = WIDGET.en.warmUp;
		expect(Object.keys(cautions).sort()).toEqual([...new Set(warmUpCodes)].sort());
		expect(Object.keys(reasons).sort()).toEqual([...Reason.shape.code.options].sort());
	});

	it("has every caution, and every kind of problem, of the service", () => {
		for (const code of CAUTION_CODES) expect(sentence("es", "cautions", code), code).toBeTruthy();
		const theirs: Record<ProblemKind, string> = ANSWERS.en.further.problems; // either type would fail to compile
		const own: Record<Kind, string> = theirs;
		expect(Object.keys(own)).toContain("internal");
	});

	it("names things in English as the service does", async () => {
		const served = async (path: string) => (await (await app.request(path)).json()) as never;
		const { fluids } = (await served("/v1/fluids")) as { fluids: Thing[] };
		const { insulations } = (await served("/v1/insulations")) as { insulations: Thing[] };
		const byId = (things: Thing[]) => Object.fromEntries(things.map(({ id, name }) => [id, name]));
		expect(WIDGET.en.names.fluids).toEqual(byId(fluids));
		expect(WIDGET.en.names.insulations).toEqual(byId(insulations));
		const { text } = sourcesIn("src/heat").find(({ path }) => path.endsWith("/wall-materials.ts"))!;
		const walls = { ...WIDGET.en.names.plastics, ...ANSWERS.en.further.metals };
		for (const name of Object.values(walls)) expect(text).toContain(`name: "${name}"`);
	});

	it.each(LANGUAGES.filter((language) => language !== "en"))(
		"says in %s all that English says, of the same values",
		(language) => {
			const [here, there] = [new Map(texts(whole(language))), new Map(texts(whole("en")))];
			for (const [path, text] of there) {
				const plural = /^page\.(showers|assumed|at)\./.test(path);
				expect(here.get(path), path).toBeTruthy();
				if (!plural) expect(named(here.get(path)!), path).toEqual(named(text));
				expect(here.get(path), path).not.toBe(text);
			}
			for (const [path] of here)
				expect(/^page\.(showers|assumed|at)\./.test(path) || there.has(path), path).toBe(true);
		},
	);

	it.each(LANGUAGES)("warns in %s in 30 words at most", (language) => {
		for (const [path, text] of texts({ ...WIDGET[language].warmUp, ...ANSWERS[language].further.cautions }))
			expect(text.split(/\s+/).length, path).toBeLessThanOrEqual(30);
	});

	it("has a form for every number that its language tells apart", () => {
		for (const language of LANGUAGES)
			for (const category of new Intl.PluralRules(language).resolvedOptions().pluralCategories)
				for (const forms of [WIDGET[language].page.showers, WIDGET[language].page.assumed])
					expect(forms[category], `${language} ${category}`).toBeTruthy();
	});

	it("speaks only of values that a rule sends with its caution, in the unit that it sends", () => {
		const sources = [...rules, ...sourcesIn("src/test-run")].filter(
			({ path }) => !path.endsWith("/codes.ts"),
		);
		for (const [code, text] of texts({ ...WIDGET.en.warmUp.cautions, ...ANSWERS.en.further.cautions })) {
			const rule = sources.filter((source) => source.text.includes(`"${code}"`)).map((source) => source.text);
			expect(rule.length, code).toBeGreaterThan(0);
			for (const name of named(text)) expect(sent(rule.join("\n")), code).toContain(name);
		}
	});

	it("falls back on English", () => {
		expect(["es-MX", "AR", "de", "", null].map(languageFor)).toEqual(["es", "ar", "en", "en", "en"]);
	});
});

const SUFFIXES: Readonly<Record<string, string>> = {
	...{ difference: "K", pressure: "Kpa", volume: "L", area: "M2", length: "M", duration: "Min", power: "W" },
	...{ irradiance: "WPerM2", energy: "Kwh", ratio: "" },
};

/** Names under which a rule's parameters leave the service: quantities with their unit, texts as they are. */
function sent(rule: string): string[] {
	const quantities = [...rule.matchAll(/(\w+): (?:temperature\(|\{\s*kind: "(\w+)")/g)];
	return [
		...quantities.map(([, name, kind]) => name + (kind === undefined ? "C" : SUFFIXES[kind]!)),
		...["fluid", "place", "material", "rows"].filter((name) => new RegExp(`\\b${name}\\b`).test(rule)),
	];
}

interface Thing {
	readonly id: string;
	readonly name: string;
}

const SITE = { latitude: 31.2, longitude: -7.9, elevationM: 2350 };
const DAY = { site: SITE, date: "2026-01-15", dish: { diameterM: 2 }, tank: { volumeL: 150 } };
const INSTANT = { site: SITE, dish: { diameterM: 2 }, wantedTemperatureC: 40 };
const FROST = { ambientMinC: -12, ambientMaxC: 3 };
const GALVANISED = { wallMaterial: "galvanisedSteel" };

/** Requests whose answers hold as many codes as can be had from a few. */
const REQUESTS: readonly (readonly [path: string, body: object])[] = [
	...Object.entries(contract.paths).flatMap(([path, item]) =>
		"post" in item && path !== "/v1/batch"
			? Object.values(item.post.requestBody.content["application/json"].examples).map(
					({ value }) => [path, value] as const,
				)
			: [],
	),
	[
		"/v1/tank/warm-up",
		{
			...DAY,
			dish: { diameterM: 3 },
			tank: { volumeL: 60, vented: false, reliefPressureKpa: 300, ...GALVANISED },
			site: { ...SITE, elevationM: 4000 },
			sky: FROST,
		},
	],
	["/v1/tank/warm-up", { ...DAY, dish: { diameterM: 1 }, tank: { volumeL: 300, ...GALVANISED } }],
	["/v1/tank/warm-up", { ...DAY, loop: { fluid: "water" }, sky: FROST }],
	["/v1/tank/warm-up", { ...DAY, loop: { fluid: "water" } }],
	["/v1/tank/warm-up", { ...DAY, coil: { material: "polyethylene" }, receiver: { kind: "openCoil" } }],
	["/v1/instant/feasibility", { ...INSTANT, date: "2026-01-15", sky: FROST }],
];

interface Coded {
	readonly subject: Subject;
	readonly code: string;
	readonly parameters: Readonly<Record<string, unknown>>;
}

/** What each list or field of an answer holds. */
const SUBJECTS: Readonly<Record<string, Subject>> = {
	...{ cautions: "cautions", newCautions: "cautions", reason: "reasons", reasons: "instantReasons" },
	...{ advice: "runAdvice", rankingAdvice: "rankingAdvice" },
};

function codesIn(answer: unknown, subject?: Subject): Coded[] {
	if (typeof answer !== "object" || answer === null) return [];
	if (Array.isArray(answer)) return answer.flatMap((one) => codesIn(one, subject));
	const { code, parameters } = { parameters: { ...answer }, ...answer } as Partial<Coded>;
	if (subject !== undefined && code !== undefined) return [{ subject, code, parameters: parameters! }];
	return Object.entries(answer).flatMap(([name, value]) => codesIn(value, SUBJECTS[name]));
}

it("whatever the service answers can be said in every language and unit, of the values that it sends", async () => {
	const found: Coded[] = [];
	for (const [path, value] of REQUESTS) {
		const body = JSON.stringify(value);
		const headers = { "content-type": "application/json", "content-length": String(body.length) };
		const response = await app.request(path, { method: "POST", headers, body });
		const answer: unknown = await response.json();
		expect(response.status, JSON.stringify(answer)).toBe(200);
		found.push(...codesIn(answer));
	}
	for (const { subject, code, parameters } of found)
		for (const language of LANGUAGES)
			for (const units of ["metric", "us"] as const) {
				const said = sentence(language, subject, code, parameters, units);
				expect(said, `${language} ${code}`).toBeTruthy();
				expect(said, `${language} ${code}`).not.toMatch(/[{}]|NaN|undefined/);
				if (language === "ar") expect(outside(said!), code).not.toMatch(/[\dA-Za-z°%]/);
			}
});

describe("Spanish", () => {
	const { page } = WIDGET.es;
	const es = (code: string, parameters: Coded["parameters"]) =>
		plain(sentence("es", "cautions", code, parameters)!);

	it("has the evening of no day begin in the afternoon", () => {
		for (const [path, text] of texts(whole("es"))) expect(text, path).not.toMatch(/por la tarde/i);
	});

	it.each([
		["metric", "01:05", "a la 1:05"],
		["metric", "13:05", "a las 13:05"],
		["metric", "21:00", "a las 21:00"],
		["us", "13:05", "a la 1:05 p. m."],
		["us", "14:30", "a las 2:30 p. m."],
	] as const)("tells the time in %s at %s", (units, clock, words) => {
		const { at, say } = voice("es", units);
		expect(at(`2026-06-15T${clock}:00+02:00`).replaceAll(/[\u00a0\u202f]/g, " ")).toBe(words);
		expect(say(page.hotAt, { at: at(`2026-06-15T${clock}:00+02:00`) })).toContain("caliente a la");
	});

	it("has a material reach a temperature, not see it", () => {
		const parameters = { place: "receiver", material: "cellular glass", hottestC: 884.7, limitC: 430 };
		expect(es("laggingTooHot", parameters)).toContain("(receptor: vidrio celular) puede alcanzar 885 °C");
	});

	it("names the flash point, at which an oil does not yet burn by itself", () => {
		const parameters = { fluid: "Mineral oil ISO VG 32", flashPointC: 210, stagnationTemperatureC: 875 };
		for (const code of ["fluidBurns", "fluidAboveFlashPoint"]) {
			expect(es(code, parameters)).toContain("punto de inflamación, unos 210 °C");
			expect(es(code, parameters)).not.toMatch(/se inflama/);
		}
	});
});

describe("Arabic", () => {
	const ar = (code: string, parameters: Coded["parameters"] = {}) =>
		sentence("ar", "cautions", code, parameters)!;

	it("uses the words of its codes and trades", () => {
		for (const code of ["fluidBurns", "fluidAboveFlashPoint"])
			expect(ar(code)).toContain("كود الوقاية من الحريق");
		expect(ar("legionella")).toContain("الاشتراطات الصحية");
		expect(ar("loopFluidBoils")).toContain("برفع ضغط الدائرة");
		expect(WIDGET.ar.page.hot).toContain("الماء");
		expect(WIDGET.ar.page.notHot).toContain("الماء");
	});

	it.each([
		[0, "أقل من استحمام واحد"],
		[1, "استحمام واحد"],
		[2, "استحمامان"],
		[5, "5 استحمامات"],
		[12, "12 استحمامًا"],
		[100, "100 استحمام"],
	])("counts %i showers", (count, words) => {
		const { plural, texts: page } = voice("ar", "metric");
		expect(plural(page.showers, count)).toBe(words);
		expect(page.gives).not.toContain("واحدة"); // a feminine word beside a masculine one
	});

	it("keeps a sign before its number and a unit behind it", () => {
		expect(ar("tankFreezes", { airC: -12 })).toContain("\u2066\u200e-12\u00a0°C\u2069");
		expect(plain(ar("lowBoilingPoint", { elevationM: 2350, boilingPointC: 92.1 }))).toContain("2,350 متر");
	});
});
