/** The origins that the page may have whose browser sent a request, undefined where no browser says that it did.
 *
 *  A browser names the origin, but not with a GET to the very origin that the page came from: it then says `same-origin`
 *  (Fetch Metadata Request Headers, W3C), and the page's host is the one that was asked. Its scheme may have been changed on
 *  the way, by a proxy that ends TLS. */
export function browserOrigins(header: (name: string) => string | undefined): readonly string[] | undefined {
	const origin = header("origin");
	if (origin !== undefined) return [origin];
	if (header("sec-fetch-site") !== "same-origin") return undefined;
	const host = header("host") ?? "";
	return [`https://${host}`, `http://${host}`];
}
