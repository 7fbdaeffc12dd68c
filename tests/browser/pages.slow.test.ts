import { describe, expect, it } from "vitest";
import { barriers, overflow, stage } from "./stage.ts";

// Every card and try-out of the supplier's page and of the docs, their policy and their barriers, from 320 px to 1280.

const visit = stage();

describe("the supplier's page", () => {
	it.each([
		[
			"boiling",
			/^Water boils at 90\.0 °C; the air pressure is 70\.1 kPa/,
			"GET /v1/boiling-point?elevationM=3000",
		], // ISO 2533: 70.12 kPa at 3000 m; IAPWS: 89.96 °C
		["sun", /horizon/, "GET /v1/sun/position?"],
		["limits", /^Service \d+\.\d+\.\d+, contract/, "GET /v1/meta"],
	])("asks %s live", (name, words, address) =>
		visit({}, async ({ page, home }) => {
			await page.goto(home);
			const card = page.locator(`form[data-ask="${name}"]`);
			await card.getByRole("button", { name: "Send" }).click();
			await expect.poll(() => card.locator("output").textContent()).toMatch(words);
			expect(await card.locator("code").textContent()).toContain(address);
		}),
	);

	it("takes an elevation with a fraction, and leaves no answer beside another question", () =>
		visit({}, async ({ page, home }) => {
			await page.goto(home);
			const card = page.locator('form[data-ask="boiling"]');
			await card.locator("input").fill("2350.5");
			await card.getByRole("button", { name: "Send" }).click();
			await expect.poll(() => card.locator("output").textContent()).toMatch(/^Water boils at 92\.1 °C/); // IAPWS: 92.15 °C
			await card.locator("input").fill("2350,5"); // a decimal comma, which a browser's number field drops
			await card.getByRole("button", { name: "Send" }).click();
			await expect.poll(() => card.locator("output").textContent()).toMatch(/^Water boils at 92\.1 °C/);
			await card.locator("input").fill("2,350");
			await card.getByRole("button", { name: "Send" }).click();
			await expect
				.poll(() => card.locator("output").textContent())
				.toBe("2,350 can mean 2350 or 2.35. Remove the thousands separator or enter fewer decimals.");
			await card.locator("input").fill("99999");
			expect(await card.locator("output").textContent()).toBe("");
		}));

	it("shows a chart that the service drew, and fetches nothing from elsewhere", () =>
		visit({}, async ({ page, home }) => {
			const asked: string[] = [];
			page.on("request", (request) => asked.push(new URL(request.url()).origin));
			await page.goto(home, { waitUntil: "networkidle" });
			const chart = page.locator("figure img");
			expect(await chart.evaluate((image: HTMLImageElement) => image.naturalWidth)).toBe(600);
			expect([...new Set(asked)]).toEqual([home]);
		}));

	it.each([
		[320, "light"],
		[1280, "light"],
		[1280, "dark"],
	] as const)("has no barrier at %i px, %s", (width, colorScheme) =>
		visit({ viewport: { width, height: 900 }, colorScheme }, async ({ page, home }) => {
			await page.goto(home, { waitUntil: "networkidle" });
			expect(await barriers(page)).toEqual([]);
			expect(await overflow(page)).toBeLessThanOrEqual(0);
		}),
	);

	it("is under a policy that lets no foreign or inline script in", () =>
		visit(
			{},
			async ({ page, home, complaints }) => {
				for (const path of ["/", "/docs"]) {
					const response = await page.goto(home + path);
					const policy = response?.headers()["content-security-policy"] ?? "";
					expect(policy).toContain("script-src 'self';");
					expect(policy).not.toContain("unsafe");
					await page.evaluate(() => {
						const script = document.createElement("script");
						script.textContent = "globalThis.broken = true";
						document.head.append(script);
					});
					expect(await page.evaluate(() => "broken" in globalThis)).toBe(false);
				}
				expect(complaints.length).toBe(2);
			},
			/Content Security Policy/,
		));
});

describe("the docs", () => {
	it("show every operation and let one be tried", () =>
		visit({}, async ({ page, home }) => {
			const asked: string[] = [];
			page.on("request", (request) => asked.push(request.url()));
			await page.goto(`${home}/docs`);
			await page.locator(".opblock").first().waitFor();
			const contract = (await (await fetch(`${home}/openapi.json`)).json()) as {
				paths: Record<string, object>;
			};
			expect(await page.locator(".opblock").count()).toBe(
				Object.values(contract.paths).flatMap(Object.keys).length,
			);
			const operation = page.locator(".opblock", { hasText: "/v1/boiling-point" });
			await operation.locator(".opblock-summary-control").click();
			await operation.getByRole("button", { name: "Execute" }).click();
			await operation.locator(".live-responses-table").getByText("boilingPointC").first().waitFor();
			expect(asked.some((url) => url.startsWith(`${home}/v1/boiling-point?elevationM=`))).toBe(true);
			expect(asked.filter((url) => !url.startsWith(home) && !url.startsWith("data:"))).toEqual([]);
		}));

	it("try a POST with the contract's own example", () =>
		visit({}, async ({ page, home }) => {
			await page.goto(`${home}/docs`);
			const operation = page.locator(".opblock", { hasText: "/v1/tank/warm-up" });
			await operation.locator(".opblock-summary-control").click();
			await operation.getByRole("button", { name: "Execute" }).click();
			await operation.locator(".live-responses-table").getByText("timeToTargetMin").first().waitFor();
		}));

	it("send a key that was filled in with each request, and have no barrier there", () =>
		visit({}, async ({ page, home }) => {
			await page.goto(`${home}/docs`);
			await page.getByRole("button", { name: "Authorize" }).first().click();
			const dialog = page.locator(".dialog-ux .modal-ux");
			await dialog.locator("input").fill("rk_publishable_x");
			expect(await barriers(page)).toEqual([]);
			await dialog.getByRole("button", { name: "Authorize" }).click();
			expect(await barriers(page)).toEqual([]);
			await dialog.getByRole("button", { name: "Close" }).last().click();
			const operation = page.locator(".opblock", { hasText: "/v1/boiling-point" });
			await operation.locator(".opblock-summary-control").click();
			const asked = page.waitForRequest(/boiling-point/);
			await operation.getByRole("button", { name: "Execute" }).click();
			expect((await asked).headers()["x-api-key"]).toBe("rk_publishable_x");
		}));

	it.each([320, 375, 1280])("have no barrier and run over no edge at %i px, operations open", (width) =>
		visit({ viewport: { width, height: 900 } }, async ({ page, home }) => {
			await page.goto(`${home}/docs`);
			await page.locator(".opblock").first().waitFor();
			expect(await overflow(page)).toBeLessThanOrEqual(0);
			for (const path of ["/v1/boiling-point", "/v1/tank/warm-up"]) {
				const operation = page.locator(".opblock", { hasText: path });
				await operation.locator(".opblock-summary-control").click();
				await operation.locator(".responses-table").waitFor();
			}
			expect(await barriers(page)).toEqual([]);
			expect(await overflow(page)).toBeLessThanOrEqual(0);
		}),
	);
});
