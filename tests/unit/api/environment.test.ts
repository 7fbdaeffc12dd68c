import { describe, expect, it } from "vitest";
import { addressFrom } from "../../../api/environment.ts";

describe("addressFrom", () => {
	it("listens on 127.0.0.1:8787 unless told otherwise", () => {
		expect(addressFrom({})).toEqual({ host: "127.0.0.1", port: 8787 });
		expect(addressFrom({ PORT: "0", HOST: "::1" })).toEqual({ host: "::1", port: 0 });
		expect(addressFrom({ PORT: "65535", HOST: "0.0.0.0" })).toEqual({ host: "0.0.0.0", port: 65_535 });
	});

	it.each(["", "x", "65536", "-1", "80.5", "0x50", " 80"])("refuses PORT=%j with a sentence", (PORT) => {
		expect(() => addressFrom({ PORT })).toThrow("PORT must be a whole number from 0 to 65535");
	});

	it.each(["", "a b", "http://x"])("refuses HOST=%j with a sentence", (HOST) => {
		expect(() => addressFrom({ HOST })).toThrow("HOST must be a host name or an IP address");
	});
});
