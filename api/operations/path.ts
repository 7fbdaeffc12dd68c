const NAMED = /\{(\w+)\}/g;

/** The parameters that stand in braces in a path, such as `id` in `/v1/fluids/{id}`. */
export function pathNames(path: string): readonly string[] {
	return [...path.matchAll(NAMED)].map(([, name]) => name!);
}

/** The path as the router has it: `/v1/fluids/:id`. */
export function routerPath(path: string): string {
	return path.replaceAll(NAMED, ":$1");
}
