import { describe, expect, it } from "vitest";
import { callerAddress } from "../../../../api/access/client-address.ts";

const PEER = "10.0.0.7";

describe("callerAddress", () => {
	it("is the connection's where no proxy is trusted, whatever the caller writes", () => {
		expect(callerAddress(PEER, undefined, 0)).toBe(PEER);
		expect(callerAddress(PEER, "203.0.113.9", 0)).toBe(PEER);
	});

	it("is whom the nearest trusted proxy was asked by, not what the caller wrote before it", () => {
		expect(callerAddress(PEER, "203.0.113.9", 1)).toBe("203.0.113.9");
		expect(callerAddress(PEER, "198.51.100.1, 203.0.113.9", 1)).toBe("203.0.113.9");
		expect(callerAddress(PEER, "1.1.1.1, 198.51.100.1 , 203.0.113.9", 2)).toBe("198.51.100.1");
	});

	it("is the first there is where the chain is shorter than the proxies", () => {
		expect(callerAddress(PEER, "203.0.113.9", 3)).toBe("203.0.113.9");
		expect(callerAddress(PEER, "", 1)).toBe(PEER);
		expect(callerAddress(PEER, undefined, 1)).toBe(PEER);
	});
});
