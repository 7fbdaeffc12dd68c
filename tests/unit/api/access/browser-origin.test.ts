import { describe, expect, it } from "vitest";
import { browserOrigins } from "../../../../api/access/browser-origin.ts";

const asked = (headers: Readonly<Record<string, string>>) => browserOrigins((name) => headers[name]);

describe("what origin a page may have", () => {
	it("is what its browser names", () => {
		const origin = "https://shop.example";
		expect(asked({ origin, host: "heat.example" })).toEqual([origin]);
		expect(asked({ origin: "null", host: "heat.example", "sec-fetch-site": "same-origin" })).toEqual([
			"null",
		]);
	});

	it("is the service's own where a browser says no more than that: a GET within one origin", () => {
		const origins = asked({ host: "heat.example:8443", "sec-fetch-site": "same-origin" });
		expect(origins).toEqual(["https://heat.example:8443", "http://heat.example:8443"]);
	});

	it.each(["cross-site", "same-site", "none", "", "same-origin, same-origin"])(
		"is none where no page of this origin asks (%j)",
		(site) => {
			expect(asked({ host: "heat.example", "sec-fetch-site": site })).toBeUndefined();
			expect(asked({ host: "heat.example" })).toBeUndefined();
		},
	);
});
