import type { Page } from "playwright-core";
import { describe, expect, it } from "vitest";
import { accessControl } from "../../api/access/access-control.ts";
import { digestOf, hexOf, newKey } from "../../api/access/keys.ts";
import { barriers, overflow, type Scene, stage } from "./stage.ts";

// Where a deployment answers no one without a key: what each page says of it, and that a key entered there is used and not kept.

const visit = stage();
const REFUSED = /Failed to load resource.*40[13]/; // the browser's own note of an answer that is not 2xx

/** A visit to a deployment that answers no one without a key, and a publishable key for its own pages. */
async function keyed(play: (scene: Scene & { key: string }) => Promise<void>, width = 1280): Promise<void> {
	const [key, origins] = [newKey("publishable"), [] as string[]];
	const door = accessControl({
		settings: { rateRequests: 600, rateWindow: 60 },
		keys: [{ id: "own-pages", kind: "publishable", sha256: hexOf(await digestOf(key)), origins }],
		keysRequired: true,
		addressOf: () => "192.0.2.1",
	});
	const scene = (given: Scene) => {
		origins.push(given.home);
		return play({ ...given, key });
	};
	await visit({ viewport: { width, height: 900 } }, scene, REFUSED, { admit: door });
}

const notice = (page: Page) => page.locator("#key");
async function entered(page: Page, key: string): Promise<void> {
	await notice(page).getByLabel("Publishable key").fill(key);
	await notice(page).getByRole("button", { name: "Use this key" }).click();
}

describe("where a key is needed", () => {
	it.each([320, 1280])("the page says so, and shows its chart, at %i px", (width) =>
		keyed(async ({ page, home }) => {
			await page.goto(home);
			await notice(page).getByText("This service answers only requests with an API key").waitFor();
			const chart = page.locator("figure img");
			await chart.scrollIntoViewIfNeeded();
			await expect.poll(() => chart.evaluate((image: HTMLImageElement) => image.naturalWidth)).toBe(600);
			expect(await barriers(page)).toEqual([]);
			expect(await overflow(page)).toBeLessThanOrEqual(0);
		}, width),
	);

	it("a publishable key of this page opens calculator and cards, and nothing keeps it", () =>
		keyed(async ({ page, home, key }) => {
			await page.goto(home);
			await entered(page, key);
			await notice(page).getByText("The key is valid here").waitFor();
			await page.locator("#ask").click();
			await page.locator("raykettle-sizer .headline").waitFor();
			expect(await page.locator("raykettle-sizer .headline").textContent()).toMatch(/^The water is hot at/);
			const card = page.locator('form[data-ask="boiling"]');
			await card.getByRole("button", { name: "Send" }).click();
			await expect.poll(() => card.locator("output").textContent()).toMatch(/^Water boils at 90\.0 °C/);
			expect(
				await page.evaluate(() => [localStorage.length, sessionStorage.length, document.cookie]),
			).toEqual([0, 0, ""]);
			expect(page.url()).not.toContain(key);
		}));

	it("a secret key is not even sent, and a wrong one is told", () =>
		keyed(async ({ page, home }) => {
			await page.goto(home);
			await notice(page).waitFor();
			const sent: string[] = [];
			page.on("request", (request) => sent.push(request.headers()["x-api-key"] ?? ""));
			await entered(page, newKey("secret"));
			await notice(page).getByText("That is a secret key").waitFor();
			expect(sent).toEqual([]);
			await entered(page, newKey("publishable"));
			await notice(page).getByText("This key is unknown").waitFor();
			expect(await page.locator("raykettle-sizer").getAttribute("api-key")).toBeNull();
		}));

	it("the docs say how to give one", () =>
		keyed(async ({ page, home, key }) => {
			await page.goto(`${home}/docs`);
			await page.getByText("This service answers only requests with an API key").waitFor();
			await page.locator(".opblock").first().waitFor();
			expect(await barriers(page)).toEqual([]);
			await page.getByRole("button", { name: "Authorize" }).first().click();
			const dialog = page.locator(".dialog-ux .modal-ux");
			await dialog.locator("input").fill(key);
			await dialog.getByRole("button", { name: "Authorize" }).click();
			await dialog.getByRole("button", { name: "Close" }).last().click();
			const operation = page.locator(".opblock", { hasText: "/v1/boiling-point" });
			await operation.locator(".opblock-summary-control").click();
			await operation.getByRole("button", { name: "Execute" }).click();
			await operation.locator(".live-responses-table").getByText("boilingPointC").first().waitFor();
		}));
});

it.each(["/", "/docs"])("where none is needed, %s speaks of none", (path) =>
	visit({}, async ({ page, home }) => {
		await page.goto(home + path, { waitUntil: "networkidle" });
		expect(await notice(page).isVisible()).toBe(false);
	}),
);
