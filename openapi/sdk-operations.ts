import type { contract } from "./contract.ts";

type Contract = Pick<Awaited<ReturnType<typeof contract>>, "paths">;

const HEADER = `/**
 * This file was generated from the contract by \`npm run openapi\`.
 * Do not make direct changes to the file.
 */

import type { Method } from "./method.ts";
`;

/** The SDK's name for an operation: a verb stays (\`warmUpTank\`), a bare "get" goes (\`getSunDay\` → \`sunDay\`). */
export function methodName(operationId: string): string {
	const rest = /^get([A-Z].*)$/.exec(operationId)?.[1];
	return rest === undefined ? operationId : rest[0]!.toLowerCase() + rest.slice(1);
}

/** The SDK's table of operations: what its client asks, and what its user reads of each method. */
export function sdkOperations({ paths }: Contract): string {
	const rows = Object.entries(paths ?? {}).flatMap(([path, entry]) =>
		(["get", "post"] as const).flatMap((method) => {
			const operation = entry[method];
			if (!operation?.operationId) return [];
			const asks = method === "post" || (operation.parameters ?? []).length > 0;
			const words = [`${operation.summary} (\`${method.toUpperCase()} ${path}\`)`];
			if (operation.description && operation.description !== operation.summary)
				words.push("", ...operation.description.split("\n"));
			return [{ operationId: operation.operationId, method, path, asks, words }];
		}),
	);
	const types = rows.map(({ operationId, words }) => {
		const comment = words.map((line) => `\t * ${line}`.trimEnd().replaceAll("*/", "* /")).join("\n");
		return `\t/**\n${comment}\n\t */\n\treadonly ${methodName(operationId)}: Method<"${operationId}">;`;
	});
	const table = rows.map(
		({ operationId, method, path, asks }) =>
			`\t${methodName(operationId)}: ["${method}", "${path}", ${asks ? 1 : 0}],`,
	);
	return [
		HEADER,
		"/** The service's operations as functions. */",
		"export interface Raykettle {",
		types.join("\n"),
		"}",
		"",
		"/** Method, path, and whether there is anything to ask. */",
		"export const OPERATIONS: Readonly<Record<keyof Raykettle, readonly [method: string, path: string, asks: 0 | 1]>> = {",
		table.join("\n"),
		"};",
		"",
	].join("\n");
}
