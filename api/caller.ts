const MAPPED = /^::ffff:(\d+\.\d+\.\d+\.\d+)$/i; // an IPv4 address as a socket for both families tells it

/** Who is asking, as far as a network tells: an IPv4 address, or the first half of an IPv6 address, since a network of 2⁶⁴
 *  addresses is what one household is given.
 *  @param peer       address of the connection
 *  @param forwarded  X-Forwarded-For, to which each proxy adds at the end whom it was asked by
 *  @param trusted    how many proxies stand in front; what came before the nearest of them anyone could have written */
export function callerAddress(peer: string, forwarded: string | undefined, trusted: number): string {
	const chain = trusted > 0 && forwarded !== undefined ? forwarded.split(",").slice(-trusted) : [];
	return network((chain[0] ?? peer).trim() || peer);
}

function network(address: string): string {
	const mapped = MAPPED.exec(address);
	if (mapped) return mapped[1]!;
	if (!address.includes(":")) return address;
	const [head = "", tail] = address.toLowerCase().split("::");
	const groups = head === "" ? [] : head.split(":");
	const rest = tail === undefined || tail === "" ? [] : tail.split(":");
	const missing = Array<string>(Math.max(0, 8 - groups.length - rest.length)).fill("0");
	return `${[...groups, ...missing, ...rest].slice(0, 4).join(":")}::/64`;
}
