import { asked, type Call, type Input, type RaykettleOptions } from "./call.ts";
import { OPERATIONS, type Raykettle } from "./operations.ts";

/** A client of the service, with one method for each operation of the contract. */
export function createRaykettle(options: RaykettleOptions): Raykettle {
	if (typeof options?.baseUrl !== "string")
		throw new TypeError('createRaykettle needs a baseUrl, such as "https://solar.example.org"');
	const methods = Object.entries(OPERATIONS).map(([name, [method, path, hasInput]]) => [
		name,
		async (...given: unknown[]) => {
			const [first, second] = hasInput ? given : [{}, given[0]];
			const input = (first ?? {}) as Input;
			const call = (second ?? {}) as Call;
			return method === "GET"
				? asked(options, withQuery(path, input), undefined, call)
				: asked(options, path, input, call);
		},
	]);
	return Object.fromEntries(methods) as Raykettle;
}

/** A path with its `{parameters}` filled in, followed by the rest of the input as a query; a list repeats its name. */
function withQuery(path: string, input: Input): string {
	const query = new URLSearchParams();
	const filled = path.replace(/\{(\w+)\}/g, (_, name: string) => {
		const value = input[name] ?? "";
		if (value === "") throw new TypeError(`${path} needs ${name}`);
		return encodeURIComponent(String(value));
	});
	for (const [name, value] of Object.entries(input))
		if (value !== undefined && !path.includes(`{${name}}`))
			for (const one of Array.isArray(value) ? value : [value]) query.append(name, String(one));
	return query.size > 0 ? `${filled}?${query}` : filled;
}
