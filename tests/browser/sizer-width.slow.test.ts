import { describe, expect, it } from "vitest";
import { overflow, SIZER, shopPage, stage } from "./stage.ts";

// The widget fills the width of every parent that a shop may put it into, at three widths of the screen.

const visit = stage();
const styled = (style: string) => SIZER.replace("catalogue", `style="${style}" catalogue`);

const PARENTS: readonly (readonly [name: string, markup: string])[] = [
	["a block", SIZER],
	["a flex row", `<div style="display:flex">${SIZER}</div>`],
	["a flex row with text beside it", `<div style="display:flex">${SIZER}<p>Beside</p></div>`],
	[
		"a flex column, centred",
		`<div style="display:flex;flex-direction:column;align-items:center">${SIZER}</div>`,
	],
	["a centred grid", `<div style="display:grid;place-items:center">${SIZER}</div>`],
	["an inline block", `<div style="display:inline-block">${SIZER}</div>`],
	["an inline block of its own", styled("display:inline-block")],
	["a float", styled("float:left")],
	["fit-content", styled("width:fit-content")],
	["an absolute box", `<div style="position:absolute">${SIZER}</div>`],
	["an absolute box of its own", styled("position:absolute")],
	["a table cell", `<table style="border-spacing:0"><tr><td style="padding:0">${SIZER}</td></tr></table>`],
];

describe.each([320, 768, 1280])("at %i px", (width) => {
	it.each(PARENTS)("fills the width that %s has for it", (_, markup) =>
		visit({ viewport: { width, height: 900 } }, async ({ page, home }) => {
			await shopPage(page, home, markup);
			await page.locator("#ask").waitFor({ state: "attached" });
			const box = await page
				.locator("raykettle-sizer")
				.evaluate((sizer) => sizer.getBoundingClientRect().width);
			const margins = markup.includes("absolute") ? 8 : 16; // the body's own; an absolute box knows the left one alone
			const most = width - margins;
			const beside = markup.includes("Beside") ? 60 : 1; // a flex row shares its width with what is beside
			expect(box).toBeGreaterThanOrEqual(Math.min(most, 960) - beside);
			expect(box).toBeLessThanOrEqual(most + 0.5);
			expect(await overflow(page)).toBeLessThanOrEqual(0);
		}),
	);
});

it("stretches with a block as wide as the screen", () =>
	visit({ viewport: { width: 1800, height: 900 } }, async ({ page, home }) => {
		await shopPage(page, home, SIZER);
		await page.locator("#ask").waitFor();
		const box = await page
			.locator("raykettle-sizer")
			.evaluate((sizer) => sizer.getBoundingClientRect().width);
		expect(box).toBe(1800 - 16);
	}));
