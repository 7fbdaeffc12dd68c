/** The address that asks, as told by what stands in front.
 *  @param peer       address of the connection
 *  @param forwarded  X-Forwarded-For, to which each proxy adds at the end whom it was asked by
 *  @param trusted    how many proxies stand in front; what came before theirs anyone could have written */
export function callerAddress(peer: string, forwarded: string | undefined, trusted: number): string {
	if (trusted === 0 || forwarded === undefined) return peer;
	return forwarded.split(",").slice(-trusted)[0]!.trim() || peer;
}
