import { describe, expect, it } from "vitest";
import { Reason } from "../../api/parts/reason.ts";
import { en } from "../../sdk/widget/texts/en.ts";
import { languageFor, TEXTS } from "../../sdk/widget/texts/texts.ts";
import { voice } from "../../sdk/widget/voice.ts";
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
const names = (text: string) =>
	[...new Set([...text.matchAll(/\{(\w+)\}/g)].map(([, name]) => name!))].sort();

/** Codes of the cautions that a warm-up can give, as the rules spell them; the dictionary has these and no others. */
const rules = sourcesIn("src/cautions");
const used = (path: string) => rules.find((rule) => rule.path === path)?.imports ?? [];
const direct = used("src/cautions/cautions.ts");
const warmUpRules = [...direct, ...direct.flatMap(used)];
const hazards = rules
	.filter(({ path }) => warmUpRules.includes(path))
	.flatMap(({ text }) =>
		[...text.matchAll(/code: ([^\n]+)/g)].flatMap(([, line]) =>
			[...line!.matchAll(/"(\w+)"/g)].map(([, code]) => code!),
		),
	);

describe("the dictionary", () => {
	it("has every caution and reason of a warm-up", () => {
		expect(hazards.length).toBeGreaterThan(20);
		expect(hazards).toContain("scald");
		expect(Object.keys(en.hazards).sort()).toEqual([...new Set(hazards)].sort());
		expect(Object.keys(en.reasons).sort()).toEqual([...Reason.shape.code.options].sort());
	});

	it.each(Object.keys(TEXTS).filter((language) => language !== "en"))(
		"says in %s all that English says, of the same values",
		(language) => {
			const [here, there] = [new Map(texts(TEXTS[language]!)), new Map(texts(en))];
			for (const [path, text] of there) {
				if (path.startsWith("names.")) continue;
				const plural = /^(showers|assumed)\./.test(path);
				expect(here.get(path), path).toBeTruthy();
				if (!plural) expect(names(here.get(path)!), path).toEqual(names(text));
				expect(here.get(path), path).not.toBe(text);
			}
			for (const [path] of here)
				expect(/^(names|showers|assumed)\./.test(path) || there.has(path), path).toBe(true);
		},
	);

	it("has a form for every number that its language tells apart", () => {
		for (const [language, { showers, assumed }] of Object.entries(TEXTS))
			for (const category of new Intl.PluralRules(language).resolvedOptions().pluralCategories)
				for (const forms of [showers, assumed])
					expect(forms[category], `${language} ${category}`).toBeTruthy();
	});

	it("falls back on English", () => {
		expect(["es-MX", "AR", "de", "", null].map(languageFor)).toEqual(["es", "ar", "en", "en", "en"]);
	});
});

const CASES = [
	{ diameterM: 3, volumeL: 60, elevationM: 4000, reliefPressureKpa: 300 },
	{ diameterM: 1, volumeL: 300, elevationM: 100 },
	{ diameterM: 2, volumeL: 150, elevationM: 2350, fluid: "water" },
	{
		diameterM: 2,
		volumeL: 150,
		elevationM: 10,
		sky: {},
		tube: "polyethylene",
		receiver: { kind: "openCoil" },
	},
];

it.each(CASES)(
	"what the service gives can be said in every language: %o",
	async ({ diameterM, volumeL, elevationM, fluid, tube, sky, receiver }) => {
		const body = JSON.stringify({
			site: { latitude: 31.2, longitude: -7.9, elevationM },
			date: "2026-01-15",
			sky: sky ?? { ambientMinC: -12, ambientMaxC: 3 },
			...(receiver && { receiver }),
			...(tube && { coil: { material: tube } }),
			dish: { diameterM },
			tank: { volumeL, wallMaterial: "galvanisedSteel" },
			...(fluid && { loop: { fluid } }),
		});
		const headers = { "content-type": "application/json", "content-length": String(body.length) };
		const response = await app.request("/v1/tank/warm-up", { method: "POST", headers, body });
		expect(response.status).toBe(200);
		const { cautions, reason } = (await response.json()) as { cautions: Said[]; reason?: Said };
		expect(cautions.length).toBeGreaterThan(5);
		for (const language of Object.keys(TEXTS))
			for (const units of ["metric", "us"] as const) {
				const { say, texts: words } = voice(language, units);
				const templates: Readonly<Record<string, string>> = { ...words.hazards, ...words.reasons };
				for (const { code, parameters } of [...cautions, ...(reason ? [reason] : [])])
					expect(say(templates[code]!, parameters), `${language} ${code}`).not.toMatch(/[{}]|NaN|undefined/);
			}
	},
);

interface Said {
	readonly code: string;
	readonly parameters: Readonly<Record<string, number | string>>;
}

describe("a voice", () => {
	it("speaks a value in the visitor's units", () => {
		const said = (units: "metric" | "us") =>
			voice("en", units).say("{tankC} {spanK} {tankL} {heightM} {setKpa}", {
				tankC: 60,
				spanK: 10,
				tankL: 200,
				heightM: 2350,
				setKpa: 300,
			});
		expect(said("metric").replaceAll("\u00a0", " ")).toBe("60 °C 10 K 200 L 2,350 m 300 kPa");
		expect(said("us").replaceAll("\u00a0", " ")).toBe("140 °F 18 °F 53 gal 7,710 ft 44 psi"); // 43.5 psi
	});

	it("tells the time by the clock of the place", () => {
		expect(voice("en", "metric").clock("2026-01-15T13:57:19+01:00")).toBe("13:57");
		expect(voice("en", "us").clock("2026-01-15T13:57:19+01:00").replaceAll("\u202f", " ")).toBe("1:57 PM");
	});
});
