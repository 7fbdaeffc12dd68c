import { expect, it } from "vitest";
import { barriers, overflow, SIZER, shopPage, stage } from "./stage.ts";

// Each page and the widget once, in one browser; pages, keyed, sizer, sizer-list and sizer-width.slow.test.ts have the rest.

const visit = stage();

it("the supplier's page answers live, shows the service's chart, and has no barrier", () =>
	visit({}, async ({ page, home }) => {
		await page.goto(home);
		const card = page.locator('form[data-ask="boiling"]');
		await card.getByRole("button", { name: "Send" }).click();
		await expect.poll(() => card.locator("output").textContent()).toMatch(/^Water boils at 90\.0 °C/); // IAPWS: 89.96 °C at 3000 m
		const chart = page.locator("figure img");
		await chart.scrollIntoViewIfNeeded();
		await expect.poll(() => chart.evaluate((image: HTMLImageElement) => image.naturalWidth)).toBe(600);
		expect(await barriers(page)).toEqual([]);
		expect(await overflow(page)).toBeLessThanOrEqual(0);
	}));

it("the docs show the contract's operations", () =>
	visit({}, async ({ page, home }) => {
		await page.goto(`${home}/docs`);
		await page.locator(".opblock", { hasText: "/v1/tank/warm-up" }).waitFor();
	}));

it("the widget answers a visitor on the narrowest screen", () =>
	visit({ viewport: { width: 320, height: 700 } }, async ({ page, home }) => {
		await shopPage(page, home, SIZER);
		await page.locator("#ask").click();
		await page.locator("raykettle-sizer .headline").waitFor();
		expect(await page.locator("raykettle-sizer .headline").textContent()).toMatch(/^The water is hot at/);
		expect(await overflow(page)).toBeLessThanOrEqual(0);
	}));
