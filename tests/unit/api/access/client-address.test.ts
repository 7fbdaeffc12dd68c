import { describe, expect, it } from "vitest";
import { addressBlock, clientAddress } from "../../../../api/access/client-address.ts";

const PEER = "10.0.0.7";

describe("clientAddress", () => {
	it("is the connection's where no proxy is trusted, whatever the caller writes", () => {
		expect(clientAddress(PEER, undefined, 0)).toBe(PEER);
		expect(clientAddress(PEER, "203.0.113.9", 0)).toBe(PEER);
	});

	it("is whom the nearest trusted proxy was asked by, not what the caller wrote before it", () => {
		expect(clientAddress(PEER, "203.0.113.9", 1)).toBe("203.0.113.9");
		expect(clientAddress(PEER, "198.51.100.1, 203.0.113.9", 1)).toBe("203.0.113.9");
		expect(clientAddress(PEER, "1.1.1.1, 198.51.100.1 , 203.0.113.9", 2)).toBe("198.51.100.1");
	});

	it("is the first there is where the chain is shorter than the proxies", () => {
		expect(clientAddress(PEER, "203.0.113.9", 3)).toBe("203.0.113.9");
		expect(clientAddress(PEER, "", 1)).toBe(PEER);
		expect(clientAddress(PEER, undefined, 1)).toBe(PEER);
	});
});

it.each([
	["192.0.2.7", "192.0.2.7"],
	["192.0.2.7:51234", "192.0.2.7"], // as some proxies write it
	["::ffff:192.0.2.7", "192.0.2.7"], // an IPv4 caller on a socket of both kinds
	["0:0:0:0:0:ffff:c000:207", "192.0.2.7"],
	["2001:db8:1:2:3:4:5:6", "2001:db8:1:2::/64"],
	["2001:0DB8:0001:0002::9", "2001:db8:1:2::/64"],
	["[2001:db8:1:2::9]:51234", "2001:db8:1:2::/64"],
	["2001:db8::1", "2001:db8:0:0::/64"],
	["::1", "0:0:0:0::/64"],
	["1:2:3:4:5:6:7::", "1:2:3:4::/64"],
	["fe80::1%eth0", "fe80:0:0:0::/64"],
])("%s counts as %s", (address, block) => expect(addressBlock(address)).toBe(block));

it.each([
	"",
	"unknown",
	"2001:db8:1:2:3:4:5:6:7",
	"1::2::3",
	"not an address",
	"g::1",
	"x".repeat(9999),
	":",
])("%.30j is no address, and counts with all that is none", (address) =>
	expect(addressBlock(address)).toBe("unknown"),
);
