const NAMED = /\{(\w+)\}/g;

/** The path parameters, such as `id` in `/v1/fluids/{id}`. */
export function pathNames(path: string): readonly string[] {
	return [...path.matchAll(NAMED)].map(([, name]) => name!);
}

/** The path in the router's syntax: `/v1/fluids/:id`. */
export function routerPath(path: string): string {
	return path.replaceAll(NAMED, ":$1");
}
