import { readFileSync } from "node:fs";
import type { Page } from "playwright-core";
import { describe, expect, it } from "vitest";
import { createRaykettle } from "../../sdk/index.ts";
import { readings } from "../../sdk/widget/numeral.ts";
import { barriers, overflow, stage, supplierSite } from "./stage.ts";

// All that a visitor may meet in the widget: answers, languages, units, keyboards, narrow and dark screens, and whatever fails.

const visit = stage();
const FAILED = /Failed to load resource/; // the browser's own note of an answer that is not 2xx
const headline = (page: Page) => page.locator("raykettle-sizer .headline");
const ask = (page: Page) => page.locator("#ask").click();

/** Contrast of two colours such as `rgb(1, 2, 3)` (WCAG 2.2). */
function contrast(...colours: [string, string]): number {
	const [dark, bright] = colours
		.map((colour) => {
			const [red, green, blue] = colour.match(/\d+/g)!.map((part) => {
				const share = Number(part) / 255;
				return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
			});
			return 0.2126 * red! + 0.7152 * green! + 0.0722 * blue!;
		})
		.sort((a, b) => a - b);
	return (bright! + 0.05) / (dark! + 0.05);
}

/** Words without the signs that keep numbers in their order. */
const plain = (text: string | null) =>
	(text ?? "")
		.replace(/[\u2066-\u2069]/g, "")
		.replaceAll("\u00a0", " ")
		.replaceAll("\u202f", " ");

async function answered(page: Page, home: string): Promise<void> {
	await page.goto(home);
	await ask(page);
	await headline(page).waitFor();
}

/** The page's list of events that the widget sent, from now on. */
async function listened(page: Page, name: string): Promise<() => Promise<Record<string, unknown>[]>> {
	await page.evaluate((type) => {
		const heard: unknown[] = [];
		Object.assign(globalThis, { heard });
		document.addEventListener(type, (event) =>
			heard.push(JSON.parse(JSON.stringify((event as CustomEvent).detail))),
		);
	}, name);
	return () => page.evaluate(() => (globalThis as unknown as { heard: Record<string, unknown>[] }).heard);
}

