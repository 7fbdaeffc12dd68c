import { expect, it } from "vitest";
import { addressBlock } from "../../../../api/access/address-block.ts";

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
