/** The address that asks, as told by what stands in front.
 *  @param peer       address of the connection
 *  @param forwarded  X-Forwarded-For, to which each proxy adds at the end whom it was asked by
 *  @param trusted    how many proxies stand in front; what came before theirs anyone could have written */
export function clientAddress(peer: string, forwarded: string | undefined, trusted: number): string {
	if (trusted === 0 || forwarded === undefined) return peer;
	return forwarded.split(",").slice(-trusted)[0]!.trim() || peer;
}

const V4 = /^(?:::ffff:)?(\d{1,3}(?:\.\d{1,3}){3})(?::\d+)?$/i; // a socket of both kinds puts ::ffff: before, some proxies the port behind
const V6 = /^\[?([\da-f:.]+)(?:%[^\]]*)?(?:\](?::\d+)?)?$/i; // or brackets, or a zone
const LONGEST = 100; // [characters] of an address, its zone and port included

/** What counts as one caller among addresses: an IPv4 address, or the /64 that an IPv6 address lies in, since one subscriber
 *  has all of it. Whatever is no address counts together with all else that is none. */
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
			.join("."); // IPv4 on a socket of both kinds
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
