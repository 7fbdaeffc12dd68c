import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { deploymentFrom } from "../../../../api/config/deployment.ts";
import { SETTINGS, USUAL_SETTINGS } from "../../../../api/config/settings.ts";

describe("deploymentFrom", () => {
	it("listens on 127.0.0.1:8787 unless told otherwise, with the usual settings and no keys", () => {
		expect(deploymentFrom({})).toEqual({
			...{ host: "127.0.0.1", port: 8787, metricsPort: undefined, threads: undefined, logLevel: "info" },
			...{ keysFile: undefined, keysRequired: false, settings: USUAL_SETTINGS },
		});
		expect(deploymentFrom({ PORT: "0", HOST: "::1" })).toMatchObject({ host: "::1", port: 0 });
		expect(deploymentFrom({ PORT: "65535", HOST: "0.0.0.0" })).toMatchObject({ port: 65_535 });
	});

	it("takes every setting from its variable", () => {
		const environment = Object.fromEntries(
			Object.values(SETTINGS).map(({ variable, most }) => [variable, String(most)]),
		);
		expect(deploymentFrom(environment).settings).toEqual(
			Object.fromEntries(Object.entries(SETTINGS).map(([name, { most }]) => [name, most])),
		);
	});

	it.each(["", "x", "65536", "-1", "80.5", "0x50", " 80", "1e3"])(
		"refuses PORT=%j with a sentence",
		(PORT) => {
			expect(() => deploymentFrom({ PORT })).toThrow("PORT must be a whole number from 0 to 65535");
		},
	);

	it.each(["", "a b", "http://x"])("refuses HOST=%j with a sentence", (HOST) => {
		expect(() => deploymentFrom({ HOST })).toThrow("HOST must be a host name or an IP address");
	});

	it("names every fault at once", () => {
		const faulty = { PORT: "x", LOG_LEVEL: "loud", KEYS_REQUIRED: "true", COMPUTING_TIME_S: "0" };
		for (const name of Object.keys(faulty))
			expect(() => deploymentFrom(faulty), name).toThrow(new RegExp(`\\b${name} `));
	});
});

it("the contributors' table tells every setting as it is", () => {
	const page = readFileSync(new URL("../../../../DEVELOPERS.md", import.meta.url), "utf8");
	for (const { variable, usual, unit, meaning, ...more } of Object.values(SETTINGS)) {
		const beyond = "beyond" in more ? ` (${more.beyond})` : "";
		expect(page).toContain(`| \`${variable}\` | ${usual} ${unit} | ${meaning}${beyond} |`);
	}
});
