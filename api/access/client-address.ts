/** The client's address, as reported by trusted proxies.
 *  @param peer       address of the connection
 *  @param forwarded  X-Forwarded-For, to which each proxy appends its peer
 *  @param trusted    number of trusted proxies; earlier entries could be forged */
export function clientAddress(peer: string, forwarded: string | undefined, trusted: number): string {
	if (trusted === 0 || forwarded === undefined) return peer;
	return forwarded.split(",").slice(-trusted)[0]!.trim() || peer;
}

const V4 = /^(?:::ffff:)?(\d{1,3}(?:\.\d{1,3}){3})(?::\d+)?$/i; // dual-stack sockets prefix ::ffff:, some proxies append the port
const V6 = /^\[?([\da-f:.]+)(?:%[^\]]*)?(?:\](?::\d+)?)?$/i; // also with brackets or a zone
const LONGEST = 100; // [characters] of an address, its zone and port included

/** The unit of rate limiting: an IPv4 address, or the /64 of an IPv6 address, since one subscriber has all of it. Invalid addresses
 *  count together. */
export function addressBlock(address: string): string {
	if (address.length > LONGEST) return "unknown";
	const v4 = V4.exec(address)?.[1];
	if (v4 !== undefined) return v4;
	const v6 = V6.exec(address)?.[1];
	if (v6 === undefined || !URL.canParse(`http://[${v6}]`)) return "unknown";
	const groups = groupsOf(new URL(`http://[${v6}]`).hostname.slice(1, -1));
	const isMapped = groups.slice(0, 5).every((group) => group === 0) && groups[5] === 0xffff;
	if (isMapped)
		return groups
			.slice(6)
			.flatMap((group) => [group >> 8, group & 0xff])
			.join("."); // IPv4 on a dual-stack socket
	return `${groups
		.slice(0, 4)
		.map((group) => group.toString(16))
		.join(":")}::/64`;
}

/** The eight numbers of an IPv6 address. */
function groupsOf(address: string): readonly number[] {
	const [before = [], after = []] = address
		.split("::")
		.map((part) => (part === "" ? [] : part.split(":").map((group) => Number.parseInt(group, 16))));
	return [...before, ...Array<number>(8 - before.length - after.length).fill(0), ...after];
}
