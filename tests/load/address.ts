/** A path with its parameters filled in, the rest as the query. */
export function addressOf(path: string, value: Readonly<Record<string, unknown>>): string {
	const filled = path.replace(/\{(\w+)\}/g, (_, name: string) => encodeURIComponent(String(value[name])));
	const query = Object.entries(value)
		.filter(([name]) => !path.includes(`{${name}}`))
		.flatMap(([name, given]) => [given].flat().map((one) => [name, String(one)]));
	return query.length > 0 ? `${filled}?${new URLSearchParams(query)}` : filled;
}