describe("a visitor", () => {
	it("gets the service's own answer, in words", () =>
		visit({}, async ({ page, home }) => {
			await page.goto(home);
			const events = await listened(page, "raykettle-answer");
			await ask(page);
			await headline(page).waitFor();
			const [{ request }] = (await events()) as [{ request: never }];
			const day = await createRaykettle({ baseUrl: home }).warmUpTank(request);
			expect(request).toMatchObject({
				site: { elevationM: 2350 },
				dish: { diameterM: 2 },
				tank: { volumeL: 200 },
			});
			expect(await headline(page).textContent()).toContain(
				`The water is hot at ${day.targetTime!.slice(11, 16)} on a clear January day`,
			);
			const said = plain(await page.locator("raykettle-sizer .said").textContent());
			expect(said).toContain(
				`The tank supplies ${Math.round(day.usableLitresAt40C)} L at 40 °C: ${Math.floor(day.usableLitresAt40C / 35)} showers of 35 L each.`,
			);
			expect(await page.locator("raykettle-sizer .cautions li").count()).toBe(day.cautions.length);
			expect(plain(await page.locator("raykettle-sizer svg desc").textContent())).toContain(
				"Hot means 60 °C",
			);
		}));

	it("can do all of it with a keyboard", () =>
		visit({}, async ({ page, home }) => {
			await page.goto(home);
			const focused = () => page.evaluate(() => document.activeElement?.shadowRoot?.activeElement?.id ?? "");
			const tabTo = async (id: string) => {
				for (let i = 0; i < 40 && (await focused()) !== id; i++) await page.keyboard.press("Tab");
				expect(await focused()).toBe(id);
			};
			await tabTo("place");
			await page.keyboard.press("End");
			await tabTo("latitude");
			await page.keyboard.type("31.2");
			await tabTo("longitude");
			await page.keyboard.type("-7.9");
			await tabTo("ask");
			await page.keyboard.press("Enter");
			await expect.poll(focused).toBe("elevationM"); // the one that is still open
			await page.keyboard.type("2350");
			await tabTo("need-people");
			await page.keyboard.press("ArrowRight");
			await expect.poll(focused).toBe("need-litres");
			await tabTo("litres");
			await page.keyboard.type("300");
			await page.keyboard.press("Enter");
			await headline(page).waitFor();
			expect(plain(await page.locator("raykettle-sizer .said").textContent())).toContain(
				"enough for the 300 L you need",
			);
		}));

	it("is never given an answer for sea level by silence", () =>
		visit({}, async ({ page, home }) => {
			await page.goto(home);
			const asked: string[] = [];
			page.on("request", (request) => asked.push(new URL(request.url()).pathname));
			await page.locator("#place").selectOption("");
			await page.locator("#latitude").fill("31.2");
			await page.locator("#longitude").fill("-7.9");
			await ask(page);
			await page.locator("#elevationM-fault").waitFor();
			await page.waitForTimeout(200);
			expect(await page.locator("#elevationM").getAttribute("aria-invalid")).toBe("true");
			expect(asked).not.toContain("/v1/tank/warm-up");
			await page.getByText("Some numbers are missing or out of range").waitFor();
		}));

	it("can give the browser's location, and is asked for the elevation that it lacks", () =>
		visit(
			{ geolocation: { latitude: -16.9, longitude: -68.3 }, permissions: ["geolocation"] },
			async ({ page, home }) => {
				await page.goto(home);
				await page.locator("#place").selectOption("");
				await page.locator("#locate").click();
				await page.getByText("Your device does not report its elevation").waitFor();
				expect(await page.locator("#latitude").inputValue()).toBe("-16.9");
				expect(await page.locator("#elevationM").inputValue()).toBe("");
				expect(await page.locator("#month").inputValue()).toBe("7"); // the dark half of the year, down there
			},
		));

	it.each([
		["en", "5.2", 5.2],
		["en", "5,2", 5.2],
		["es", "5,2", 5.2],
		["ar", "٥٫٢", 5.2],
		["ar", "-٥٫٢", -5.2],
	])("in %s may type %s", (language, typed, meant) =>
		visit({}, async ({ page, home }) => {
			await page.goto(home);
			await page.locator(`button[data-lang="${language}"]`).click();
			await page.locator("#place").selectOption("");
			await page.locator("#longitude").pressSequentially(typed);
			const choice = () =>
				page
					.locator("raykettle-sizer")
					.evaluate((sizer) => (sizer as unknown as { choice: { longitude?: number } }).choice.longitude);
			expect(await choice()).toBe(meant);
			await page.locator("#need-litres").check(); // draws the form anew
			expect(await choice()).toBe(meant);
			expect(readings(await page.locator("#longitude").inputValue())).toEqual([meant]);
		}),
	);

	it.each([
		["en", "1,234 can mean 1234 or 1.234. Remove the thousands separator or enter fewer decimals."],
		["es", "1,234 puede significar 1234 o 1,234. Quite el separador de miles o escriba menos decimales."],
		["ar", "1,234 قد يعني 1234 أو 1.234. احذف فاصل الآلاف أو قلّل المنازل العشرية."],
	])("is asked in %s what an ambiguous number means, and keeps it to be fixed", (language, words) =>
		visit({}, async ({ page, home }) => {
			await page.goto(home);
			await page.locator(`button[data-lang="${language}"]`).click();
			await page.locator("#need-litres").check();
			await page.locator("#litres").pressSequentially("1,234");
			await ask(page);
			expect(plain(await page.locator("#litres-fault").textContent())).toBe(words);
			expect(await page.locator("#litres").inputValue()).toBe("1,234");
			expect(await barriers(page)).toEqual([]);
			await page.locator("#litres").fill("1,234.5");
			await ask(page);
			await headline(page).waitFor();
		}),
	);

	it("reads US units", () =>
		visit({}, async ({ page, home }) => {
			await answered(page, home);
			await page.locator("#units-us").check();
			const said = plain(await page.locator("raykettle-sizer .said").textContent());
			expect(said).toMatch(/hot at \d+:\d\d PM/);
			expect(said).toContain("140 °F"); // 60 °C
			expect(said).toContain("showers of 9.2 gal each"); // 35 L
			expect(await page.locator("raykettle-sizer svg").textContent()).toContain("BTU/h·ft²");
			await page.locator("#place").selectOption("");
			await page.locator("#elevationM").fill("1000");
			await page.locator("#units-metric").check();
			expect(await page.locator("#elevationM").inputValue()).toBe("305"); // 1000 ft
		}));

	it("gets a July day in July's air, and reads whose air it is", () =>
		visit({}, async ({ page, home }) => {
			await page.goto(home);
			const events = await listened(page, "raykettle-answer");
			const told = async () => plain(await page.locator("raykettle-sizer .shown > .hint").textContent());
			const highest = (answer: { series: { ambientC: number[] } }) => Math.max(...answer.series.ambientC);
			for (const month of ["1", "7"]) {
				await page.locator("#month").selectOption(month);
				await ask(page);
				await page.locator("raykettle-sizer .shown:not(.stale) > .hint").waitFor();
				expect(await told()).toMatch(/The supplier's list states air from -?\d+ °C to \d+ °C\.$/);
			}
			await page.locator("#place").selectOption("");
			await page.locator("#latitude").fill("47");
			await page.locator("#longitude").fill("8");
			await page.locator("#elevationM").fill("450");
			await page.locator("#month").selectOption("7");
			await ask(page);
			await page.getByText("The service assumed air").waitFor();
			const [january, july, own] = (await events()) as { request: never; answer: never }[];
			expect(highest(july!.answer)).toBeGreaterThan(highest(january!.answer) + 10); // a mountain's summer over its winter
			const { assumed } = own!.answer as { assumed: { pointer: string; value: number }[] };
			const most = assumed.find(({ pointer }) => pointer === "/sky/ambientMaxC")!.value; // so none of the list's
			expect(highest(own!.answer)).toBeCloseTo(most, 0);
			expect(await told()).toMatch(
				new RegExp(`to ${Math.round(most)} °C\\. Compare that with July at your place\\.$`),
			);
		}));

	it("learns why the water stays cold", () =>
		visit({}, async ({ page, home }) => {
			await page.goto(home);
			await page.locator("#dish").selectOption("one-four");
			await page.locator("#tank").selectOption("three-hundred");
			await ask(page);
			await headline(page).waitFor();
			expect(await headline(page).textContent()).toBe(
				"The water does not get hot enough on a clear January day",
			);
			expect(plain(await page.locator("raykettle-sizer .said").textContent())).toMatch(
				/The day's heat brings the tank to \d+ °C/,
			);
		}));

	it("on a phone sees the answer come, under a form that is longer than the screen", () =>
		visit({ viewport: { width: 375, height: 500 } }, async ({ page, home }) => {
			await page.goto(home);
			await page.locator("#people").focus(); // the button is below the edge
			await page.keyboard.press("Enter");
			await headline(page).waitFor();
			const seen = () =>
				page
					.locator("raykettle-sizer .said")
					.evaluate(
						(said) =>
							said.getBoundingClientRect().bottom <= innerHeight + 1 &&
							said.getBoundingClientRect().top >= -1,
					);
			await expect.poll(seen).toBe(true);
		}));

	it("asks again without the page jumping", () =>
		visit({}, async ({ page, home }) => {
			await answered(page, home);
			await page.route("**/v1/tank/warm-up", async (route) => {
				await new Promise((later) => setTimeout(later, 1500));
				await route.continue();
			});
			const height = () => page.evaluate(() => document.documentElement.scrollHeight);
			const before = await height();
			await ask(page);
			await page.getByText("Calculating").waitFor();
			expect(before - (await height())).toBeLessThan(120); // the words alone are shorter meanwhile
			expect(await page.locator("raykettle-sizer .shown.stale figure svg").count()).toBe(1);
			await headline(page).waitFor();
			expect(await page.locator("raykettle-sizer .stale").count()).toBe(0);
		}));

	it("reads each hour under the chart, in every language and unit, on the narrowest screen", () =>
		visit({ viewport: { width: 320, height: 700 } }, async ({ page, home }) => {
			await page.goto(home);
			await page.locator("#units-us").check();
			for (const language of ["en", "es", "ar"]) {
				await page.locator(`button[data-lang="${language}"]`).click();
				await ask(page);
				await headline(page).waitFor();
				const [boxes, paper] = await page.locator("raykettle-sizer figure svg").evaluate((svg) => {
					const hours = [...svg.querySelectorAll('text[text-anchor="middle"]')].map((one) =>
						one.getBoundingClientRect(),
					);
					return [
						hours.map(({ left, right }) => ({ left, right })),
						svg.getBoundingClientRect().right,
					] as const;
				});
				expect(boxes.length).toBeGreaterThan(1);
				for (const [i, { right }] of boxes.entries())
					expect(right, language).toBeLessThan(boxes[i + 1]?.left ?? paper);
			}
		}));

	it("sees where the keyboard is, light and dark", async () => {
		for (const colorScheme of ["light", "dark"] as const)
			await visit({ colorScheme }, async ({ page, home }) => {
				await page.goto(home);
				await page.locator("#people").focus();
				const [ring, ground] = await page
					.locator("#people")
					.evaluate((field) => [
						getComputedStyle(field).outlineColor,
						getComputedStyle(field.closest(".asked")!).backgroundColor,
					]);
				expect(contrast(ring!, ground!), colorScheme).toBeGreaterThanOrEqual(3); // WCAG 2.2, 1.4.11
				await page.locator("nav a").first().focus();
				const [link, paper] = await page
					.locator("nav a")
					.first()
					.evaluate((one) => [
						getComputedStyle(one).outlineColor,
						getComputedStyle(document.body).backgroundColor,
					]);
				expect(contrast(link!, paper!), colorScheme).toBeGreaterThanOrEqual(3);
			});
	});

	it("sees that figures belong to an earlier choice", () =>
		visit({}, async ({ page, home }) => {
			await answered(page, home);
			await page.locator("#tank").selectOption("one-hundred");
			await page.getByText("These figures belong to the earlier choice").waitFor();
		}));
});

describe.each([
	["320 px", { viewport: { width: 320, height: 700 } }],
	["1280 px", { viewport: { width: 1280, height: 900 } }],
	["dark", { colorScheme: "dark" as const }],
	["320 px, dark", { viewport: { width: 320, height: 700 }, colorScheme: "dark" as const }],
])("%s", (_, options) => {
	it("has no barrier, runs over no edge and writes large enough", () =>
		visit(options, async ({ page, home }) => {
			await answered(page, home);
			expect(await barriers(page)).toEqual([]);
			expect(await overflow(page)).toBeLessThanOrEqual(0);
			const [inside, letter] = await page
				.locator("raykettle-sizer svg")
				.evaluate((svg) => [
					svg.getBoundingClientRect().right <= svg.parentElement!.getBoundingClientRect().right + 0.5,
					13 * (svg.getBoundingClientRect().width / Number(svg.getAttribute("width"))),
				]);
			expect(inside).toBe(true);
			expect(letter).toBeGreaterThanOrEqual(12.5);
			const ground = await page.evaluate(() => getComputedStyle(document.body).backgroundColor);
			const isDark = Number(/\d+/.exec(ground)?.[0]) < 100;
			expect(isDark).toBe("colorScheme" in options);
		}));
});

describe.each([
	["es", "ltr", /^El agua está caliente a las \d\d:\d\d en un día despejado de enero$/],
	["ar", "rtl", /^يصبح الماء ساخنًا في الساعة \d\d:\d\d في يوم صافٍ من شهر .+$/],
])("in %s", (language, direction, words) => {
	it("speaks, cautions and reads in its own direction", () =>
		visit({}, async ({ page, home }) => {
			await page.goto(home);
			await page.locator(`button[data-lang="${language}"]`).click();
			await ask(page);
			await headline(page).waitFor();
			expect(plain(await headline(page).textContent())).toMatch(words);
			const frame = page.locator("raykettle-sizer .frame");
			expect(await frame.evaluate((element) => getComputedStyle(element).direction)).toBe(direction);
			expect(await page.locator('raykettle-sizer .cautions [lang="en"]').count()).toBe(0);
			expect(await page.locator("raykettle-sizer .told").textContent()).not.toMatch(/\{\w+\}|undefined|NaN/);
			expect(await barriers(page)).toEqual([]);
			expect(await overflow(page)).toBeLessThanOrEqual(0);
		}));
});

describe("when things go wrong", () => {
	it("a service that is down is no mystery", () =>
		visit(
			{},
			async ({ page, home, endService }) => {
				await page.goto(home);
				const events = await listened(page, "raykettle-trouble");
				await endService();
				await ask(page);
				await page.getByText("No connection to the service").waitFor();
				expect(await events()).toMatchObject([{ trouble: "offline" }]);
				expect(
					await page.locator("raykettle-sizer").getByRole("button", { name: "Try again" }).isVisible(),
				).toBe(true);
				await page.locator("raykettle-sizer").getByRole("button", { name: "Try again" }).press("Enter");
				await expect
					.poll(() => page.evaluate(() => document.activeElement?.shadowRoot?.activeElement?.id))
					.toBe("ask"); // and not nowhere
			},
			FAILED,
		));

	it("a 422 says what does not fit", () =>
		visit(
			{},
			async ({ page, home }) => {
				await page.goto(home);
				await page.locator("raykettle-sizer").evaluate((sizer) => {
					const given = (sizer as unknown as { catalogue: { plant: object } }).catalogue;
					Object.assign(sizer, {
						catalogue: { ...given, plant: { ...given.plant, coil: { lengthM: 400 } } },
					});
				});
				await ask(page);
				await headline(page).waitFor();
				expect(await headline(page).textContent()).toBe("The service cannot answer this request");
				const told = await page.locator("raykettle-sizer .said").textContent();
				expect(told).toMatch(/coil/i);
				expect(told).toMatch(/Request [\w-]{36}/);
				expect(await barriers(page)).toEqual([]);
			},
			FAILED,
		));

	it("a slow answer is waited for, and the wait is told", () =>
		visit({}, async ({ page, home }) => {
			await page.goto(home);
			await page.route("**/v1/tank/warm-up", async (route) => {
				await new Promise((later) => setTimeout(later, 3600));
				await route.continue();
			});
			await ask(page);
			await page.getByText("Calculating").waitFor();
			expect(await page.locator("raykettle-sizer .frame").getAttribute("aria-busy")).toBe("true");
			await page.getByText("Still calculating").waitFor();
			await headline(page).waitFor();
			expect(await page.locator("raykettle-sizer .frame").getAttribute("aria-busy")).toBe("false");
		}));

	it("a busy service is asked again, and then said to be busy", () =>
		visit(
			{},
			async ({ page, home }) => {
				await page.goto(home);
				let asked = 0;
				await page.route("**/v1/tank/warm-up", (route) => {
					asked++;
					return route.fulfill({ status: 503, headers: { "Retry-After": "0" }, body: "{}" });
				});
				await ask(page);
				await page.getByText("The service is busy").waitFor();
				expect(asked).toBe(3);
			},
			FAILED,
		));

	const CORS = { "Access-Control-Allow-Origin": "*", "Access-Control-Expose-Headers": "Retry-After" };
	const problem = (status: number, detail: string) =>
		JSON.stringify({ type: "urn:raykettle:problem:x", title: "x", status, detail, requestId: "r-1" });

	it.each([
		[401, "en", "This page is not allowed to use the service. Inform the owner of the page.", true],
		[403, "es", "Esta página no tiene permiso para usar el servicio. Avise a su responsable.", true],
		[429, "en", "Too many requests from here. Try again in 2 min.", false],
		[429, "es", "Demasiadas peticiones desde aquí. Vuelva a intentarlo en 2 min.", false],
		[429, "ar", "وردت طلبات كثيرة من هنا. أعد المحاولة بعد 2 د.", false],
	])("a %i reads well in %s", (status, language, words, explained) =>
		visit(
			{},
			async ({ page, home }) => {
				await page.goto(home);
				const events = await listened(page, "raykettle-trouble");
				await page.locator(`button[data-lang="${language}"]`).click();
				await page.route("**/v1/tank/warm-up", (route) =>
					route.fulfill({
						status,
						headers: { ...CORS, "Retry-After": "95" }, // longer than the client waits by itself
						contentType: "application/problem+json",
						body: problem(status, "Said to whoever made the page"),
					}),
				);
				await ask(page);
				await headline(page).waitFor();
				expect(plain(await headline(page).textContent())).toBe(words);
				const told = await page.locator("raykettle-sizer .said").textContent();
				expect(told?.includes("Said to whoever made the page")).toBe(explained);
				expect(told).toContain("r-1");
				expect(await events()).toMatchObject([{ trouble: status === 429 ? "tooOften" : "barred" }]);
				expect(await barriers(page)).toEqual([]);
			},
			FAILED,
		),
	);

	it.each([
		[{ dishes: [], tanks: [] }, "dishes is empty"],
		[
			{
				dishes: [{ id: "d", name: "D", dish: {} }],
				tanks: [{ id: "t", name: "T", tank: {} }],
				places: [{ id: "p", name: "P", latitude: 1, longitude: 2 }],
			},
			"places[0] (p) lacks elevationM",
		],
	])("a faulty list %# is told to whoever wrote it", (list, fault) =>
		visit({}, async ({ page, home }) => {
			await page.goto(home);
			await page
				.locator("raykettle-sizer")
				.evaluate((sizer, given) => Object.assign(sizer, { catalogue: given }), list);
			await page.getByText(fault).waitFor();
		}),
	);
});

describe("on a supplier's own site, under a strict policy", () => {
	const readme = readFileSync(new URL("../../sdk/README.md", import.meta.url), "utf8");
	const snippet = /```html\n([\s\S]*?)```/.exec(readme)![1]!;

	it("the markup that the README prints works", () =>
		visit({}, async ({ page, home }) => {
			await supplierSite(home, snippet.replaceAll("https://solar.example.org", home), async (url) => {
				await page.goto(url);
				await ask(page);
				await headline(page).waitFor();
				expect(await headline(page).textContent()).toMatch(/^The water is hot at/);
				const ground = await page
					.locator("#ask")
					.evaluate((button) => getComputedStyle(button).backgroundColor);
				expect(ground).toBe("rgb(11, 110, 117)"); // its style sheet is at work
			});
		}));

	it("a publishable key goes with the question, and none where there is none", () =>
		visit({}, async ({ page, home }) => {
			const keyed = snippet.replace("catalogue=", 'api-key="rk_publishable_x" catalogue=');
			for (const [body, sent] of [
				[keyed, "rk_publishable_x"],
				[snippet, undefined],
			] as const)
				await supplierSite(home, body.replaceAll("https://solar.example.org", home), async (url) => {
					await page.goto(url);
					const asked = page.waitForRequest((request) => request.method() === "POST");
					await ask(page);
					expect((await (await asked).allHeaders())["x-api-key"]).toBe(sent);
					await headline(page).waitFor(); // so the preflight let the header through
					expect(await headline(page).textContent()).toMatch(/^The water is hot at/);
				});
		}));

	it("a list may stand in the page itself, and colours are the supplier's", () =>
		visit({}, async ({ page, home }) => {
			const list = readFileSync(new URL("../../api/pages/cedar-row.json", import.meta.url), "utf8");
			const body = `<script type="module" src="${home}/widget.js"></script><raykettle-sizer units="us"><script type="application/json">${list}</script></raykettle-sizer>`;
			await supplierSite(home, body, async (url) => {
				await page.goto(url);
				await page.evaluate(() =>
					document
						.querySelector<HTMLElement>("raykettle-sizer")!
						.style.setProperty("--raykettle-water", "rgb(90, 0, 90)"),
				);
				await ask(page);
				await headline(page).waitFor();
				expect(
					await page.locator("#ask").evaluate((button) => getComputedStyle(button).backgroundColor),
				).toBe("rgb(90, 0, 90)");
				expect(await page.locator("#units-us").isChecked()).toBe(true);
			});
		}));
});
