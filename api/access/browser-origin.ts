/** Possible origins of the page that sent a request; undefined where no browser headers are present.
 *
 *  A browser sends `Origin`, except with a GET to the page's own origin: it then sends `Sec-Fetch-Site: same-origin`
 *  (Fetch Metadata Request Headers, W3C), and the page's host is the requested host. The scheme may differ if a proxy
 *  terminates TLS. */
export function browserOrigins(header: (name: string) => string | undefined): readonly string[] | undefined {
	const origin = header("origin");
	if (origin !== undefined) return [origin];
	if (header("sec-fetch-site") !== "same-origin") return undefined;
	const host = header("host") ?? "";
	return [`https://${host}`, `http://${host}`];
}
