import { existsSync, mkdtempSync, readFileSync, rmSync } from "node:fs";
import { createServer, type Server } from "node:http";
import { createRequire } from "node:module";
import type { AddressInfo } from "node:net";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { type Browser, type BrowserContextOptions, chromium, type Page } from "playwright-core";
import { afterAll, beforeAll, expect } from "vitest";
import { createApp } from "../../api/app.ts";
import type { AppOptions } from "../../api/http/app-options.ts";
import { createNodeServer } from "../../api/http/node-server.ts";
import { readPages } from "../../api/pages/read.ts";
import { buildPages } from "../../api/scripts/build-pages.ts";

const OWN = "/usr/bin/chromium"; // where Debian puts it
const QUIET = ["--disable-gpu", "--disable-quic", "--no-first-run", "--disable-background-networking"];
const ALONE = ["--no-sandbox", "--disable-component-update", "--disable-sync"];

/** Chromium: the machine's own, else the one that comes through npm, with web security on in both. */
async function launched(): Promise<Browser> {
	if (existsSync(OWN) && process.env.BROWSER_FROM !== "npm")
		return chromium.launch({ executablePath: OWN, args: [...QUIET, ...ALONE] });
	process.env.AWS_EXECUTION_ENV ??= "AWS_Lambda_nodejs20.x"; // makes it bring the libraries that bare machines lack
	const { default: packed } = await import("@sparticuz/chromium");
	const unsafe = ["--disable-web-security", "--single-process", "--allow-running-insecure-content"];
	const args = packed.args.filter((arg) => !unsafe.includes(arg));
	return chromium.launch({ executablePath: await packed.executablePath(), args: [...args, ...QUIET] });
}

async function listening(server: Server): Promise<string> {
	await new Promise<void>((ready) => server.listen(0, "127.0.0.1", ready));
	return `http://127.0.0.1:${(server.address() as AddressInfo).port}`;
}

function closed(server: Server): Promise<unknown> {
	const ended = new Promise((done) => server.close(done));
	server.closeAllConnections();
	return ended;
}

export interface Scene {
	readonly page: Page;
	readonly home: string;
	/** Everything that the page complained of. */
	readonly complaints: string[];
	/** Ends the service behind the page. */
	readonly endService: () => Promise<unknown>;
}

/** A browser and the real service with its built pages, for the tests of one file. */
export function stage() {
	const folder = mkdtempSync(join(tmpdir(), "pages-"));
	let browser: Browser;
	let pages: ReturnType<typeof readPages>;

	beforeAll(async () => {
		[browser] = await Promise.all([launched(), buildPages(folder)]);
		pages = readPages(pathToFileURL(`${folder}/`));
	});
	afterAll(async () => {
		await browser?.close();
		rmSync(folder, { recursive: true, force: true });
	});

	/** One visit: a service of its own, a page in a browser of its own. The page must end without a complaint, but for those allowed.
	 *  @param door  who is let in; anyone unless given */
	return async function visit(
		options: BrowserContextOptions,
		play: (scene: Scene) => Promise<void>,
		allowed: RegExp = /^$/,
		door: Pick<AppOptions, "admit"> = {},
	): Promise<void> {
		const failures: unknown[] = [];
		const server = createNodeServer(
			createApp({ ...pages, ...door, onFailure: (error) => failures.push(error) }),
		);
		const home = await listening(server);
		const context = await browser.newContext({ viewport: { width: 1280, height: 900 }, ...options });
		const complaints: string[] = [];
		try {
			const page = await context.newPage();
			page.setDefaultTimeout(15_000);
			page.on("console", (said) => {
				if (said.type() === "error" || said.type() === "warning") complaints.push(said.text());
			});
			page.on("pageerror", (error) => complaints.push(error.message));
			await play({ page, home, complaints, endService: () => closed(server) });
			expect(complaints.filter((complaint) => !allowed.test(complaint))).toEqual([]);
			expect(failures).toEqual([]);
		} finally {
			await context.close();
			if (server.listening) await closed(server);
		}
	};
}

const axe = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");

/** What stands in the way of people who see, hear or move otherwise: every serious fault that axe finds, by rule and place. */
export async function barriers(page: Page): Promise<string[]> {
	await page.evaluate(axe);
	return page.evaluate(async () => {
		const { violations } = await (
			globalThis as unknown as { axe: { run(): Promise<{ violations: Violation[] }> } }
		).axe.run();
		interface Violation {
			id: string;
			impact: string;
			nodes: { target: unknown; failureSummary: string }[];
		}
		return violations
			.filter(({ impact }) => impact === "serious" || impact === "critical")
			.flatMap(({ id, nodes }) =>
				nodes.map(({ target, failureSummary }) => `${id} ${JSON.stringify(target)} ${failureSummary}`),
			);
	});
}

/** How far the page runs over its own width [px]. */
export const overflow = (page: Page) =>
	page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);

/** A page that holds the given markup and the widget's script, on the service's own origin. */
export async function shopPage(page: Page, home: string, body: string, script = true): Promise<void> {
	await page.route(`${home}/shop`, (route) =>
		route.fulfill({
			contentType: "text/html; charset=utf-8",
			body: `<!doctype html><html lang="en"><meta name="viewport" content="width=device-width"><title>Shop</title>${script ? '<script type="module" src="/widget.js"></script>' : ""}<body>${body}</body></html>`,
		}),
	);
	await page.goto(`${home}/shop`);
}

export const SIZER = '<raykettle-sizer catalogue="/pages/cedar-row.json"></raykettle-sizer>';

/** A supplier's own site: one page, under a policy as strict as can be that still lets the service in. */
export async function supplierSite(
	service: string,
	body: string,
	work: (url: string) => Promise<void>,
): Promise<void> {
	const policy = `default-src 'none'; script-src ${service}; connect-src ${service} 'self'; style-src 'none'; require-trusted-types-for 'script'`;
	const list = readFileSync(new URL("../../api/pages/cedar-row.json", import.meta.url));
	const server = createServer((request, response) => {
		if (request.url === "/your-list.json") response.setHeader("Content-Type", "application/json").end(list);
		else if (request.url !== "/") response.writeHead(204).end();
		else
			response
				.setHeader("Content-Type", "text/html; charset=utf-8")
				.setHeader("Content-Security-Policy", policy)
				.end(`<!doctype html><html lang="en"><title>Shop</title><main>${body}</main></html>`);
	});
	const url = await listening(server);
	try {
		await work(url);
	} finally {
		await closed(server);
	}
}
