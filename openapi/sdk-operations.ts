import type { contract } from "./contract.ts";

type Contract = Pick<Awaited<ReturnType<typeof contract>>, "paths" | "components">;
type Operation = NonNullable<NonNullable<NonNullable<Contract["paths"]>[string]>["get" | "post"]>;

const HEADER = `/**
 * This file was generated from the contract by \`npm run openapi\`.
 * Do not make direct changes to the file.
 */

import type { Answer, AnswerIn, Body, CallOptions, FormOptions, OtherForm, Query } from "./method.ts";
`;

/** The SDK's name for an operation: its `operationId` without a leading "get" (`getSunDay` → `sunDay`, `warmUpTank`). */
export function methodName(operationId: string): string {
	const rest = /^get([A-Z].*)$/.exec(operationId)?.[1];
	return rest === undefined ? operationId : rest[0]!.toLowerCase() + rest.slice(1);
}

/** The SDK's table of operations: the requests of its client, and the types and text of each method. */
export function sdkOperations({ paths, components }: Contract): string {
	const rows = Object.entries(paths ?? {}).flatMap(([path, entry]) =>
		(["get", "post"] as const).flatMap((method) => {
			const operation = entry[method];
			if (!operation?.operationId) return [];
			const hasInput = method === "post" || (operation.parameters ?? []).length > 0;
			const isOptional = !hasRequired(operation, components?.schemas ?? {});
			return [{ operation, operationId: operation.operationId, method, path, hasInput, isOptional }];
		}),
	);
	const types = rows.map(({ operation, operationId, method, path, hasInput, isOptional }) => {
		const words = [`${operation.summary} (\`${method.toUpperCase()} ${path}\`)`];
		if (operation.description && operation.description !== operation.summary)
			words.push("", ...operation.description.split("\n"));
		const comment = words.map((line) => `\t * ${line}`.trimEnd().replaceAll("*/", "* /")).join("\n");
		const type = `${method === "post" ? "Body" : "Query"}<"${operationId}">`;
		const input = hasInput ? `input${isOptional ? "?" : ""}: ${type}, ` : "";
		const signature = hasOtherForm(operation)
			? `<F extends OtherForm<"${operationId}"> | undefined = undefined>(${input}call?: FormOptions<F>): Promise<AnswerIn<"${operationId}", F>>`
			: `(${input}call?: CallOptions): Promise<Answer<"${operationId}">>`;
		return `\t/**\n${comment}\n\t */\n\t${methodName(operationId)}${signature};`;
	});
	const table = rows.map(
		({ operationId, method, path, hasInput }) =>
			`\t${methodName(operationId)}: ["${method.toUpperCase()}", "${path}", ${hasInput ? 1 : 0}],`,
	);
	return [
		HEADER,
		"/** The operations of the service as methods. Each resolves to the response body, or rejects with a RaykettleProblem. */",
		"export interface Raykettle {",
		types.join("\n"),
		"}",
		"",
		"/** Method, path, and whether the operation has an input. */",
		"export const OPERATIONS: Readonly<Record<keyof Raykettle, readonly [method: string, path: string, hasInput: 0 | 1]>> = {",
		table.join("\n"),
		"};",
		"",
	].join("\n");
}

/** Whether an operation needs a parameter or a field of its body. */
function hasRequired(operation: Operation, schemas: Readonly<Record<string, unknown>>): boolean {
	const parameters = operation.parameters ?? [];
	if (parameters.some((parameter) => "required" in parameter && parameter.required)) return true;
	const body = operation.requestBody;
	const schema = body && "content" in body ? body.content["application/json"]?.schema : undefined;
	const named = schema && "$ref" in schema ? schemas[schema.$ref.split("/").at(-1)!] : schema;
	const { required = [] } = (named ?? {}) as { readonly required?: readonly string[] };
	return required.length > 0;
}

/** Whether an operation has a media type besides JSON. */
function hasOtherForm({ responses }: Operation): boolean {
	const answer = responses?.["200"];
	return Object.keys((answer && "content" in answer && answer.content) || {}).length > 1;
}
