import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { SIZER, shopPage, stage } from "./stage.ts";

// The widget's list: whichever of page, script and list comes first, it is fetched once and leaves the visitor's choice.

const visit = stage();
const list = readFileSync(new URL("../../api/pages/cedar-row.json", import.meta.url), "utf8");

describe("the list", () => {
	it("is fetched once by an element that was there before the script", () =>
		visit({}, async ({ page, home }) => {
			let fetched = 0;
			await page.route("**/pages/cedar-row.json", (route) => {
				fetched++;
				return route.fulfill({ contentType: "application/json", body: list });
			});
			await shopPage(page, home, SIZER);
			await page.locator("#ask").waitFor();
			await page.locator("raykettle-sizer").evaluate((sizer) => document.body.append(sizer)); // moved about
			await page.waitForTimeout(200);
			expect(fetched).toBe(1);
		}));

	it("leaves the visitor's choice when it comes again", () =>
		visit({}, async ({ page, home }) => {
			await shopPage(page, home, SIZER);
			await page.locator("#tank").selectOption("three-hundred");
			await page.locator("#month").selectOption("7");
			await page.locator("#people").fill("9");
			const again = page.waitForResponse("**/pages/cedar-row.json?again");
			await page
				.locator("raykettle-sizer")
				.evaluate((sizer) => sizer.setAttribute("catalogue", "/pages/cedar-row.json?again"));
			await again;
			await page.waitForTimeout(200);
			expect(await page.locator("#tank").inputValue()).toBe("three-hundred");
			expect(await page.locator("#month").inputValue()).toBe("7");
			expect(await page.locator("#people").inputValue()).toBe("9");
		}));

	it("that comes late gives way to one that was set meanwhile", () =>
		visit({}, async ({ page, home }) => {
			await page.route("**/pages/cedar-row.json", async (route) => {
				await new Promise((later) => setTimeout(later, 800));
				await route.fulfill({ contentType: "application/json", body: list });
			});
			const late = page.waitForResponse("**/pages/cedar-row.json");
			await shopPage(page, home, SIZER);
			const own = JSON.parse(list) as { tanks: { id: string }[] };
			await page
				.locator("raykettle-sizer:defined")
				.evaluate((sizer, catalogue) => Object.assign(sizer, { catalogue }), {
					...own,
					tanks: [{ ...own.tanks[0]!, id: "own" }],
				});
			await late;
			await page.waitForTimeout(200);
			expect(await page.locator("#tank").inputValue()).toBe("own");
		}));

	it("may be set on the element before the script is there", () =>
		visit({}, async ({ page, home }) => {
			await shopPage(page, home, "<raykettle-sizer></raykettle-sizer>", false);
			await page
				.locator("raykettle-sizer")
				.evaluate((sizer, catalogue) => Object.assign(sizer, { catalogue }), JSON.parse(list));
			await page.addScriptTag({ type: "module", url: "/widget.js" });
			await page.locator("#tank").selectOption("three-hundred");
			const read = () =>
				page
					.locator("raykettle-sizer")
					.evaluate((sizer) => [
						Object.hasOwn(sizer, "catalogue"),
						(sizer as unknown as { catalogue: { tanks: unknown[] } }).catalogue.tanks.length,
						(sizer as unknown as { choice: { tankId: string } }).choice.tankId,
					]);
			expect(await read()).toEqual([false, 3, "three-hundred"]);
		}));
});

it("an answer for what the visitor has changed meanwhile says so", () =>
	visit({}, async ({ page, home }) => {
		await shopPage(page, home, SIZER);
		await page.route("**/v1/tank/warm-up", async (route) => {
			await new Promise((later) => setTimeout(later, 600));
			await route.continue();
		});
		await page.locator("#ask").click();
		await page.locator("#tank").selectOption("one-hundred");
		await page.locator("raykettle-sizer .headline").waitFor();
		expect(await page.locator("raykettle-sizer .notice").textContent()).toContain("You made a change");
	}));
